using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Problems;
using Ashery.RootZone;
using Ashery.RootZone.Feeding;

namespace Ashery.Exchange.RootZone;

/// <summary>
/// One event of a scenario, told by what it holds: <c>grams</c> of a feed strewn; <c>litres</c> with <c>gramsPerLitre</c> or <c>nitrogen</c> (mg N/L) of one from the can;
/// <c>flush</c> litres; <c>prune</c> a share; <c>repot</c> a pot.
/// </summary>
internal sealed class PotEventReader(List<Problem> problems)
{
    public PotEvent? Read(JsonFields e, PotShape shape)
    {
        if (e.Date("date") is not { } date)
        {
            return null;
        }

        if (e.Has("flush"))
        {
            e.Only("date", "flush");
            return new FlushEvent(date, e.Needed("flush", 0, 1000));
        }

        if (e.Has("prune"))
        {
            e.Only("date", "prune");
            return new PruneEvent(date, e.Needed("prune", 0, 0.95));
        }

        if (e.Object("repot") is { } pot)
        {
            e.Only("date", "repot", "medium", "oldKept");
            var reader = new PotFileReader(problems);
            return reader.Shape(pot) is { } into && reader.MediumOf(e.Text("medium") ?? "peat-mix", e.At("medium")) is { } medium
                ? new RepotEvent(date, into, medium, e.Number("oldKept", 0, 1) ?? Math.Min(1, shape.Litres / into.Litres))
                : null;
        }

        return Feed(e, date);
    }

    private PotEvent? Feed(JsonFields e, DateOnly date)
    {
        e.Only("date", "feed", "coated", "grams", "litres", "gramsPerLitre", "nitrogen");
        if (Contents(e) is not { } feed)
        {
            return null;
        }

        if (e.Has("grams"))
        {
            return new DryFeedEvent(date, feed, e.Needed("grams", 0, 10000));
        }

        var litres = e.Needed("litres", 0, 1000);
        if (e.Number("nitrogen", 0, 5000) is { } nitrogen)
        {
            return new LiquidFeedEvent(date, FeedBuilder.LiquidByNitrogen(feed, nitrogen), litres);
        }

        return new LiquidFeedEvent(date, FeedBuilder.Liquid(feed, e.Needed("gramsPerLitre", 0, 100)), litres);
    }

    private FeedContents? Contents(JsonFields e)
    {
        if (e.Object("coated") is { } coated)
        {
            // Half of the nitrogen as nitrate, half as ammonium, where a label tells no forms.
            coated.Only("n", "p2O5", "k2O", "days");
            var n = coated.Needed("n", 0, 46);
            return FeedBuilder.Coated(
                LabelAnalysis.Grade(n, coated.Number("p2O5", 0, 60) ?? 0, coated.Number("k2O", 0, 60) ?? 0), new(n / 200, n / 200, 0, 0, 0), coated.Needed("days", 20, 800));
        }

        if (e.Text("feed") is not { } text)
        {
            problems.Add(new(e.At("feed"), "The event does nothing.", "Give feed with grams, feed with litres and gramsPerLitre, flush, prune or repot."));
            return null;
        }

        var material = InlineMaterial.Parse(text, MaterialCatalogue.Default);
        problems.AddRange(material.Problems.Where(static p => p.Severity == Severity.Error).Select(p => p with { Field = e.At("feed") }));
        return material.Ok ? FeedBuilder.Of(material.Value) : null;
    }
}
