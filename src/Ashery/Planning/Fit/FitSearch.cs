using Ashery.RootZone;

namespace Ashery.Planning.Fit;

/// <summary>
/// Coordinate search over a year: day by day forward, for each round first its date, which all pots share, then the dose of each pot. Every candidate
/// is run through the model in all draws from the state of that day to a horizon. The best found is kept, so that the measure on these draws falls with every
/// step within its horizon; that no better year exists is not proven.
/// </summary>
internal sealed class FitSearch(FitRounds rounds, FitDoses doses, FitCourse[] courses, FitWeights weights, double[] mostShare, FitPast past)
{
    private static readonly int[] Shifts = [-7, -3, 3, 7];

    private readonly double[] scores = new double[courses.Length];

    public required ParallelOptions Parallel { get; init; }

    /// <summary>Days run so far, all pots and draws.</summary>
    public long PotDays => potDays;

    private long potDays;

    /// <summary>One pass over the year.</summary>
    public List<FitVisit> Pass(List<FitVisit> visits, int horizon, bool dates, bool add, Action<double>? progress)
    {
        var front = past.Today;
        var states = new FitState[courses.Length][];
        Each(p =>
        {
            states[p] = courses[p].Start();
            courses[p].Run(states[p], 0, front, Events(visits, p, 0, front));
        });
        for (var i = 0; i < visits.Count; i++)
        {
            if (visits[i].Day < past.Today)
            {
                continue;
            }

            if (add)
            {
                visits = TryAdd(visits, i, states, front, horizon);
            }

            if (dates)
            {
                visits = TryDates(visits, i, states, front, horizon);
            }

            var (now, to) = (visits, visits[i].Day);
            var from = front;
            Each(p => courses[p].Run(states[p], from, to, Events(now, p, from, to)));
            front = Math.Max(front, to);
            if (!visits[i].IsEmpty)
            {
                TryLevels(visits, i, states, front, horizon);
            }

            progress?.Invoke((i + 1.0) / visits.Count);
        }

        visits.RemoveAll(v => v.IsEmpty && v.Day >= past.Today);
        rounds.Space(visits);
        return visits;
    }

    /// <summary>Score of a whole year from today on: mean pot, rounds counted.</summary>
    public double Score(List<FitVisit> visits)
    {
        Each(p =>
        {
            var states = courses[p].Start();
            courses[p].Run(states, 0, past.Today, Events(visits, p, 0, past.Today));
            scores[p] = courses[p].Run(states, past.Today, courses[p].Days, Events(visits, p, past.Today, courses[p].Days)).Score(weights, courses[p].Litres);
        });
        return (courses.Length > 0 ? scores.Average() : 0) + (weights.Round * visits.Count(v => !v.IsEmpty && v.Day >= past.Today));
    }

    /// <summary>Means of the pots over each of several years from today on; quickest where they are alike at first.</summary>
    public FitMeasure[] Sums(IReadOnlyList<List<FitVisit>> years)
    {
        foreach (var visits in years)
        {
            rounds.Space(visits);
        }

        var found = new FitMeasure[years.Count, courses.Length];
        Each(p =>
        {
            var states = courses[p].Start();
            courses[p].Run(states, 0, past.Today, Events(years[0], p, 0, past.Today));
            var sums = Branches(p, years, states, past.Today, courses[p].Days);
            for (var y = 0; y < sums.Length; y++)
            {
                found[y, p] = sums[y].Measure(weights, courses[p].Litres);
            }
        });
        return [.. years.Select((visits, y) => FitMeasure.Mean([.. Enumerable.Range(0, courses.Length).Select(p => found[y, p])], visits.Count, weights.Round))];
    }

    /// <summary>Nitrogen that organic feed sets free in three weeks from a day over what the pots take up in them, mean of the pots.</summary>
    public double Released(List<FitVisit> visits, int day)
    {
        const int weeks = 21;
        var shares = new double[courses.Length];
        Each(p =>
        {
            var states = courses[p].Start();
            courses[p].Run(states, 0, day, Events(visits, p, 0, day));
            var sums = courses[p].Run(states, day, day + weeks, Events(visits, p, day, day + weeks));
            shares[p] = sums.TakenMoles > 0 ? Math.Clamp(sums.ReleasedMoles / sums.TakenMoles, 0, 1) : 0;
        });
        return shares.Length > 0 ? shares.Average() : 0;
    }

    /// <summary>The events of a pot in a stretch, those begun before with cans still to come included.</summary>
    public PlannedEvent[] Events(List<FitVisit> visits, int pot, int from, int to)
    {
        const int longest = 60;
        List<PlannedEvent> all = [];
        foreach (var visit in visits)
        {
            if (visit.Day < to && visit.Day >= from - longest)
            {
                all.AddRange(doses.Of(pot, visit).Events);
            }
        }

        all.Sort(static (a, b) => a.Day.CompareTo(b.Day));
        return [.. all];
    }

    private List<FitVisit> TryDates(List<FitVisit> visits, int at, FitState[][] states, int front, int horizon)
    {
        List<List<FitVisit>> candidates = [visits];
        foreach (var by in Shifts)
        {
            if (rounds.Moved(visits, at, by, Math.Max(front, past.Today)) is { } moved)
            {
                candidates.Add(moved);
            }
        }

        candidates.Add(rounds.Without(visits, at, 1));
        candidates.Add(rounds.Without(visits, at, 1.5));
        return Best(candidates, states, front, visits[at].Day + horizon);
    }

    private List<FitVisit> TryAdd(List<FitVisit> visits, int at, FitState[][] states, int front, int horizon)
    {
        var before = at > 0 ? visits[at - 1].Day : past.Today - rounds.LeastGap;
        var gap = visits[at].Day - before;
        if (gap < 2 * rounds.LeastGap)
        {
            return visits;
        }

        var day = Math.Max(before + (gap / 2), past.Today);
        List<List<FitVisit>> candidates = [visits];
        foreach (var kind in rounds.Kinds())
        {
            if (rounds.With(visits, day, kind) is { } more)
            {
                candidates.Add(more);
            }
        }

        return candidates.Count > 1 ? Best(candidates, states, front, visits[at].Day + horizon) : visits;
    }

    /// <summary>The candidate with the least score from the states to a day; the first of equals.</summary>
    private List<FitVisit> Best(List<List<FitVisit>> candidates, FitState[][] states, int front, int to)
    {
        var table = new double[candidates.Count, courses.Length];
        Each(p =>
        {
            var sums = Branches(p, candidates, states[p], front, Math.Min(to, courses[p].Days));
            for (var c = 0; c < candidates.Count; c++)
            {
                table[c, p] = sums[c].Score(weights, courses[p].Litres) + (Within(p, candidates[c]) ? 0 : 1e6);
            }
        });
        var (best, least) = (0, double.PositiveInfinity);
        for (var c = 0; c < candidates.Count; c++)
        {
            var sum = 0.0;
            for (var p = 0; p < courses.Length; p++)
            {
                sum += table[c, p];
            }

            var score = (sum / courses.Length) + (weights.Round * candidates[c].Count(static v => !v.IsEmpty));
            if (score < least - 1e-9)
            {
                (best, least) = (c, score);
            }
        }

        return candidates[best];
    }

    private void TryLevels(List<FitVisit> visits, int at, FitState[][] states, int front, int horizon) => Each(p =>
    {
        var visit = visits[at];
        var end = visit.Day + horizon;
        var index = Math.Max(0, FitLevels.IndexOf(visit.Levels[p]));
        var least = Try(p, visits, states[p], front, end);
        var start = index;
        foreach (var step in (ReadOnlySpan<int>)[1, -1])
        {
            if (index != start)
            {
                break;
            }

            for (var next = start + step; next >= 0 && next < FitLevels.Count; next += step)
            {
                visit.Levels[p] = FitLevels.At(next);
                var score = Within(p, visits) ? Try(p, visits, states[p], front, end) : double.PositiveInfinity;
                if (score >= least - 1e-9)
                {
                    break;
                }

                (index, least) = (next, score);
            }
        }

        visit.Levels[p] = FitLevels.At(index);
    });

    private double Try(int pot, List<FitVisit> visits, FitState[] states, int front, int to)
    {
        Count(pot, Math.Min(to, courses[pot].Days) - front);
        return courses[pot].Try(states, front, to, Events(visits, pot, front, to)).Score(weights, courses[pot].Litres);
    }

    private FitSums[] Branches(int pot, IReadOnlyList<List<FitVisit>> years, FitState[] states, int front, int to) =>
        FitBranches.Run(courses[pot], states, front, to, years, pot, (visits, from, end) => Events(visits, pot, from, end), days => Count(pot, days));

    private void Count(int pot, int days) => Interlocked.Add(ref potDays, (long)courses[pot].Draws * Math.Max(0, days));

    /// <summary>Whether the year's nitrogen of a pot stays within the top of the published range.</summary>
    public bool Within(int pot, List<FitVisit> visits)
    {
        var sum = 0.0;
        foreach (var visit in visits)
        {
            sum += doses.Of(pot, visit).Share;
        }

        return sum <= mostShare[pot] + 1e-9;
    }

    private void Each(Action<int> pot) => System.Threading.Tasks.Parallel.For(0, courses.Length, Parallel, pot);
}
