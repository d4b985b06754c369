using Ashery.Climate;
using Ashery.Feeds;
using Ashery.Planning;

namespace Ashery.Tests.Planning;

/// <summary>Each rule that a grower can turn changes the plan as it says.</summary>
public class RuleChoiceTests
{
    private static readonly DateOnly NewYear = new(2027, 1, 1);

    private static readonly Season[] Seasons =
    [
        new(SeasonKind.Growing, new(3, 1), new(11, 30)), new(SeasonKind.Resting, new(12, 1), new(2, 28)),
        new(SeasonKind.Hot, new(7, 1), new(7, 31)), new(SeasonKind.Rainy, new(9, 1), new(9, 30)),
    ];

    private static YearPlan Plan(string rule, string setting) =>
        YearPlanner.Plan(new(SomeGardens.With(Seasons) with { RuleChanges = new Dictionary<string, string> { [rule] = setting } }, NewYear));

    [Theory]
    [InlineData("mineralOnly", FeedKind.Organic)]
    [InlineData("organicOnly", FeedKind.Mineral)]
    public void One_kind_only(string choice, FeedKind gone) => Assert.DoesNotContain(Plan("alternate-kinds", choice).Feeds, f => f.Kind == gone);

    [Fact]
    public void Turns_switched_off_are_said()
    {
        var plan = Plan("alternate-kinds", "off");
        Assert.DoesNotContain(plan.Feeds, static f => f.Kind is FeedKind.Mineral or FeedKind.Organic);
        Assert.Contains(plan.Problems, static p => p.Field == "rule alternate-kinds");
    }

    [Fact]
    public void Rest_may_be_fed_at_a_quarter()
    {
        var plan = Plan("resting-season", "reduce");
        var winter = plan.Feeds.First(static f => f.Date.Month == 1 && f.Pots.Contains("a")).Doses.First(static d => d.PotId == "a");
        Assert.Contains(winter.Reasons, static r => r.Contains("0.25 of the dose", StringComparison.Ordinal));
        Assert.DoesNotContain(YearPlanner.Plan(new(SomeGardens.With(Seasons), NewYear)).Feeds, static f => f.Date.Month is 1 or 2 or 12);
    }

    [Fact]
    public void Organic_feed_may_go_on_in_the_rain() =>
        Assert.Contains(Plan("organic-rainy-season", "off").Feeds, static f => f.Kind == FeedKind.Organic && f.Date.Month == 9);

    [Fact]
    public void The_weeks_before_rest_get_half_unless_told_otherwise()
    {
        double Wanted(YearPlan plan, int month) => plan.Feeds.First(f => f.Kind == FeedKind.Mineral && f.Date.Month == month && f.Pots.Contains("a")).Doses.First(static d => d.PotId == "a").WantedGrams;
        var usual = YearPlanner.Plan(new(SomeGardens.With(Seasons), NewYear));
        Assert.Equal(Wanted(usual, 5) / 2, Wanted(usual, 11), 9);
        var full = Plan("before-rest", "ignore");
        Assert.Equal(Wanted(full, 5), Wanted(full, 11), 9);
    }

    [Fact]
    public void Sprays_can_be_stopped_or_spaced()
    {
        Assert.DoesNotContain(Plan("foliar-magnesium", "off").Feeds, static f => f.Kind == FeedKind.Foliar);
        var days = Plan("foliar-magnesium", "days=60").Feeds.Where(static f => f.Kind == FeedKind.Foliar).Select(static f => f.Date).Distinct().ToList();
        Assert.All(days.Zip(days.Skip(1)), static p => Assert.True(p.Second.DayNumber - p.First.DayNumber >= 60));
    }

    [Theory]
    [InlineData("never", 0)]
    [InlineData("onceASeason", 1)]
    public void Trace_elements_never_or_once(string choice, int times) =>
        Assert.Equal(times, Plan("trace-by-need", choice).Feeds.Where(static f => f.Kind == FeedKind.TraceElements).Select(static f => f.Date).Distinct().Count());

    [Fact]
    public void A_day_outside_any_calendar_is_a_problem_and_not_a_crash()
    {
        Assert.NotEmpty(YearPlanner.Plan(new(SomeGardens.With(Seasons), DateOnly.MaxValue)).Problems);
        Assert.NotEmpty(YearPlanner.Plan(new(SomeGardens.With(Seasons), DateOnly.MinValue)).Problems);
    }
}
