using System.Globalization;
using System.Text;
using Microsoft.Extensions.Primitives;

namespace Ashery.Web.Forms;

/// <summary>
/// What was typed into a form, as text, so that a page that has to ask again shows it unchanged. Control characters and
/// over-long texts are cut: nobody types them.
/// </summary>
public sealed class Draft
{
    private const int LongestText = 4000;
    private const int MostValues = 400;

    private readonly Dictionary<string, IReadOnlyList<string>> values = new(StringComparer.Ordinal);

    public Draft(IEnumerable<KeyValuePair<string, StringValues>> typed)
    {
        foreach (var (name, texts) in typed.Take(MostValues))
        {
            values[name] = [.. texts.Take(MostValues).Select(Clean)];
        }
    }

    private Draft(Dictionary<string, IReadOnlyList<string>> values) => this.values = values;

    /// <summary>Nothing typed.</summary>
    public static Draft Empty { get; } = new(new Dictionary<string, IReadOnlyList<string>>(StringComparer.Ordinal));

    /// <summary>A form filled in by the page.</summary>
    public static Draft With(params IEnumerable<(string Name, string? Value)> fields) => new(fields
        .Where(f => f.Value is not null)
        .ToDictionary(f => f.Name, f => (IReadOnlyList<string>)[f.Value!], StringComparer.Ordinal));

    public bool IsEmpty => values.Count == 0;

    /// <summary>The text of a field, trimmed; empty when it was not sent.</summary>
    public string this[string name] => values.TryGetValue(name, out var texts) && texts.Count > 0 ? texts[^1] : "";

    public bool Has(string name) => this[name].Length > 0;

    public bool WasSent(string name) => values.ContainsKey(name);

    /// <summary>All values of a field with several.</summary>
    public IReadOnlyList<string> All(string name) => values.GetValueOrDefault(name) ?? [];

    /// <summary>The same with one field set or, with null, taken out.</summary>
    public Draft Set(string name, params IReadOnlyList<string>? texts)
    {
        var copy = new Dictionary<string, IReadOnlyList<string>>(values, StringComparer.Ordinal);
        if (texts is null)
        {
            copy.Remove(name);
        }
        else
        {
            copy[name] = texts;
        }

        return new Draft(copy);
    }

    /// <summary>As the query of an address, empty fields left out; begins with <c>?</c> when there is anything.</summary>
    public string ToQuery(params ReadOnlySpan<string> without)
    {
        var query = new StringBuilder();
        foreach (var (name, texts) in values)
        {
            if (without.Contains(name))
            {
                continue;
            }

            foreach (var text in texts.Where(t => t.Length > 0))
            {
                query.Append(query.Length == 0 ? '?' : '&').Append(Uri.EscapeDataString(name)).Append('=').Append(Uri.EscapeDataString(text));
            }
        }

        return query.ToString();
    }

    private static string Clean(string? text)
    {
        if (string.IsNullOrEmpty(text))
        {
            return "";
        }

        var clean = new StringBuilder(Math.Min(text.Length, LongestText));
        foreach (var rune in text.EnumerateRunes())
        {
            if (clean.Length >= LongestText)
            {
                break;
            }

            var isControl = Rune.GetUnicodeCategory(rune) is UnicodeCategory.Control && rune.Value is not ('\n' or '\t');
            clean.Append(isControl ? "" : rune.ToString());
        }

        return clean.ToString().Trim();
    }
}
