using System.Text.Json;

namespace Ashery.Sources;

/// <summary>All publications behind the figures: every file of the data that is called <c>sources.json</c>.</summary>
public sealed class SourceIndex
{
    private static readonly Lazy<SourceIndex> Shared = new(static () => Load(EmbeddedData.Paths("sources.json")));

    private readonly Dictionary<string, Source> byId;

    private SourceIndex(Dictionary<string, Source> byId) => this.byId = byId;

    public static SourceIndex Default => Shared.Value;

    public IReadOnlyCollection<Source> All => byId.Values;

    /// <summary>The publication with this key, or null.</summary>
    public Source? Find(string id) => byId.GetValueOrDefault(id);

    /// <summary>One line for the foot of a page; an unknown key says so rather than fail.</summary>
    public string Cite(string id) => Find(id)?.Citation ?? $"source {id} (not listed)";

    private static SourceIndex Load(IReadOnlyList<string> paths)
    {
        var found = new Dictionary<string, Source>(StringComparer.Ordinal);
        foreach (var path in paths)
        {
            using var document = JsonDocument.Parse(EmbeddedData.Read(path));
            foreach (var row in document.RootElement.GetProperty("sources").EnumerateArray())
            {
                var source = Read(row);
                found.TryAdd(source.Id, source);
            }
        }

        return new SourceIndex(found);
    }

    private static Source Read(JsonElement row) => new(
        row.GetProperty("id").GetString()!,
        row.GetProperty("author").GetString()!,
        row.TryGetProperty("year", out var year) ? year.GetInt32() : null,
        row.GetProperty("title").GetString()!,
        row.GetProperty("where").GetString()!)
    {
        LookedUp = row.TryGetProperty("lookedUp", out var seen) && seen.GetBoolean(),
        Note = row.TryGetProperty("note", out var note) ? note.GetString() : null,
    };
}
