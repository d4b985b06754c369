using System.Text.Json;
using Ashery.Sources;

namespace Ashery.Clinic.Words;

/// <summary>Another name of a field in a case file, or a field that lists elements with low or high.</summary>
/// <param name="Name">As written.</param>
/// <param name="Question">The question it belongs to; null for free notes.</param>
/// <param name="Levels">The family of tests it lists: leaf, medium, water, feed; null for none.</param>
internal sealed record Field(string Name, string? Question, string? Levels)
{
    private static readonly Lazy<Dictionary<string, Field>> Shared = new(
        static () => DataRows.Read("data/clinic/fields.json", Read).ToDictionary(static f => f.Name, StringComparer.OrdinalIgnoreCase));

    public static Field? Find(string name) => Shared.Value.GetValueOrDefault(name);

    private static Field Read(JsonElement row) => new(row.Text("field"), row.TextOrNull("question"), row.TextOrNull("levels"));
}
