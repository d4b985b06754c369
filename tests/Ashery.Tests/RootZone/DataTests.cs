using Ashery.RootZone;
using Ashery.RootZone.Feeding;
using Ashery.Sources;

namespace Ashery.Tests.RootZone;

/// <summary>Every figure of the pot model has a source that is listed, is no surer than it was looked up, and lies in its own range.</summary>
public class DataTests
{
    [Fact]
    public void Constants_have_known_sources_and_lie_in_their_ranges()
    {
        foreach (var row in RootZoneConstants.Default.All)
        {
            Check(row.Id, row.SourceId, row.Provenance);
            Assert.False(string.IsNullOrWhiteSpace(row.Note), row.Id);
            Assert.Equal(row.Low is null, row.High is null);
            Assert.True(row.Low is null || (row.Low <= row.Value && row.Value <= row.High), row.Id);
        }
    }

    [Fact]
    public void Media_and_materials_have_known_sources_and_lie_in_their_ranges()
    {
        var figures = Medium.All.SelectMany(static m => new[] { m.Porosity, m.ContainerCapacity, m.AirSpace, m.EasilyAvailable, m.Unavailable, m.BulkDensity, m.Exchange, m.Buffer, m.Lime, m.StartPh, m.Mixing, m.PhosphateSorption }.Select(f => (m.Id, Figure: f)))
            .Concat(OrganicClass.All.SelectMany(static o => new[] { o.FastShare, o.Rate, o.Q10 }.Select(f => (o.Id, Figure: f))))
            .Concat(SlowFeed.All.Select(static s => (s.Id, Figure: s.Days))).ToList();
        Assert.True(figures.Count > 90);
        foreach (var (id, figure) in figures)
        {
            Check(id, figure.SourceId, figure.Provenance);
            Assert.True(figure.Low <= figure.Value && figure.Value <= figure.High, FormattableString.Invariant($"{id}: {figure.Low} {figure.Value} {figure.High}"));
        }
    }

    [Fact]
    public void Media_hold_less_than_their_pores_and_more_than_wilting()
    {
        foreach (var m in Medium.All)
        {
            Assert.True(m.ContainerCapacity.Value <= m.Porosity.Value && m.Unavailable.Value < m.ContainerCapacity.Value, m.Id);
            Assert.Equal(1, m.StartCations.Sum(), 9);
        }
    }

    [Fact]
    public void Every_organic_material_of_the_catalogue_has_a_class_told_by_name()
    {
        var named = OrganicClass.All.SelectMany(static o => o.Materials).ToHashSet(StringComparer.Ordinal);
        Assert.Empty(Ashery.Materials.MaterialCatalogue.Default.All.Where(m => m.IsOrganic && !named.Contains(m.Id)).Select(static m => m.Id));
    }

    private static void Check(string what, string sourceId, Provenance how)
    {
        var source = SourceIndex.Default.Find(sourceId);
        Assert.True(source is not null, $"{what}: source {sourceId} is not listed");
        Assert.True(how != Provenance.Seen || source.LookedUp, $"{what}: said to be seen in {sourceId}, whose text was never reached");
    }
}
