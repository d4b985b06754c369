using Ashery.Cards.Pictures;
using Ashery.Climate;
using Ashery.Feeds;
using Ashery.Gardens;
using Ashery.Nutrients;
using Ashery.Planning;
using Ashery.Pots;

namespace Ashery.Cards.Tests.Support;

/// <summary>Values made by hand for the tests of pictures and cards; figures of our own.</summary>
internal static partial class Samples
{
    public static TriangleView Shelf => new()
    {
        Target = new(3, 1, 4),
        TargetName = "3:1:4",
        Blend = new(0.142, 0.047, 0.19),
        BlendName = "14.2-4.7-19",
        Materials =
        [
            new("Ammonium sulfate", new(21, 0, 0)),
            new("Urea", new(46, 0, 0)),
            new("Calcium nitrate", new(15.5, 0, 0)),
            new("Potassium nitrate", new(13, 0, 46), Chosen: true),
            new("MAP, technical", new(12, 61, 0), Chosen: true),
            new("Potassium sulfate", new(0, 0, 50)),
            new("Monopotassium phosphate", new(0, 52, 34)),
            new("Ammonium nitrate", new(34, 0, 0), Chosen: true),
            new("Neem cake", new(3, 1, 1.5)),
            new("Bone meal, steamed", new(2, 22, 0)),
            new("Vermicompost", new(1.5, 1, 1)),
            new("Epsom salt", new(0, 0, 0)),
        ],
    };

    public static YearPlan Year => new()
    {
        From = new(2026, 12, 1),
        To = new(2027, 11, 30),
        Seasons =
        [
            new(SeasonKind.Resting, new(2026, 12, 1), new(2027, 2, 14)),
            new(SeasonKind.Growing, new(2027, 2, 15), new(2027, 6, 14)),
            new(SeasonKind.Hot, new(2027, 5, 20), new(2027, 7, 31)),
            new(SeasonKind.Rainy, new(2027, 7, 15), new(2027, 9, 20)),
            new(SeasonKind.Growing, new(2027, 9, 21), new(2027, 11, 10)),
            new(SeasonKind.Resting, new(2027, 11, 11), new(2027, 11, 30)),
        ],
        Feeds = [.. Feeds().OrderBy(f => f.Date).ThenBy(f => f.Kind)],
        Months = [.. Enumerable.Range(0, 12).Select(i => new MonthTotal(i == 0 ? 2026 : 2027, ((i + 11) % 12) + 1, new LabelAnalysisGrams(new Dictionary<Nutrient, double> { [Nutrient.N] = 2.5 * i, [Nutrient.P] = i, [Nutrient.K] = 3.25 * i })))],
        Shopping =
        [
            new("potassium-nitrate", "Potassium nitrate", 1240, 400, 840, 4.2),
            new("ammonium-nitrate", "Ammonium nitrate", 900, 900, 0, null),
            new("neem-cake", "Neem cake", 5200, 1000, 4200, 9.66),
            new("map-technical", "MAP, technical", 230, 0, 230, null),
        ],
    };

    public static Garden Garden => new()
    {
        Name = "Roof terrace over the old harbour",
        Place = new() { Name = "Port Alder", Latitude = 38.5 },
        Pots = [Pot("Hibiscus", 10), Pot("Rose, large tub", 30)],
    };

    public static PlannedFeed Feed(DateOnly date, FeedKind kind, string name, double grams, params string[] pots) =>
        new(date, kind, name, name, pots, grams, [], ["growing season"]);

    private static IEnumerable<PlannedFeed> Feeds()
    {
        for (var d = new DateOnly(2027, 2, 16); d < new DateOnly(2027, 11, 8); d = d.AddDays(14))
        {
            if (d < new DateOnly(2027, 5, 20) || d > new DateOnly(2027, 7, 31))
            {
                yield return Feed(d, FeedKind.Mineral, "Terrace blend 3:1:4", 4, "Jasmine by the door", "Hibiscus");
            }

            if (d.Month is not (7 or 8 or 9))
            {
                yield return Feed(d.AddDays(7), FeedKind.Organic, "Meal mix", 12, "Rose, large tub");
            }
        }

        for (var m = 3; m <= 10; m++)
        {
            yield return Feed(new(2027, m, 5), FeedKind.Foliar, "Epsom salt spray", 2, "all pots");
        }

        yield return Feed(new(2027, 3, 20), FeedKind.TraceElements, "Trace mix", 0.1, "Hibiscus");
        yield return Feed(new(2027, 9, 25), FeedKind.TraceElements, "Trace mix", 0.1, "Hibiscus");
        yield return Feed(new(2027, 3, 1), FeedKind.Inoculant, "Mycorrhiza", 5, "Rose, large tub");
    }

    public static Pot Pot(string id, double litres, int count = 1) => new()
    {
        Id = id, Name = id, CropId = "rose", Volume = new(litres), Medium = MediumKind.BarkMix, Count = count,
    };
}
