using Ashery.Climate;
using Ashery.Crops;
using Ashery.Feeds;
using Ashery.Gardens;
using Ashery.Nutrients;
using Ashery.Planning;
using Ashery.Planning.Fit;
using Ashery.Pots;
using CsCheck;

namespace Ashery.Tests.Planning;

/// <summary>The fitted plan keeps every season rule, gate and cap, in random gardens on both sides of the equator.</summary>
public class YearFitRuleTests
{
    // Held-out years differ from those the plan was tried on: the mean of 20 differs by chance.
    private const double Tolerance = 0.05;

    private static readonly Gen<(Garden Garden, DateOnly From)> Any =
        from any in SomeGardens.Any
        from mean in Gen.Double[2, 27]
        from swing in Gen.Double[0, 14]
        from rain in Gen.Double[0, 220].Array[12]
        let coldest = any.Garden.Place.Latitude < 0 ? 6 : 0
        select (any.Garden with
        {
            Place = any.Garden.Place with { Normals = [.. Enumerable.Range(0, 12).Select(m => Month(mean - (swing * Math.Cos((m - coldest) * Math.PI / 6)), rain[m]))] },
            Pots = [.. any.Garden.Pots.Take(2)],
        }, any.From);

    [Fact]
    public void Rules_gates_and_caps_hold_and_it_is_not_worse() => Any.Sample(
        static any =>
        {
            var (garden, from) = any;
            var made = YearFit.Plan(new FitRequest(garden, from) { Draws = 20 });
            if (!made.Ok)
            {
                return;
            }

            var year = made.Value;
            Rules(garden, year.Plan);
            Caps(garden, year.Plan);
            Assert.True(
                year.Fitted.Score <= (year.BesideMeasure.Score * (1 + Tolerance)) + 0.5,
                FormattableString.Invariant($"{year.Fitted.Score} against {year.BesideMeasure.Score}"));
        },
        iter: 20,
        threads: 1);

    private static MonthlyNormal Month(double mean, double rain) => new(mean + 5, mean - 5, rain);

    private static void Rules(Garden garden, YearPlan plan)
    {
        var rules = GardenRules.Of(garden).Rules;
        var seasons = new SeasonRules(SeasonCalendar.For(garden.Place, SeasonThresholds.From(rules)), rules);
        var rounds = FitGardens.Rounds(plan).Order().ToList();
        var least = ((int)rules["alternate-kinds"]["days"] + 1) / 2;
        Assert.All(rounds.Zip(rounds.Skip(1)), pair => Assert.True(pair.Second.DayNumber - pair.First.DayNumber >= least));
        foreach (var feed in plan.Feeds)
        {
            Assert.True(feed.Date >= plan.From && feed.Date <= plan.To);
            Assert.True(seasons.Of(feed.Kind, feed.Date).Allowed, FormattableString.Invariant($"{feed.Kind} on {feed.Date}"));
            foreach (var id in feed.Pots)
            {
                var pot = garden.Pots.Single(p => p.Id == id);
                var gate = FeedGate.Check(pot, CropCatalogue.Default.Find(pot.CropId)!, feed.Kind, feed.Date, null, null, rules);
                Assert.True(gate.IsOpen, FormattableString.Invariant($"{id} on {feed.Date}"));
            }
        }
    }

    /// <summary>Caps by the figures of the rules alone, counted here: grams a fortnight, salt, urea, organic, and the year's nitrogen.</summary>
    private static void Caps(Garden garden, YearPlan plan)
    {
        var rules = GardenRules.Of(garden).Rules;
        var feeds = garden.Feeds.Concat(plan.SubstituteFeeds).ToDictionary(static f => f.Id);
        var interval = Math.Max(1, (int)rules["alternate-kinds"]["days"]);
        foreach (var pot in garden.Pots)
        {
            var litres = pot.Volume.Litres;
            var given = plan.Feeds.SelectMany(f => f.Doses.Where(d => d.PotId == pot.Id).Select(d => (f.Date, f.Kind, Feed: feeds[f.FeedId], d.Grams))).OrderBy(static g => g.Date).ToList();
            DateOnly? lastMineral = null;
            foreach (var (date, kind, feed, grams) in given)
            {
                if (kind == FeedKind.Mineral)
                {
                    var days = Math.Min(interval, lastMineral is { } last ? date.DayNumber - last.DayNumber : interval);
                    Assert.True(grams <= (rules["rule-of-thumb"]["gramsPerLitre"] * litres * days / rules["rule-of-thumb"]["days"]) + 1e-6, FormattableString.Invariant($"{pot.Id} {date}: {grams} g in {litres} L after {days} days"));
                    lastMineral = date;
                }

                if (kind == FeedKind.Organic)
                {
                    Assert.True(grams <= (rules["organic-per-feed"]["gramsPerLitre"] * litres) + 1e-6);
                }

                if (kind is FeedKind.Mineral or FeedKind.Organic)
                {
                    Assert.True(grams * feed.Nitrogen.Urea <= (rules["urea-per-feed"]["gramsNPerLitre"] * litres) + 1e-6);
                }
            }

            var nitrogen = given.Where(static g => g.Kind is FeedKind.Mineral or FeedKind.Organic).Sum(static g => g.Grams * g.Feed.Label[Nutrient.N]);
            var most = FeederRates.Default.SeasonNitrogen(CropCatalogue.Default.Find(pot.CropId)!).Range.High * litres;
            Assert.True(nitrogen <= most * 1.001, FormattableString.Invariant($"{pot.Id}: {nitrogen} g N of {most}"));
        }
    }
}
