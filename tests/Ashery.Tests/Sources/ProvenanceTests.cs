using System.Globalization;
using Ashery.Materials;
using Ashery.Sources;

namespace Ashery.Tests.Sources;

public class ProvenanceTests
{
    [Fact]
    public void Every_figure_of_every_material_has_a_known_source()
    {
        foreach (var m in MaterialCatalogue.Default.All)
        {
            foreach (var figure in MaterialCatalogue.Default.FiguresOf(m.Id))
            {
                Check($"{m.Id} {figure.Property}", figure.SourceId, figure.Provenance);
                if (figure.RangeSourceId is { } range)
                {
                    Check($"{m.Id} {figure.Property} range", range, figure.RangeProvenance!.Value);
                }
            }
        }
    }

    [Fact]
    public void Figures_in_use_point_to_known_sources()
    {
        foreach (var m in MaterialCatalogue.Default.All)
        {
            foreach (var figure in new[] { m.SaltIndex, m.LimeEquivalent, m.CriticalRelativeHumidity }.OfType<Figure>())
            {
                Assert.True(SourceIndex.Default.Find(figure.SourceId) is not null, $"{m.Id}: {figure.SourceId}");
            }

            Assert.NotNull(SourceIndex.Default.Find(m.SourceId));
        }
    }

    [Fact]
    public void Source_ids_are_unique_over_all_files()
    {
        var ids = EmbeddedData.Paths("sources.json")
            .SelectMany(path => System.Text.Json.JsonDocument.Parse(EmbeddedData.Read(path)).RootElement.GetProperty("sources").EnumerateArray())
            .Select(row => row.GetProperty("id").GetString()!).ToList();
        Assert.Empty(ids.GroupBy(id => id).Where(g => g.Count() > 1).Select(g => g.Key));
    }

    // docs/data.md tells a reader how much of the catalogue was looked up; this keeps it true.
    [Fact]
    public void The_counts_in_the_documentation_are_right()
    {
        var counts = Count();
        var text = File.ReadAllText(Path.Combine(Root(), "docs", "data.md"));
        foreach (var (provenance, name) in new[] { (Provenance.Seen, "seen"), (Provenance.Computed, "computed"), (Provenance.FromMemory, "from memory"), (Provenance.CommonPractice, "common practice") })
        {
            var line = string.Create(CultureInfo.InvariantCulture, $"| {name} | {counts.GetValueOrDefault((provenance, true))} | {counts.GetValueOrDefault((provenance, false))} |");
            Assert.Contains(line, text, StringComparison.Ordinal);
        }
    }

    private static Dictionary<(Provenance Provenance, bool InUse), int> Count() => MaterialCatalogue.Default.All
        .SelectMany(m => MaterialCatalogue.Default.FiguresOf(m.Id))
        .GroupBy(f => (f.Provenance, f.Chosen)).ToDictionary(g => g.Key, g => g.Count());

    private static void Check(string what, string sourceId, Provenance provenance)
    {
        var source = SourceIndex.Default.Find(sourceId);
        Assert.True(source is not null, $"{what}: source {sourceId} is not listed");
        Assert.True(Enum.IsDefined(provenance), what);
        Assert.True(provenance != Provenance.Seen || source.LookedUp, $"{what}: said to be seen in {sourceId}, whose text was never reached");
    }

    private static string Root()
    {
        var at = new DirectoryInfo(AppContext.BaseDirectory);
        while (at is not null && !File.Exists(Path.Combine(at.FullName, "Ashery.slnx")))
        {
            at = at.Parent;
        }

        return at!.FullName;
    }
}
