using Ashery.Climate;
using Ashery.Feeds;
using Ashery.Gardens;
using Ashery.Journal;
using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Pots;
using Ashery.Quantities;
using CsCheck;
using Measured = Ashery.Journal.Measured;

namespace Ashery.Tests.Journal;

/// <summary>A small garden and random entries about it.</summary>
internal static class Plants
{
    public static readonly DateOnly First = new(2027, 3, 1);

    public static readonly string[] PotIds = ["tub", "bowl", "crate"];

    private static readonly Gen<string> FeedIds = Gen.Bool.Select(static b => b ? "spring" : "summer");

    public static Garden Garden { get; } = new()
    {
        Name = "Terrace",
        Place = new Place { Name = "Harbour", Latitude = 43 },
        Pots = [Pot("tub", "rose", 12, 1), Pot("bowl", "poinsettia", 2, 6), Pot("crate", "rose", 20, 1)],
        Feeds = [Feed("spring", 0.6), Feed("summer", 0.25)],
        Shelf =
        [
            new Bag("urea-bag", MaterialCatalogue.Default.Find("urea")!, null, 12, new Mass(4000)),
            new Bag("mkp-bag", MaterialCatalogue.Default.Find("mkp")!, null, null, null),
        ],
    };

    public static Gen<Entry> Entries { get; } =
        from id in Gen.Guid
        from day in Gen.Int[0, 200]
        from pots in Gen.Shuffle(PotIds, 1, 3)
        from facts in Gen.OneOf(Given(pots), Read!, Other!)
        select new Entry
        {
            Id = id,
            Day = First.AddDays(day),
            Pots = facts is Measured ? pots[..1] : pots,
            Facts = facts is TaskSkipped s ? s with { Task = new(First.AddDays(day), s.Task.FeedId) } : facts,
        };

    private static Gen<EntryFacts> Read { get; } =
        from what in Gen.Enum<MeasuredKind>()
        from share in Gen.Double[0, 1]
        select (EntryFacts)new Measured(what, MeasuredRange.Of(what).From + (share * Math.Min(100, MeasuredRange.Of(what).To - MeasuredRange.Of(what).From)));

    private static Gen<EntryFacts> Other { get; } = Gen.OneOf(
        Gen.Enum<PlantEventKind>().Select(static k => (EntryFacts)new PlantEvent(k)),
        Gen.Int[0, 3].Select(static s => (EntryFacts)new Sighting("aphids", s)),
        FeedIds.Select(static f => (EntryFacts)new TaskSkipped(new(First, f), "rain")),
        Gen.Const((EntryFacts)new Photograph(new string('a', 64), 40, 30)));

    private static Gen<EntryFacts> Given(string[] pots) =>
        from feed in FeedIds
        from grams in Gen.Double[0, 50]
        select (EntryFacts)new FeedGiven(feed, [.. pots.Select(p => new PotAmount(p, grams, grams / 10))]);

    private static Pot Pot(string id, string crop, double litres, int count) =>
        new() { Id = id, Name = char.ToUpperInvariant(id[0]) + id[1..], CropId = crop, Volume = new Volume(litres), Medium = MediumKind.PeatMix, Count = count };

    private static Feed Feed(string id, double urea) => new()
    {
        Id = id,
        Name = id + " feed",
        Kind = FeedKind.Mineral,
        Parts = new Dictionary<string, double>(StringComparer.Ordinal) { ["urea"] = urea, ["mkp"] = 1 - urea },
        Label = LabelAnalysis.Grade(46 * urea, 52 * (1 - urea), 34 * (1 - urea)),
    };
}
