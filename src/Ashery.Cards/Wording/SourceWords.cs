using Ashery.Sources;

namespace Ashery.Cards.Wording;

/// <summary>The foot of a card: where its figures and words come from, and which were recalled and not looked up.</summary>
internal static class SourceWords
{
    public static IReadOnlyList<string> Foot(RecipeCardRequest request, IEnumerable<Cautions.Caution> cautions)
    {
        var parts = request.Recipe.Parts;
        var lines = new List<string>();
        Add(lines, "Analyses", parts.Select(p => (p.Material.SourceId, p.Material.Provenance)));
        Add(lines, "Salt index", parts.Select(p => p.Material.SaltIndex).OfType<Figure>().Select(f => (f.SourceId, f.Provenance)));
        Add(lines, "Lime equivalent", parts.Select(p => p.Material.LimeEquivalent).OfType<Figure>().Select(f => (f.SourceId, f.Provenance)));
        Add(lines, "Cautions", cautions.Where(c => c.SourceId.Length > 0).Select(c => (c.SourceId, c.Provenance)));
        Add(lines, "Storage", [request.Recipe.Storage.Source]);
        Add(lines, "Pairs", PairWords.Sources(request));
        lines.Add("How to mix: common practice, no source.");
        return lines;
    }

    private static void Add(List<string> lines, string what, IEnumerable<(string Id, Provenance Provenance)> figures) =>
        Add(lines, what, figures.GroupBy(f => f.Id).Select(g =>
            Cite(g.Key) + (g.All(f => f.Provenance == Provenance.FromMemory) ? " (from memory)" : g.Any(f => f.Provenance == Provenance.FromMemory) ? " (in part from memory)" : "")));

    private static void Add(List<string> lines, string what, IEnumerable<string> citations)
    {
        var distinct = citations.Select(c => c.Trim().TrimEnd('.')).Where(c => c.Length > 0).Distinct(StringComparer.Ordinal).ToList();
        if (distinct.Count > 0)
        {
            lines.Add($"{what}: {string.Join("; ", distinct)}.");
        }
    }

    /// <summary>Author, year and title: enough to find the full line in the catalogue.</summary>
    private static string Cite(string id)
    {
        if (SourceIndex.Default.Find(id) is not { } source)
        {
            return id;
        }

        var authors = source.Author.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        var author = authors.Length > 1 ? authors[0] + " and others" : source.Author;
        return source.Year is { } year ? FormattableString.Invariant($"{author} {year}, {source.Title}") : $"{author}, {source.Title}";
    }
}
