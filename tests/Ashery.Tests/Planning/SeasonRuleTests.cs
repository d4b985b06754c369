using Ashery.Climate;
using Ashery.Feeds;
using Ashery.Gardens;
using Ashery.Nutrients;
using Ashery.Planning;
using CsCheck;

namespace Ashery.Tests.Planning;

/// <summary>Whatever the seasons and the first day, a plan keeps every rule. Seasons are judged here from the plan's own dated stretches.</summary>
public class SeasonRuleTests
{
    private const int Runs = 200;

    private static bool In(YearPlan plan, SeasonKind kind, DateOnly day) => plan.Seasons.Any(s => s.Kind == kind && s.From <= day && day <= s.To);

    [Fact]
    public void No_mineral_feed_on_hot_days_no_organic_on_rainy_days_nothing_in_rest() => SomeGardens.Any.Sample(
        g =>
        {
            var plan = YearPlanner.Plan(new(g.Garden, g.From));
            return plan.Feeds.All(f =>
                !(f.Kind == FeedKind.Mineral && In(plan, SeasonKind.Hot, f.Date))
                && !(f.Kind == FeedKind.Foliar && In(plan, SeasonKind.Hot, f.Date))
                && !(f.Kind == FeedKind.Organic && In(plan, SeasonKind.Rainy, f.Date))
                && !In(plan, SeasonKind.Resting, f.Date)
                && In(plan, SeasonKind.Growing, f.Date)
                && f.Date >= plan.From && f.Date <= plan.To);
        },
        iter: Runs);

    // The named seasons again, straight from the garden, so that a slip in the plan's own stretches cannot hide one in its feeds.
    [Fact]
    public void Named_hot_and_rainy_seasons_hold_by_month_and_day() => SomeGardens.Any.Sample(
        g => YearPlanner.Plan(new(g.Garden, g.From)).Feeds.All(f => g.Garden.Place.Seasons.All(s => !Covers(s, f.Date) || s.Kind switch
        {
            SeasonKind.Hot => f.Kind is not (FeedKind.Mineral or FeedKind.Foliar or FeedKind.TraceElements),
            SeasonKind.Rainy => f.Kind is not FeedKind.Organic,
            SeasonKind.Resting => false,
            _ => true,
        })),
        iter: Runs);

    [Fact]
    public void Intervals_are_kept_for_every_pot() => SomeGardens.Any.Sample(
        g =>
        {
            var plan = YearPlanner.Plan(new(g.Garden, g.From));
            var days = int.Parse(g.Garden.RuleChanges["alternate-kinds"]["days=".Length..], System.Globalization.CultureInfo.InvariantCulture);
            return g.Garden.Pots.All(p =>
                Apart(plan, p.Id, days, FeedKind.Mineral, FeedKind.Organic)
                && Apart(plan, p.Id, 30, FeedKind.Foliar)
                && Apart(plan, p.Id, 90, FeedKind.Inoculant)
                && plan.Feeds.Count(f => f.Kind == FeedKind.Inoculant && f.Pots.Contains(p.Id)) <= 2
                && plan.Feeds.Count(f => f.Kind == FeedKind.TraceElements && f.Pots.Contains(p.Id)) <= 1);
        },
        iter: Runs);

    [Fact]
    public void Caps_of_a_season_and_of_a_feed_are_kept() => SomeGardens.Any.Sample(
        g =>
        {
            var plan = YearPlanner.Plan(new(g.Garden, g.From));
            return g.Garden.Pots.All(p =>
            {
                var litres = p.Volume.Litres;
                var doses = plan.Feeds.SelectMany(f => f.Doses.Where(d => d.PotId == p.Id).Select(d => (Feed: f, Dose: d))).ToList();
                var boron = doses.Where(static d => d.Feed.Kind == FeedKind.TraceElements).Sum(static d => d.Dose.Grams * SomeGardens.Trace.Label[Nutrient.B] * 1000);
                return boron <= 1.2 * litres * (1 + 1e-9)
                    && doses.Where(static d => d.Feed.Kind == FeedKind.Mineral).All(d => d.Dose.Grams * 0.8 <= 0.5 * litres * (1 + 1e-9));
            });
        },
        iter: Runs);

    [Fact]
    public void No_pot_gets_more_nitrogen_than_is_published() => SomeGardens.Any.Sample(
        g => YearPlanner.Plan(new(g.Garden, g.From)).Supply.All(static s => s.Season <= s.PublishedHigh * (1 + 1e-9)),
        iter: Runs);

    [Fact]
    public void Every_pot_is_walked_to_once_a_feed_and_day() => SomeGardens.Any.Sample(
        g =>
        {
            var plan = YearPlanner.Plan(new(g.Garden, g.From));
            return plan.Feeds.GroupBy(static f => (f.Date, f.Kind)).All(day =>
            {
                var fed = day.SelectMany(static f => f.Pots).ToList();
                var passed = day.SelectMany(static f => f.LeftOut).Select(static l => l.PotId).ToList();
                return fed.Distinct().Count() == fed.Count && fed.Concat(passed).Order(StringComparer.Ordinal).SequenceEqual(g.Garden.Pots.Select(static p => p.Id).Order(StringComparer.Ordinal));
            });
        },
        iter: Runs);

    [Fact]
    public void Month_totals_are_the_sum_of_the_doses() => SomeGardens.Any.Sample(
        g =>
        {
            var plan = YearPlanner.Plan(new(g.Garden, g.From));
            var labels = g.Garden.Feeds.Concat(plan.SubstituteFeeds).ToDictionary(static f => f.Id, static f => f.Label);
            var counts = g.Garden.Pots.ToDictionary(static p => p.Id, static p => p.Count);
            return Enum.GetValues<Nutrient>().All(n =>
            {
                var months = plan.Months.Sum(m => m.Grams.Grams.GetValueOrDefault(n));
                var doses = plan.Feeds.Sum(f => f.Doses.Sum(d => d.Grams * counts[d.PotId] * labels[f.FeedId][n]));
                return Math.Abs(months - doses) < 1e-6;
            });
        },
        iter: Runs);

    [Fact]
    public void Shopping_covers_what_the_feeds_take() => SomeGardens.Any.Sample(
        g =>
        {
            var plan = YearPlanner.Plan(new(g.Garden, g.From));
            var counts = g.Garden.Pots.ToDictionary(static p => p.Id, static p => p.Count);
            var given = plan.Feeds.Sum(f => f.Doses.Sum(d => d.Grams * counts[d.PotId]));
            return Math.Abs(given - plan.Shopping.Sum(static s => s.NeededGrams)) < 1e-5
                && plan.Shopping.All(static s => s.OnShelfGrams + s.ToBuyGrams >= s.NeededGrams - 1e-5);
        },
        iter: Runs);

    private static bool Apart(YearPlan plan, string pot, int days, params FeedKind[] kinds)
    {
        var dates = plan.Feeds.Where(f => kinds.Contains(f.Kind) && f.Pots.Contains(pot)).Select(static f => f.Date).Order().ToList();
        return dates.Zip(dates.Skip(1)).All(p => p.Second.DayNumber - p.First.DayNumber >= days);
    }

    private static bool Covers(Season season, DateOnly day)
    {
        var (from, to, at) = ((season.From.Month * 100) + season.From.Day, (season.To.Month * 100) + season.To.Day, (day.Month * 100) + day.Day);
        return from <= to ? at >= from && at <= to : at >= from || at <= to;
    }
}
