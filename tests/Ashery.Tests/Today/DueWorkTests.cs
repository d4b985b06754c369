using Ashery.Climate;
using Ashery.Gardens;
using Ashery.Journal;
using Ashery.Tests.Planning;
using Ashery.Today;

namespace Ashery.Tests.Today;

/// <summary>
/// The days below are counted by hand: turns of fourteen days from 1 March, the first growing day after the pause: 1, 15, 29 March, 12, 26
/// April, 10, 24 May, 7 June, mineral first.
/// </summary>
public sealed class DueWorkTests
{
    private static readonly Season Growing = new(SeasonKind.Growing, new(3, 1), new(11, 30)), Resting = new(SeasonKind.Resting, new(12, 1), new(2, 28));

    private static readonly Garden Garden = SomeGardens.With(Growing, Resting) with { Feeds = [SomeGardens.Mineral, SomeGardens.Organic] };

    private static readonly DateOnly May10 = new(2027, 5, 10), April26 = new(2027, 4, 26);

    private static readonly TaskId Task = new(May10, "meals");

    [Fact]
    public void What_was_due_yesterday_is_overdue_today_and_not_gone()
    {
        Assert.Equal([(May10, DueState.Coming)], Near(new(2027, 5, 9), DueState.Coming).Take(1));
        Assert.Equal([(May10, DueState.Due)], Near(May10, DueState.Due));
        Assert.Equal([(May10, DueState.Overdue)], Near(new(2027, 5, 11), DueState.Overdue));
        Assert.Equal([(May10, DueState.Overdue)], Near(new(2027, 5, 23), DueState.Overdue));

        // On the day of the next turn that one is due, and the old one is let go: no double dose.
        var next = Day(new(2027, 5, 24));
        Assert.All(next.Open, static r => Assert.Equal(new DateOnly(2027, 5, 24), r.On));
        Assert.All(next.All.Where(static p => p.Task.Day == May10), static p => Assert.Equal(DueState.Missed, p.State));
    }

    [Fact]
    public void A_feed_given_late_pushes_the_next_back_to_a_whole_interval()
    {
        var given = Given(new(2027, 5, 14), "a");
        var on24 = Day(new(2027, 5, 24), given);
        var a = on24.All.Single(static p => p.PotId == "a" && p.Task.Day == new DateOnly(2027, 5, 24));
        Assert.Equal((DueState.Coming, new DateOnly(2027, 5, 28), new DateOnly(2027, 5, 14)), (a.State, a.On, a.PushedBy));
        Assert.Equal(["b", "c"], on24.Open.SelectMany(static r => r.Pots).Select(static p => p.PotId).Order());
        Assert.Equal(DueState.Due, Day(new(2027, 5, 28), given).All.Single(static p => p.PotId == "a" && p.Task.Day == new DateOnly(2027, 5, 24)).State);
    }

    [Fact]
    public void A_feed_given_besides_the_plan_counts_as_well()
    {
        var extra = new Entry { Id = Guid.NewGuid(), Day = new(2027, 5, 9), Pots = ["a"], Facts = new FeedGiven("salts", [new("a", 2)]) };
        var a = Day(May10, extra).All.Where(static p => p.PotId == "a").ToList();
        Assert.Equal(new DateOnly(2027, 5, 23), a.Single(static p => p.Task.Day == May10).On);
        Assert.DoesNotContain(a, static p => p.IsOpenToday);
    }

    [Fact]
    public void Done_skipped_and_moved_are_kept_pot_by_pot()
    {
        var skipped = new Entry { Id = Guid.NewGuid(), Day = May10, Pots = ["b"], Facts = new TaskSkipped(Task, "rain") };
        var moved = new Entry { Id = Guid.NewGuid(), Day = May10, Pots = ["c"], Facts = new TaskMoved(Task, new(2027, 5, 13)) };
        var done = Day(May10, Given(May10, "a"), skipped, moved);
        Assert.Empty(done.Open);
        Assert.Equal(3, done.Done.Count);
        Assert.Equal(
            [("a", DueState.Given), ("b", DueState.Skipped), ("c", DueState.Coming)],
            done.All.Where(static p => p.Task == Task).Select(static p => (p.PotId, p.State)).Order());
        Assert.Equal(["c"], Assert.Single(Day(new(2027, 5, 13), skipped, moved, Given(May10, "a")).Open).Pots.Select(static p => p.PotId));
    }

    [Fact]
    public void An_answer_without_pots_is_for_all_of_them()
    {
        var all = new Entry { Id = Guid.NewGuid(), Day = May10, Facts = new TaskSkipped(Task, "heat") };
        Assert.Empty(Day(May10, all).Open);
    }

    [Fact]
    public void Nothing_is_overdue_from_before_the_pot_was_there_or_after_it_died()
    {
        var today = new DateOnly(2027, 5, 12);
        var died = new Entry { Id = Guid.NewGuid(), Day = new(2027, 5, 1), Pots = ["b"], Facts = new PlantEvent(PlantEventKind.Died) };
        var request = new DueRequest(Garden, DuePlan.For(Garden, today), [died]) { Since = new Dictionary<string, DateOnly> { ["a"] = new(2027, 5, 11) } };
        Assert.Equal(["c"], DueWork.For(request).Open.SelectMany(static r => r.Pots).Select(static p => p.PotId));

        var again = new Entry { Id = Guid.NewGuid(), Day = new(2027, 5, 3), Pots = ["b"], Facts = new PlantEvent(PlantEventKind.Planted) };
        Assert.Equal(["b", "c"], DueWork.For(request with { Entries = [died, again] }).Open.SelectMany(static r => r.Pots).Select(static p => p.PotId).Order());
    }

    [Fact]
    public void Heat_and_a_dry_medium_hold_what_rain_only_warns_of()
    {
        var heat = Noted(WeatherSign.Heat);
        var hot = Day(April26, heat);
        Assert.All(hot.Open.SelectMany(static r => r.Pots), static p => Assert.Contains(p.Holds, static h => h.RuleId == "heat-feed"));
        Assert.Contains("3 pots wait", Assert.Single(hot.WeatherWords), StringComparison.Ordinal);

        var rain = Day(April26, Noted(WeatherSign.Rain));
        Assert.All(rain.Open.SelectMany(static r => r.Pots), static p => Assert.Empty(p.Holds));
        Assert.Contains("3 pots had better wait", Assert.Single(rain.WeatherWords), StringComparison.Ordinal);

        var dry = Day(April26, Noted(WeatherSign.DryMedium, "b"));
        var held = Assert.Single(dry.Open.SelectMany(static r => r.Pots), static p => p.Holds.Count > 0);
        Assert.Equal(("b", new DateOnly(2027, 4, 27)), (held.PotId, held.Holds[0].Until));

        // Yesterday's weather holds nothing today.
        Assert.Empty(Day(April26.AddDays(1), heat).WeatherWords);
    }

    [Fact]
    public void Repotting_known_to_the_journal_alone_closes_the_gate()
    {
        var repotted = new Entry { Id = Guid.NewGuid(), Day = new(2027, 5, 2), Pots = ["a"], Facts = new PlantEvent(PlantEventKind.Repotted) };
        var held = Assert.Single(Day(May10, repotted).Open.SelectMany(static r => r.Pots), static p => p.Holds.Count > 0);
        Assert.Equal(("a", "repotted", new DateOnly(2027, 5, 23)), (held.PotId, held.Holds[0].RuleId, held.Holds[0].Until));
    }

    [Fact]
    public void A_feed_moved_close_behind_another_waits_for_half_the_interval()
    {
        var moved = new Entry { Id = Guid.NewGuid(), Day = May10, Pots = ["a"], Facts = new TaskMoved(Task, new(2027, 5, 26)) };
        var given = new Entry { Id = Guid.NewGuid(), Day = new(2027, 5, 24), Pots = ["a"], Facts = new FeedGiven("salts", [], new TaskId(new(2027, 5, 24), "salts")) };
        var a = Assert.Single(Day(new(2027, 5, 26), moved, given).Open.SelectMany(static r => r.Pots), static p => p.PotId == "a");
        Assert.Contains(a.Holds, static h => h.Until == new DateOnly(2027, 6, 7));
    }

    [Theory]
    [InlineData(2027, 2, 28, 2026)]
    [InlineData(2027, 3, 1, 2027)]
    [InlineData(2027, 12, 31, 2027)]
    public void The_growing_year_begins_after_the_longest_pause(int year, int month, int day, int began) =>
        Assert.Equal(new DateOnly(began, 3, 1), DuePlan.For(Garden, new(year, month, day)).YearFrom);

    [Theory]
    [InlineData(20, 2027, 1, 1)]
    [InlineData(-20, 2026, 7, 1)]
    public void Without_a_pause_it_begins_with_the_half_year_of_growth(double latitude, int year, int month, int day)
    {
        var always = Garden with { Place = Garden.Place with { Latitude = latitude, Seasons = [new(SeasonKind.Growing, new(1, 1), new(12, 31))] } };
        Assert.Equal(new DateOnly(year, month, day), DuePlan.For(always, May10).YearFrom);
    }

    private static DueDay Day(DateOnly today, params Entry[] entries) => DueWork.For(new(Garden, DuePlan.For(Garden, today), entries));

    private static IEnumerable<(DateOnly, DueState)> Near(DateOnly today, DueState state) =>
        Day(today).All.Where(p => p.State == state).Select(static p => (p.On, p.State)).Distinct().Order();

    private static Entry Given(DateOnly on, params string[] pots) =>
        new() { Id = Guid.NewGuid(), Day = on, Pots = pots, Facts = new FeedGiven("meals", [.. pots.Select(static p => new PotAmount(p, 3))], Task) };

    private static Entry Noted(WeatherSign sign, params string[] pots) => new() { Id = Guid.NewGuid(), Day = April26, Pots = pots, Facts = new WeatherNoted(sign) };
}
