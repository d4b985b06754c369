using Ashery.Feeds;
using Ashery.Journal;
using Ashery.Planning;
using Ashery.Pots;

namespace Ashery.Today;

/// <summary>
/// The day's work: the year's plan beside the journal. Every planned feed of every pot is in exactly one state. A feed given pushes the next
/// of its kind back to a whole interval; one that was let go is never made up by a double dose.
/// </summary>
public static class DueWork
{
    // Longer back nobody catches up; the plants have grown past it (common practice, no source).
    private const int MostDaysOverdue = 14;

    /// <summary>What is due. The same request gives the same answer, whatever the order of its entries.</summary>
    public static DueDay For(DueRequest request)
    {
        var plan = request.Plan;
        Dictionary<TaskId, List<string>> potsOf = [];
        Dictionary<TaskId, PlannedFeed> firstOf = [];
        List<(TaskId Task, PlannedFeed Feed, Dose Dose)> planned = [];
        foreach (var feed in plan.Feeds)
        {
            var task = new TaskId(feed.Date, feed.FeedId);
            firstOf.TryAdd(task, feed);
            if (!potsOf.TryGetValue(task, out var pots))
            {
                potsOf.Add(task, pots = []);
            }

            pots.AddRange(feed.Pots);
            planned.AddRange(feed.Doses.Select(d => (task, feed, d)));
        }

        var answers = new Answers(request, potsOf);
        var gate = new DueGate(request, answers);
        List<DuePot> all = [];
        foreach (var line in planned.GroupBy(static p => (p.Dose.PotId, Turns: Answers.IsTurn(p.Feed.Kind), Kind: Answers.IsTurn(p.Feed.Kind) ? FeedKind.Mineral : p.Feed.Kind)))
        {
            List<DuePot> inTurn = [.. line.Select(p => Dated(p.Task, p.Feed, p.Dose, plan, answers))];
            all.AddRange(inTurn.Select(d => State(d, inTurn, request, answers)).Select(gate.Check));
        }

        var order = planned.Select(static (p, i) => (Key: (p.Task, p.Dose.PotId), i)).ToDictionary(static p => p.Key, static p => p.i);
        all.Sort((a, b) => order[(a.Task, a.PotId)].CompareTo(order[(b.Task, b.PotId)]));
        var open = Rounds(all.Where(static d => d.IsOpenToday), firstOf);
        return new()
        {
            Today = plan.Today,
            All = all,
            Open = open,
            Coming = Rounds(all.Where(static d => d.State == DueState.Coming), firstOf),
            Done = Done(request),
            Weather = answers.Weather.GroupBy(static e => ((WeatherNoted)e.Facts).What).ToDictionary(static g => g.Key, static g => g.Last()),
            WeatherWords = gate.Words([.. open.SelectMany(static r => r.Pots)]),
            Offers = plan.Offers,
        };
    }

    /// <summary>The day it falls on, before its state is known.</summary>
    private static DuePot Dated(TaskId task, PlannedFeed feed, Dose dose, DuePlan plan, Answers answers)
    {
        var (moved, answer) = (answers.MovedTo(task, dose.PotId), answers.Given(task, dose.PotId) ?? answers.Skipped(task, dose.PotId));
        DateOnly? pushedBy = answer is null && moved is null && answers.LastFed(dose.PotId, feed.Kind) is { } fed && fed.AddDays(plan.Apart[feed.Kind]) > task.Day ? fed : null;
        return new()
        {
            PotId = dose.PotId,
            Task = task,
            Kind = feed.Kind,
            Dose = dose,
            On = answer?.Facts is FeedGiven ? answer.Day : moved ?? pushedBy?.AddDays(plan.Apart[feed.Kind]) ?? task.Day,
            State = answer?.Facts switch { FeedGiven => DueState.Given, TaskSkipped => DueState.Skipped, _ => DueState.Coming },
            IsMoved = moved is not null,
            PushedBy = pushedBy,
            Answer = answer,
        };
    }

    private static DuePot State(DuePot pot, List<DuePot> inTurn, DueRequest request, Answers answers)
    {
        if (pot.Answer is not null)
        {
            return pot;
        }

        var today = request.Plan.Today;
        var isThere = pot.On >= request.Since.GetValueOrDefault(pot.PotId, DateOnly.MinValue) && !answers.IsDead(pot.PotId, pot.On < today ? today : pot.On);
        var oldest = today.AddDays(-Math.Min(MostDaysOverdue, request.Plan.Apart[pot.Kind]));
        return pot with
        {
            State = !isThere ? DueState.NotThere
                : pot.On < oldest || inTurn.Exists(other => TakesItsPlace(other, pot, today)) ? DueState.Missed
                : pot.On < today ? DueState.Overdue
                : pot.On == today ? DueState.Due
                : DueState.Coming,
        };
    }

    /// <summary>A later turn whose day has come, or onto which this one was pushed.</summary>
    private static bool TakesItsPlace(DuePot other, DuePot pot, DateOnly today)
    {
        var isLater = (other.On, other.Task.Day).CompareTo((pot.On, pot.Task.Day)) > 0 && other.On <= today;

        // Putting the newer turn off does not bring the older one back.
        var cameSince = !pot.IsMoved && other.Task.Day > pot.Task.Day && other.Task.Day <= today;
        return isLater || cameSince || (pot.PushedBy is not null && other.Task.Day > pot.Task.Day && other.On <= pot.On);
    }

    private static List<DueRound> Rounds(IEnumerable<DuePot> pots, Dictionary<TaskId, PlannedFeed> firstOf) =>
        [.. pots.GroupBy(static p => (p.On, p.Task)).OrderBy(static g => g.Key.On).ThenBy(static g => g.Key.Task.Day).ThenBy(static g => g.Key.Task.FeedId, StringComparer.Ordinal)
            .Select(g => new DueRound(g.Key.Task, firstOf[g.Key.Task].Kind, firstOf[g.Key.Task].FeedName, g.Key.On, [.. g], firstOf[g.Key.Task].Reasons, firstOf[g.Key.Task].How))];

    private static List<Entry> Done(DueRequest request) =>
        [.. request.Entries.DistinctBy(static e => e.Id)
            .Where(e => e.Day == request.Plan.Today && (e.Facts is FeedGiven or TaskSkipped or TaskMoved))
            .OrderByDescending(static e => e.Time ?? TimeOnly.MinValue).ThenBy(static e => e.Id)];
}
