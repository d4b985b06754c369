using System.Text.Json;
using Ashery.Sources;

namespace Ashery.Solutions.Can;

/// <summary>Limits a can is judged by. Rows of data/solutions/can-limits.json.</summary>
/// <param name="Id">Key.</param>
/// <param name="Value">In its unit.</param>
/// <param name="Unit">Of the value.</param>
/// <param name="What">What is limited and why.</param>
/// <param name="SourceId">Key of a <see cref="Source"/>.</param>
/// <param name="Provenance">How it came into the data.</param>
public sealed record CanLimit(string Id, double Value, string Unit, string What, string SourceId, Provenance Provenance)
{
    private static readonly Lazy<List<CanLimit>> Rows = new(static () => DataRows.Read("data/solutions/can-limits.json", Read));

    public static IReadOnlyList<CanLimit> All => Rows.Value;

    /// <summary>The limit of this id; a wrong id is our own mistake.</summary>
    public static CanLimit Of(string id) => Rows.Value.Find(row => row.Id == id) ?? throw DataRows.Unknown(id);

    private static CanLimit Read(JsonElement row) =>
        new(row.Text("id"), row.Number("value"), row.Text("unit"), row.Text("what"), row.Text("source"), row.Provenance());
}
