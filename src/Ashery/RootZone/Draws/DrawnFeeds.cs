using System.Globalization;
using Ashery.RootZone.Feeding;
using Ashery.RootZone.State;

namespace Ashery.RootZone.Draws;

/// <summary>Feeds as they are given rather than as they were meant: analysis, scoop, and how organic matter rots.</summary>
internal static class DrawnFeeds
{
    /// <summary>Unknowns of the feeds of a scenario.</summary>
    public static IEnumerable<UncertainFigure> Figures(PotScenario scenario)
    {
        var dry = scenario.Events.OfType<DryFeedEvent>().OrderBy(static e => e.Date).ToList();
        var feeds = Feeds(scenario);
        if (dry.Count > 0)
        {
            yield return SpreadRows.Of("scoop-habit");
        }

        if (scenario.Events.Any(static e => e is LiquidFeedEvent) || IonMath.Dot(scenario.Irrigation.Feed, scenario.Irrigation.Feed) > 0)
        {
            yield return SpreadRows.Of("can-strength");
        }

        for (var i = 0; i < feeds.Count; i++)
        {
            var row = SpreadRows.Of(feeds[i].OrganicN > feeds[i].Nitrogen / 2 ? "feed-organic" : "feed-mineral");
            yield return row with { Id = AnalysisId(i), Name = row.Name };
        }

        if (dry.Exists(static e => e.Feed.CoatedRate > 0))
        {
            yield return SpreadRows.Of("coated-rate");
        }

        foreach (var kind in OrganicClass.All.Where(k => dry.Exists(e => Fast(e.Feed, k.Id) > 0)))
        {
            yield return new(kind.Id + "-fast", "part of " + kind.Name + " that rots fast", UncertainGroup.Release, kind.FastShare.Low, kind.FastShare.Value, kind.FastShare.High);
            yield return new(kind.Id + "-rate", "how fast " + kind.Name + " rot", UncertainGroup.Release, kind.Rate.Low, kind.Rate.Value, kind.Rate.High);
        }

        // Two feeds on one day share the hand that gave them.
        foreach (var date in dry.Select(static e => e.Date).Distinct())
        {
            yield return SpreadRows.Of("scoop-each") with { Id = ScoopId(date) };
        }
    }

    /// <summary>Events of a draw.</summary>
    public static List<PotEvent> Of(PotScenario scenario, Medium medium, DrawSpace space, ReadOnlySpan<double> shares)
    {
        var feeds = Feeds(scenario);
        var habit = space.At("scoop-habit", shares, 1);
        var can = space.At("can-strength", shares, 1);
        var litres = space.At("watering-amount", shares, 1);
        var events = new List<PotEvent>(scenario.Events.Count);
        foreach (var e in scenario.Events)
        {
            switch (e)
            {
                case DryFeedEvent dry:
                    var analysis = space.At(AnalysisId(feeds.FindIndex(f => Same(f, dry.Feed))), shares, 1);
                    events.Add(dry with { Grams = dry.Grams * habit * space.At(ScoopId(dry.Date), shares, 1) * analysis, Feed = Rotting(dry.Feed, space, shares) });
                    break;
                case LiquidFeedEvent liquid:
                    events.Add(liquid with { PerLitre = liquid.PerLitre.Times(can), Litres = liquid.Litres * litres });
                    break;
                case RepotEvent repot:
                    events.Add(repot with { Medium = repot.Medium.Id == scenario.Medium.Id ? medium : DrawnMedium.Of(repot.Medium, scenario.Medium, space, shares) });
                    break;
                default:
                    events.Add(e);
                    break;
            }
        }

        return events;
    }

    private static FeedContents Rotting(FeedContents feed, DrawSpace space, ReadOnlySpan<double> shares)
    {
        var (meal, cake, compost) = (Factor("meal", shares), Factor("cake", shares), Factor("compost", shares));
        var (mealN, cakeN, compostN) = (feed.MealN * meal, feed.CakeN * cake, feed.CompostN * compost);
        return feed with
        {
            CoatedRate = feed.CoatedRate * space.At("coated-rate", shares, 1),
            MealN = mealN,
            MealC = feed.MealC * meal,
            CakeN = cakeN,
            CakeC = feed.CakeC * cake,
            CompostN = compostN,
            CompostC = feed.CompostC * compost,
            SlowN = Math.Max(0, feed.SlowN + feed.MealN + feed.CakeN - mealN - cakeN),
            HumusN = Math.Max(0, feed.HumusN + feed.CompostN - compostN),
        };

        double Factor(string id, ReadOnlySpan<double> at)
        {
            var place = space.PlaceOf(id + "-fast");
            return place < 0 ? 1 : space.Figures[place].At(at[place]) / space.Figures[place].Usual;
        }
    }

    private static List<FeedContents> Feeds(PotScenario scenario)
    {
        List<FeedContents> feeds = [];
        foreach (var dry in scenario.Events.OfType<DryFeedEvent>().OrderBy(static e => e.Date))
        {
            if (!feeds.Exists(f => Same(f, dry.Feed)))
            {
                feeds.Add(dry.Feed);
            }
        }

        return feeds;
    }

    // One bag is known by its figures.
    private static bool Same(in FeedContents a, in FeedContents b) =>
        a.Nitrogen == b.Nitrogen && a.OrganicN == b.OrganicN && a.LimeCalcium == b.LimeCalcium
        && a.Soluble[Ion.Potassium] == b.Soluble[Ion.Potassium] && a.Soluble[Ion.Phosphate] == b.Soluble[Ion.Phosphate] && a.Soluble[Ion.Calcium] == b.Soluble[Ion.Calcium];

    private static double Fast(in FeedContents feed, string kind) => kind switch { "meal" => feed.MealN, "cake" => feed.CakeN, _ => feed.CompostN };

    /// <summary>Id of the analysis of a feed in a scenario.</summary>
    public static string AnalysisId(PotScenario scenario, FeedContents feed) => AnalysisId(Feeds(scenario).FindIndex(f => Same(f, feed)));

    private static string AnalysisId(int feed) => "feed-" + (feed + 1).ToString(CultureInfo.InvariantCulture);

    private static string ScoopId(DateOnly date) => "scoop-" + date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
