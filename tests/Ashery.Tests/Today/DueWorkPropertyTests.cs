using Ashery.Journal;
using Ashery.Tests.Planning;
using Ashery.Today;
using CsCheck;

namespace Ashery.Tests.Today;

/// <summary>What must hold of any garden, day and journal.</summary>
public sealed class DueWorkPropertyTests
{
    private static readonly string[] Whys = ["rain", "heat", "dry medium", "other"];

    private static readonly Gen<(DueRequest Request, int Seed)> Any =
        from garden in SomeGardens.Any
        from seed in Gen.Int[0, int.MaxValue - 1]
        from many in Gen.Int[0, 30]
        select (Request(garden.Garden, garden.From, seed, many), seed);

    [Fact]
    public void Each_planned_feed_of_each_pot_is_in_exactly_one_state() => Any.Sample(
        static (request, _) =>
        {
            var day = DueWork.For(request);
            var planned = request.Plan.Feeds.SelectMany(static f => f.Doses.Select(d => (new TaskId(f.Date, f.FeedId), d.PotId))).Order(Comparer<(TaskId, string)>.Create(Compare)).ToList();
            Assert.Equal(planned, day.All.Select(static p => (p.Task, p.PotId)).Order(Comparer<(TaskId, string)>.Create(Compare)));

            // The lists the page shows hold all that is open and all that comes, once each.
            Assert.Equal(day.All.Count(static p => p.State is DueState.Due or DueState.Overdue), day.Open.Sum(static r => r.Pots.Count));
            Assert.Equal(day.All.Count(static p => p.State == DueState.Coming), day.Coming.Sum(static r => r.Pots.Count));
            Assert.All(day.All, p => Assert.True(p.State switch
            {
                DueState.Due => p.On == day.Today,
                DueState.Overdue => p.On < day.Today && p.On >= day.Today.AddDays(-14),
                DueState.Coming => p.On > day.Today,
                DueState.Given => p.Answer?.Facts is FeedGiven,
                DueState.Skipped => p.Answer?.Facts is TaskSkipped,
                _ => p.Answer is null,
            }, p.ToString()));

            // Never two turns of mineral and organic feed for one pot on one day.
            Assert.All(day.All.Where(static p => p.IsOpenToday && !p.IsMoved && p.Kind is Ashery.Feeds.FeedKind.Mineral or Ashery.Feeds.FeedKind.Organic).Where(static p => p.IsOpenToday).GroupBy(static p => p.PotId), static g => Assert.Single(g));
        },
        iter: 50);

    [Fact]
    public void The_order_of_entries_never_matters_and_one_sent_again_changes_nothing() => Any.Sample(
        static (request, seed) =>
        {
            var told = Tell(DueWork.For(request));
            var shuffled = request.Entries.ToArray();
            new Random(seed).Shuffle(shuffled);
            Assert.Equal(told, Tell(DueWork.For(request with { Entries = shuffled })));
            Assert.Equal(told, Tell(DueWork.For(request with { Entries = [.. shuffled, .. request.Entries, .. shuffled] })));
        },
        iter: 40);

    [Fact]
    public void Moving_keeps_the_count_and_loses_nothing() => Any.Sample(
        static (request, seed) =>
        {
            var before = DueWork.For(request);
            var open = before.All.Where(static p => p.IsOpenToday || p.State == DueState.Coming).ToList();
            if (open.Count == 0)
            {
                return;
            }

            var pick = open[seed % open.Count];
            var to = before.Today.AddDays(1 + (seed % DuePlan.MostMoved));
            var move = new Entry { Id = Guid.NewGuid(), Day = before.Today, Time = new(23, 59, 59), Pots = [pick.PotId], Facts = new TaskMoved(pick.Task, to) };
            var after = DueWork.For(request with { Entries = [.. request.Entries, move] });
            Assert.Equal(before.All.Count, after.All.Count);
            var moved = after.All.Single(p => p.Task == pick.Task && p.PotId == pick.PotId);
            Assert.Equal((DueState.Coming, to, true), (moved.State, moved.On, moved.IsMoved));

            // Other pots do not notice, nor does what was answered.
            Assert.Equal(Tell(before.All.Where(p => p.PotId != pick.PotId)), Tell(after.All.Where(p => p.PotId != pick.PotId)));
            Assert.Equal(before.All.Count(static p => p.Answer is not null), after.All.Count(static p => p.Answer is not null));
        },
        iter: 50);

    [Fact]
    public void A_plan_made_tomorrow_names_the_same_days() => SomeGardens.Any.Sample(
        static any =>
        {
            // Without stock that runs out: a bag is replaced from the day it is short.
            var garden = any.Garden with { Shelf = [] };
            var (today, tomorrow) = (DuePlan.For(garden, any.From), DuePlan.For(garden, any.From.AddDays(1)));
            var (from, to) = (tomorrow.Today.AddDays(-DuePlan.DaysBack), today.Today.AddDays(DuePlan.DaysAhead));
            Assert.Equal(
                today.Feeds.Where(f => f.Date >= from && f.Date <= to).SelectMany(static f => f.Doses.Select(d => (f.Date, f.FeedId, d.PotId, d.Grams))),
                tomorrow.Feeds.Where(f => f.Date >= from && f.Date <= to).SelectMany(static f => f.Doses.Select(d => (f.Date, f.FeedId, d.PotId, d.Grams))));
        },
        iter: 50);

    private static DueRequest Request(Ashery.Gardens.Garden garden, DateOnly today, int seed, int many)
    {
        var plan = DuePlan.For(garden, today);
        var random = new Random(seed);
        List<Entry> entries = [];
        for (var i = 0; i < many && plan.Feeds.Count > 0; i++)
        {
            var feed = plan.Feeds[random.Next(plan.Feeds.Count)];
            var task = new TaskId(feed.Date, feed.FeedId);
            var id = new byte[16];
            random.NextBytes(id);
            List<string> pots = [.. feed.Pots.Where(_ => random.Next(3) > 0)];
            entries.Add(new()
            {
                Id = new Guid(id),
                Day = today.AddDays(-random.Next(40)),
                Time = random.Next(2) == 0 ? null : new TimeOnly(random.Next(24), 0),
                Pots = pots,
                Facts = random.Next(6) switch
                {
                    0 => new FeedGiven(feed.FeedId, [], task),
                    1 => new FeedGiven(feed.FeedId, []),
                    2 => new TaskSkipped(task, Whys[random.Next(Whys.Length)]),
                    3 => new TaskMoved(task, today.AddDays(random.Next(-10, 28))),
                    4 => new WeatherNoted((WeatherSign)random.Next(3)),
                    _ => new PlantEvent((PlantEventKind)random.Next(9)),
                },
            });
        }

        return new(garden, plan, entries);
    }

    private static int Compare((TaskId Task, string Pot) a, (TaskId Task, string Pot) b) =>
        string.CompareOrdinal(a.Task + "\n" + a.Pot, b.Task + "\n" + b.Pot);

    private static string Tell(DueDay day) => string.Join('\n', [Tell(day.All), string.Join(',', day.Done.Select(static e => e.Id)), .. day.WeatherWords]);

    private static string Tell(IEnumerable<DuePot> pots) => string.Join('\n', pots.Select(static p =>
        FormattableString.Invariant($"{p.Task} {p.PotId} {p.State} {p.On} {p.IsMoved} {p.PushedBy} {p.Answer?.Id} {string.Join(',', p.Holds.Select(static h => h.RuleId))} {string.Join(',', p.Warnings.Select(static h => h.RuleId))}")));
}
