using Ashery.Climate;
using Ashery.Feeds;
using Ashery.Gardens;
using Ashery.Planning;
using Ashery.Pots;

namespace Ashery.Tests.Planning;

public class SideFeedTests
{
    private static readonly DateOnly NewYear = new(2027, 1, 1);

    private static readonly Season AllYear = new(SeasonKind.Growing, new(1, 1), new(12, 31));

    private static Garden Garden(params Pot[] pots) => SomeGardens.With(AllYear) with { Pots = pots, Feeds = [SomeGardens.Mineral, SomeGardens.Organic, SomeGardens.Leaf, SomeGardens.Trace, SomeGardens.Fungus] };

    private static int Times(YearPlan plan, FeedKind kind, string pot) => plan.Feeds.Count(f => f.Kind == kind && f.Pots.Contains(pot));

    [Fact]
    public void Leaves_are_sprayed_once_a_month()
    {
        var plan = YearPlanner.Plan(new(Garden(SomeGardens.Pot("a", 10, "bougainvillea")), NewYear));
        Assert.InRange(Times(plan, FeedKind.Foliar, "a"), 10, 12);
    }

    [Fact]
    public void Trace_elements_go_only_where_a_need_is_shown()
    {
        var plan = YearPlanner.Plan(new(
            Garden(
                SomeGardens.Pot("told", 5, "gardenia") with { NeedsTraceElements = true },
                SomeGardens.Pot("denied", 5, "gardenia") with { NeedsTraceElements = false, LastRepotted = new(2020, 1, 1) },
                SomeGardens.Pot("old", 5, "gardenia") with { LastRepotted = new(2025, 1, 1) },
                SomeGardens.Pot("fresh", 5, "gardenia") with { LastRepotted = new(2026, 10, 1) },
                SomeGardens.Pot("unknown", 5, "gardenia"),
                SomeGardens.Pot("loam", 5, "gardenia", MediumKind.LoamMix) with { LastRepotted = new(2020, 1, 1) }),
            NewYear));
        Assert.Equal([1, 0, 1, 0, 0, 0], new[] { "told", "denied", "old", "fresh", "unknown", "loam" }.Select(p => Times(plan, FeedKind.TraceElements, p)));
    }

    // Biermann and Linderman 1983 (seen): geraniums in peat, bark, perlite and vermiculite gained nothing from the fungus.
    [Fact]
    public void Inoculant_is_off_in_soilless_mixes_and_twice_a_year_at_most_in_loam()
    {
        var garden = Garden(SomeGardens.Pot("peat", 5, "rose"), SomeGardens.Pot("loam", 5, "rose", MediumKind.LoamMix), SomeGardens.Pot("rich", 5, "rose", MediumKind.LoamMix) with { LowPhosphorus = false });
        var plan = YearPlanner.Plan(new(garden, NewYear));
        Assert.Equal([0, 2, 0], new[] { "peat", "loam", "rich" }.Select(p => Times(plan, FeedKind.Inoculant, p)));
        var asked = YearPlanner.Plan(new(garden with { RuleChanges = new Dictionary<string, string> { ["inoculant-soilless"] = "on" } }, NewYear));
        Assert.Equal(2, Times(asked, FeedKind.Inoculant, "peat"));
    }

    [Fact]
    public void Inoculant_waits_where_the_feed_is_rich_in_phosphorus()
    {
        var rich = SomeGardens.Mineral with { Label = Nutrients.LabelAnalysis.Grade(10, 20, 10) };
        var garden = Garden(SomeGardens.Pot("loam", 5, "rose", MediumKind.LoamMix));
        var plan = YearPlanner.Plan(new(garden with { Feeds = [rich, SomeGardens.Fungus] }, NewYear));
        Assert.Equal(0, Times(plan, FeedKind.Inoculant, "loam"));
    }

    [Fact]
    public void A_pot_just_repotted_is_left_out_with_the_day_it_may_be_fed()
    {
        var plan = YearPlanner.Plan(new(Garden(SomeGardens.Pot("a", 5, "rose") with { LastRepotted = new(2026, 12, 28) }, SomeGardens.Pot("b", 5, "rose")), NewYear));
        var first = plan.Feeds.First(static f => f.Kind == FeedKind.Mineral);
        Assert.Contains(first.LeftOut, static l => l.PotId == "a" && l.Why.Contains("2027-01-18", StringComparison.Ordinal));
        Assert.True(plan.Feeds.First(static f => f.Kind is FeedKind.Mineral or FeedKind.Organic && f.Pots.Contains("a")).Date >= new DateOnly(2027, 1, 18));
    }

    [Fact]
    public void Lime_is_never_given_within_a_week_of_ammonium_nor_to_acid_lovers()
    {
        var acid = SomeGardens.Mineral with { LimeEquivalent = 2.5 };
        var garden = Garden(SomeGardens.Pot("a", 5, "tropical-hibiscus"), SomeGardens.Pot("b", 5, "petunia")) with { Feeds = [acid] };
        var plan = YearPlanner.Plan(new(garden, NewYear));
        var (hibiscus, petunia) = (plan.LimeDebts.Single(static d => d.PotId == "a"), plan.LimeDebts.Single(static d => d.PotId == "b"));
        Assert.NotEmpty(hibiscus.Corrections);
        Assert.Empty(petunia.Corrections);
        var fed = plan.Feeds.Where(static f => f.Pots.Contains("a")).Select(static f => f.Date.DayNumber).ToList();
        Assert.All(hibiscus.Corrections, c => Assert.All(fed, day => Assert.True(Math.Abs(day - c.Date.DayNumber) >= 7)));

        // What is paid back never passes what is owed: dolomite neutralises about its own weight.
        Assert.True(hibiscus.Corrections.Sum(static c => c.Grams) <= hibiscus.Grams * 1.3);
        Assert.All(hibiscus.Corrections, c => Assert.True(c.Grams <= 5 * 1.3));
    }

    [Fact]
    public void Debt_is_the_sum_of_what_the_feeds_cost()
    {
        var plan = YearPlanner.Plan(new(Garden(SomeGardens.Pot("a", 5, "rose")) with { Feeds = [SomeGardens.Mineral] }, NewYear));
        Assert.Equal(plan.Feeds.SelectMany(static f => f.Doses).Sum(static d => d.Grams) * 1.0, plan.LimeDebts.Single().Grams, 6);
        Assert.True(plan.LimeDebts.Single().IsComplete);
    }
}
