using Ashery.RootZone;

namespace Ashery.Planning.Fit;

/// <summary>
/// Several years of rounds of one pot that are alike at first: the days they have in common are run once, and each goes its own way from the first day on
/// which it differs from the first of them. Sums are the same as if each had been run alone.
/// </summary>
internal static class FitBranches
{
    /// <summary>What each year counts from a day up to another.</summary>
    /// <param name="course">The pot.</param>
    /// <param name="states">On the first of these days; left as they are.</param>
    /// <param name="from">First day.</param>
    /// <param name="to">Day after the last.</param>
    /// <param name="years">Rounds; the first is the trunk.</param>
    /// <param name="pot">Place of the pot.</param>
    /// <param name="events">Events of a year in a stretch.</param>
    /// <param name="run">Told the days that were run.</param>
    public static FitSums[] Run(
        FitCourse course, FitState[] states, int from, int to, IReadOnlyList<List<FitVisit>> years, int pot, Func<List<FitVisit>, int, int, PlannedEvent[]> events, Action<int> run)
    {
        var (sums, parts) = (new FitSums[years.Count], new int[years.Count]);
        var order = new int[years.Count];
        for (var i = 0; i < years.Count; i++)
        {
            (order[i], parts[i]) = (i, i == 0 ? to : Math.Clamp(Parting(years[0], years[i], pot), from, to));
        }

        Array.Sort([.. parts], order);
        FitState[] trunk = [.. states];
        FitSums common = default;
        var at = from;
        foreach (var i in order)
        {
            Advance(parts[i]);
            sums[i] = common;
            if (parts[i] < to)
            {
                sums[i].Add(course.Run([.. trunk], parts[i], to, events(years[i], parts[i], to)));
                run(to - parts[i]);
            }

            sums[i].Draws = course.Draws;
        }

        return sums;

        void Advance(int day)
        {
            if (day > at)
            {
                common.Add(course.Run(trunk, at, day, events(years[0], at, day)));
                run(day - at);
                at = day;
            }
        }
    }

    /// <summary>First day on which a pot gets something else in two years.</summary>
    private static int Parting(List<FitVisit> one, List<FitVisit> other, int pot)
    {
        int i = 0, j = 0;
        while (true)
        {
            i = Next(one, i, pot);
            j = Next(other, j, pot);
            if (i >= one.Count || j >= other.Count)
            {
                return i < one.Count ? one[i].Day : j < other.Count ? other[j].Day : int.MaxValue;
            }

            var (a, b) = (one[i], other[j]);
            if (a.Day != b.Day || a.Kind != b.Kind || a.Interval != b.Interval || a.Levels[pot] != b.Levels[pot])
            {
                return Math.Min(a.Day, b.Day);
            }

            (i, j) = (i + 1, j + 1);
        }
    }

    private static int Next(List<FitVisit> visits, int at, int pot)
    {
        while (at < visits.Count && visits[at].Levels[pot] <= 0)
        {
            at++;
        }

        return at;
    }
}
