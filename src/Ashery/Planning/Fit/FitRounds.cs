using Ashery.Feeds;

namespace Ashery.Planning.Fit;

/// <summary>The rounds of a year in the search, in order of day, and what keeps them within the rules.</summary>
internal sealed class FitRounds(PlanContext context, int pots)
{
    /// <summary>Least days between two rounds: half the interval of the turns (ours).</summary>
    public int LeastGap { get; } = Math.Max(1, (context.Interval + 1) / 2);

    public int Days { get; } = context.To.DayNumber - context.From.DayNumber + 1;

    /// <summary>The rule of thumb's rounds, everything at its full dose.</summary>
    public List<FitVisit> OfRuleOfThumb()
    {
        List<FitVisit> visits = [];
        foreach (var turn in context.Turns)
        {
            var day = turn.Day.DayNumber - context.From.DayNumber;
            var visit = new FitVisit(day, turn.Kind, day, pots);
            Array.Fill(visit.Levels, 1);
            visits.Add(visit);
        }

        Space(visits);
        return visits;
    }

    /// <summary>Kinds the turns may have at all.</summary>
    public IEnumerable<FeedKind> Kinds() => context.Turns.Select(static t => t.Kind).Distinct().Order();

    /// <summary>Whether the season rules leave a kind on a day.</summary>
    public bool Allows(FeedKind kind, int day) => day >= 0 && day < Days && context.Seasons.Of(kind, context.From.AddDays(day)).Allowed;

    /// <summary>Sets for each round the days since the last of its kind, at most the interval.</summary>
    public void Space(List<FitVisit> visits)
    {
        for (var i = 0; i < visits.Count; i++)
        {
            var interval = context.Interval;
            for (var j = i - 1; j >= 0; j--)
            {
                if (visits[j].Kind == visits[i].Kind && !visits[j].IsEmpty)
                {
                    interval = Math.Min(interval, visits[i].Day - visits[j].Day);
                    break;
                }
            }

            visits[i].Interval = Math.Max(1, interval);
        }
    }

    /// <summary>A copy with the dates of one round changed, or the round left out; null when a rule or a neighbour is in the way.</summary>
    public List<FitVisit>? Moved(List<FitVisit> visits, int at, int by, int earliest)
    {
        var day = visits[at].Day + by;
        var low = at > 0 ? visits[at - 1].Day + LeastGap : earliest;
        var high = at + 1 < visits.Count ? visits[at + 1].Day - LeastGap : Days - 1;
        if (by != 0 && (day < Math.Max(low, earliest) || day > high || !Allows(visits[at].Kind, day)))
        {
            return null;
        }

        List<FitVisit> copy = [.. visits.Select(static v => v.Copy())];
        copy[at].Day = day;
        Space(copy);
        return copy;
    }

    /// <summary>A copy without a round, the next of its kind larger by a factor.</summary>
    public List<FitVisit> Without(List<FitVisit> visits, int at, double more)
    {
        List<FitVisit> copy = [.. visits.Select(static v => v.Copy())];
        var kind = copy[at].Kind;
        Array.Clear(copy[at].Levels);
        if (copy.Skip(at + 1).FirstOrDefault(v => v.Kind == kind) is { } next)
        {
            for (var p = 0; p < next.Levels.Length; p++)
            {
                next.Levels[p] = FitLevels.AtMost(next.Levels[p] * more);
            }
        }

        Space(copy);
        return copy;
    }

    /// <summary>A copy with another round; null when it does not fit.</summary>
    public List<FitVisit>? With(List<FitVisit> visits, int day, FeedKind kind)
    {
        if (!Allows(kind, day) || visits.Exists(v => Math.Abs(v.Day - day) < LeastGap))
        {
            return null;
        }

        var added = new FitVisit(day, kind, null, pots);
        Array.Fill(added.Levels, 1);
        List<FitVisit> copy = [.. visits.Select(static v => v.Copy()), added];
        copy.Sort(static (a, b) => a.Day.CompareTo(b.Day));
        Space(copy);
        return copy;
    }
}
