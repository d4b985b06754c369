using Ashery.Climate;
using Ashery.Feeds;
using Ashery.Gardens;
using Ashery.Nutrients;
using Ashery.Planning;
using Ashery.Pots;
using Ashery.Problems;

namespace Ashery.Tests.Planning;

public class YearPlannerTests
{
    private static readonly DateOnly NewYear = new(2027, 1, 1);

    private static readonly Season AllYear = new(SeasonKind.Growing, new(1, 1), new(12, 31));

    [Fact]
    public void Mineral_and_organic_take_turns_a_fortnight_apart()
    {
        var plan = YearPlanner.Plan(new(SomeGardens.With(AllYear), NewYear));
        var turns = plan.Feeds.Where(static f => f.Kind is FeedKind.Mineral or FeedKind.Organic).DistinctBy(static f => f.Date).ToList();
        Assert.Equal(27, turns.Count);
        Assert.All(turns.Zip(turns.Skip(1)), static p =>
        {
            Assert.Equal(14, p.Second.Date.DayNumber - p.First.Date.DayNumber);
            Assert.NotEqual(p.First.Kind, p.Second.Kind);
        });
    }

    // Rate x volume / feeds: 0.9 g N/L x 10 L / 27 feeds / 20 % N = 1.667 g salts for the bougainvillea in 10 L.
    [Fact]
    public void A_dose_of_the_plan_is_the_season_shared()
    {
        var plan = YearPlanner.Plan(new(SomeGardens.With(AllYear), NewYear));
        var dose = plan.Feeds.First(static f => f.Kind == FeedKind.Mineral && f.Pots.Contains("a")).Doses.First(static d => d.PotId == "a");
        Assert.Equal(0.9 * 10 / 27 / 0.2, dose.WantedGrams, 6);
        var supply = plan.Supply.Single(static s => s.PotId == "a");
        Assert.InRange(supply.Season, 0.85, 0.95);
        Assert.Equal("medium", supply.Band);
    }

    [Fact]
    public void Where_both_rules_stop_the_plan_says_so_and_offers_the_nearest_safe_feed()
    {
        var plan = YearPlanner.Plan(new(SomeGardens.With(AllYear, new(SeasonKind.Hot, new(5, 1), new(7, 31)), new(SeasonKind.Rainy, new(6, 15), new(9, 30))), NewYear));
        var offer = Assert.Single(plan.Offers);
        Assert.Equal((new DateOnly(2027, 6, 15), new DateOnly(2027, 7, 31)), (offer.From, offer.To));
        Assert.Equal((FeedKind.Mineral, "salts", 0.25), (offer.Kind, offer.FeedId, offer.Factor));
        Assert.Contains("hot season", offer.Words, StringComparison.Ordinal);
        Assert.Contains("rainy season", offer.Words, StringComparison.Ordinal);
        Assert.Contains(plan.Problems, static p => p.Severity == Severity.Warning && p.Message.Contains("neither", StringComparison.Ordinal));
        Assert.DoesNotContain(plan.Feeds, f => f.Kind is FeedKind.Mineral or FeedKind.Organic && f.Date >= offer.From && f.Date <= offer.To);
    }

    [Fact]
    public void Without_a_dissolving_mineral_feed_a_leaf_feed_is_offered_and_without_that_water()
    {
        Season[] seasons = [AllYear, new(SeasonKind.Hot, new(5, 1), new(7, 31)), new(SeasonKind.Rainy, new(6, 15), new(9, 30))];
        var garden = SomeGardens.With(seasons) with { RuleChanges = new Dictionary<string, string> { ["foliar-hot-season"] = "reduce" } };
        var leaf = YearPlanner.Plan(new(garden with { Feeds = [SomeGardens.Organic, SomeGardens.Leaf] }, NewYear));
        Assert.Contains(leaf.Offers, static o => o.Kind == FeedKind.Foliar);
        var water = YearPlanner.Plan(new(garden with { Feeds = [SomeGardens.Organic] }, NewYear));
        Assert.All(water.Offers, static o => Assert.Null(o.FeedId));
        Assert.NotEmpty(water.Offers);
    }

    [Fact]
    public void A_grower_may_reduce_in_heat_instead_of_stopping_and_is_told_what_advice_differs()
    {
        Season[] seasons = [AllYear, new(SeasonKind.Hot, new(5, 1), new(7, 31))];
        var garden = SomeGardens.With(seasons) with
        {
            Feeds = [SomeGardens.Mineral],
            RuleChanges = new Dictionary<string, string> { ["mineral-hot-season"] = "reduce, factor=0.4", ["rule-of-thumb"] = "off" },
        };
        var plan = YearPlanner.Plan(new(garden, NewYear));
        var cool = plan.Feeds.First(static f => f.Date.Month == 2 && f.Pots.Contains("a")).Doses.First(static d => d.PotId == "a");
        var hot = plan.Feeds.First(static f => f.Date.Month == 6 && f.Pots.Contains("a")).Doses.First(static d => d.PotId == "a");
        Assert.Equal(cool.WantedGrams * 0.4, hot.WantedGrams, 9);
        Assert.Contains(hot.Reasons, static r => r.Contains("Published advice", StringComparison.Ordinal));
        Assert.Contains(plan.Rules, static r => r is { RuleId: "mineral-hot-season", Differs: not null });
    }

    [Fact]
    public void A_change_that_cannot_be_is_explained_and_the_others_stand()
    {
        var garden = SomeGardens.With(AllYear) with { RuleChanges = new Dictionary<string, string> { ["alternate-kinds"] = "days=21", ["resting-season"] = "factor=7", ["no-such-rule"] = "on" } };
        var plan = YearPlanner.Plan(new(garden, NewYear));
        Assert.Equal(2, plan.Problems.Count(static p => p.Field.StartsWith("rule ", StringComparison.Ordinal)));
        var turns = plan.Feeds.Where(static f => f.Kind is FeedKind.Mineral or FeedKind.Organic).Select(static f => f.Date).Distinct().ToList();
        Assert.Equal(21, turns[1].DayNumber - turns[0].DayNumber);
    }

    [Theory]
    [InlineData(2028, 2, 29, 2029, 2, 28)]
    [InlineData(2027, 3, 1, 2028, 2, 29)]
    [InlineData(2027, 1, 1, 2027, 12, 31)]
    [InlineData(2027, 6, 15, 2028, 6, 14)]
    public void A_year_ends_the_day_before_its_anniversary(int y, int m, int d, int y2, int m2, int d2) =>
        Assert.Equal(new DateOnly(y2, m2, d2), YearPlanner.Plan(new(SomeGardens.With(AllYear), new(y, m, d))).To);

    [Fact]
    public void A_bag_that_runs_out_is_replaced_at_equal_nitrogen()
    {
        var full = SomeGardens.With(AllYear) with { Feeds = [SomeGardens.Mineral] };
        var scarce = full with { Shelf = [SomeGardens.Bag("ammonium-sulfate", 12), SomeGardens.Bag("urea", 1000)], RuleChanges = new Dictionary<string, string> { ["urea-per-feed"] = "gramsNPerLitre=0.5" } };
        var plan = YearPlanner.Plan(new(scarce, NewYear));
        var replacement = Assert.Single(plan.Replacements);
        Assert.Equal("ammonium-sulfate", replacement.MaterialId);
        Assert.Contains(replacement.On.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture), replacement.Words, StringComparison.Ordinal);
        var feeds = full.Feeds.Concat(plan.SubstituteFeeds).ToDictionary(static f => f.Id);
        foreach (var pot in full.Pots)
        {
            var before = Nitrogen(YearPlanner.Plan(new(full, NewYear)), feeds, pot.Id);
            var after = Nitrogen(plan, feeds, pot.Id);
            Assert.Equal(before.Count, after.Count);

            // Each dose is rounded to the scale of 0.1 g, or within a twentieth.
            Assert.All(before.Zip(after), p => Assert.InRange(p.Second, (p.First * 0.85) - 0.05, (p.First * 1.15) + 0.05));
        }
    }

    [Fact]
    public void What_cannot_be_replaced_is_on_the_shopping_list_with_its_day()
    {
        var garden = SomeGardens.With(AllYear) with { Feeds = [SomeGardens.Mineral], Shelf = [SomeGardens.Bag("ammonium-sulfate", 12, 9, 1000)] };
        var plan = YearPlanner.Plan(new(garden, NewYear));
        var line = Assert.Single(plan.Shopping);
        Assert.Equal((1, 9.0, 1000.0), (line.Bags, line.Cost, line.ToBuyGrams));
        Assert.NotNull(line.RunsOut);
        Assert.Equal(9.0, plan.ShoppingCost);
        var unknown = YearPlanner.Plan(new(garden with { Shelf = [SomeGardens.Bag("ammonium-sulfate", 12)] }, NewYear));
        Assert.Null(unknown.ShoppingCost);
    }

    [Fact]
    public void The_same_garden_and_day_give_the_same_plan()
    {
        var garden = SomeGardens.With(AllYear, new(SeasonKind.Hot, new(7, 1), new(8, 31)));
        var (a, b) = (YearPlanner.Plan(new(garden, NewYear)), YearPlanner.Plan(new(garden, NewYear)));
        Assert.Equal(a.Feeds.Select(static f => (f.Date, f.FeedId, f.GramsPerPot, string.Join(',', f.Pots))), b.Feeds.Select(static f => (f.Date, f.FeedId, f.GramsPerPot, string.Join(',', f.Pots))));
    }

    [Fact]
    public void Weakest_feed_goes_first_on_a_round()
    {
        var plan = YearPlanner.Plan(new(SomeGardens.With(AllYear), NewYear));
        Assert.All(plan.Feeds.GroupBy(static f => (f.Date, f.FeedId)), static day =>
        {
            var strengths = day.Select(static f => WalkingOrder.Strength(f.Doses[0])).ToList();
            Assert.Equal(strengths.Order(), strengths);
        });
    }

    [Fact]
    public void An_empty_garden_and_a_missing_feed_are_said()
    {
        var none = YearPlanner.Plan(new(SomeGardens.With(AllYear) with { Pots = [], Feeds = [] }, NewYear));
        Assert.Empty(none.Feeds);
        Assert.Contains(none.Problems, static p => p.Field == "pots");
        Assert.Contains(none.Problems, static p => p.Field == "feeds");
    }

    private static List<double> Nitrogen(YearPlan plan, Dictionary<string, Feed> feeds, string pot) =>
        [.. plan.Feeds.SelectMany(f => f.Doses.Where(d => d.PotId == pot).Select(d => d.Grams * feeds[f.FeedId].Label[Nutrient.N]))];
}
