using Ashery.Climate;
using Ashery.Feeds;
using Ashery.Gardens;
using Ashery.Journal;
using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Tests.Planning;
using CsCheck;

namespace Ashery.Tests.Stock;

/// <summary>Gardens and journals for the tests of the book: a fixed one with round figures, and random ones in which everything happens.</summary>
internal static class StockTales
{
    public static readonly DateOnly Start = new(2027, 3, 1);

    private static readonly string[] LineIds = ["urea", "potassium-sulfate", "map-technical", "elsewhere"];

    private static readonly string[] Feeds = ["two", "three", "gone"];

    private static readonly string[] Pots = ["a", "b", "row", "old"];

    /// <summary>Urea 1000 g at 2 a kg, sulfate of potash without a figure, MAP 300 g without a price; a feed of two and one of three parts.</summary>
    public static Garden Garden { get; } = new()
    {
        Name = "tales",
        Place = new Place { Name = "somewhere", Latitude = 20 },
        Shelf = [SomeGardens.Bag("urea", 1000, 10, 5000), SomeGardens.Bag("potassium-sulfate", null, 6, 2000), SomeGardens.Bag("map-technical", 300)],
        Pots = [SomeGardens.Pot("a", 10, "bougainvillea"), SomeGardens.Pot("b", 4, "tropical-hibiscus"), SomeGardens.Pot("row", 2, "zonal-geranium") with { Count = 4 }],
        Feeds = [Feed("two", ("urea", 0.5), ("potassium-sulfate", 0.5)), Feed("three", ("urea", 0.25), ("potassium-sulfate", 0.5), ("map-technical", 0.25))],
        Settings = new() { ScaleStep = 1 },
    };

    /// <summary>A journal in which bags are bought, mixed, given, thrown away and counted; names of bags and batches are sometimes wrong.</summary>
    public static readonly Gen<IReadOnlyList<Entry>> Any = Steps.Array[1, 40].Select(static steps => Write(steps));

    private static Gen<(int Kind, int Day, int A, int B, int C, double Grams)> Steps =>
        Gen.Select(Gen.Int[0, 9], Gen.Int[0, 120], Gen.Int[0, 1000], Gen.Int[0, 1000], Gen.Int[0, 1000], Gen.Double[0.5, 800]);

    /// <summary>An entry at noon of a day counted from the start.</summary>
    public static Entry Entry(int day, EntryFacts facts, int hour = 12, params string[] pots) =>
        new() { Id = Guid.NewGuid(), Day = Start.AddDays(day), Time = new(hour, 0), Facts = facts, Pots = pots };

    /// <summary>A feed of the catalogue's materials by mass fractions.</summary>
    public static Feed Feed(string id, params (string Material, double Share)[] parts) => FeedMaker.FromParts(
        id, id, FeedKind.Mineral, parts.ToDictionary(static p => p.Material, static p => p.Share), static m => MaterialCatalogue.Default.Find(m), "feed").Value!;

    private static IReadOnlyList<Entry> Write((int Kind, int Day, int A, int B, int C, double Grams)[] steps)
    {
        List<Entry> entries = [];
        List<(Guid Id, string Line)> bags = [];
        List<Guid> batches = [];
        for (var i = 0; i < steps.Length; i++)
        {
            var (kind, day, a, b, c, grams) = steps[i];
            var line = LineIds[a % LineIds.Length];
            Guid? bag = bags.Count > 0 && b % 2 == 0 ? bags[b % bags.Count].Id : b % 11 == 0 ? Key(-1 - i) : null;
            Guid? batch = batches.Count > 0 && b % 3 > 0 ? batches[b % batches.Count] : b % 11 == 0 ? Key(-1 - i) : null;
            EntryFacts facts = kind switch
            {
                0 or 1 => new BagBought(line, grams * 3, c % 3 == 0 ? null : grams / 50, c % 4 == 0 ? null : FormattableString.Invariant($"M{c % 5}"), c % 2 == 0 ? Start.AddDays(c % 400) : null),
                2 => new StockCounted(line, grams, b % 4 == 0 ? bag : null),
                3 or 4 => new BatchMade(
                    FormattableString.Invariant($"L{i}"), Feeds[c % Feeds.Length],
                    [new(line, "urea", grams, bag), new(LineIds[c % LineIds.Length], "potassium-sulfate", grams / 3)], c % 2 == 0 ? Start.AddDays(day + (c % 90)) : null),
                5 => new Discarded(grams / 4, "caked", BagId: line, Bought: bag),
                6 => new Discarded(grams / 4, "wet", Batch: batch ?? Key(-1 - i)),
                _ => new FeedGiven(Feeds[c % Feeds.Length], [new(Pots[a % 4], grams / 30), new(Pots[(a + 1 + (b % 2)) % 4], grams / 60)], Batch: batch),
            };
            entries.Add(new() { Id = Key(i), Day = Start.AddDays(day), Time = a % 5 == 0 ? null : new(a % 24, b % 60), Facts = facts });
            if (facts is BagBought)
            {
                bags.Add((Key(i), line));
            }
            else if (facts is BatchMade)
            {
                batches.Add(Key(i));
            }
        }

        return entries;
    }

    // Keys that repeat from run to run, so that a failing case can be seen again.
    private static Guid Key(int i) => new(i, 7, 7, 7, 7, 7, 7, 7, 7, 7, 7);
}
