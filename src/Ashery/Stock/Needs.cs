using Ashery.Gardens;
using Ashery.Journal;
using Ashery.Planning;

namespace Ashery.Stock;

/// <summary>What the plan still asks for, day by day: without what was given or skipped already, and with what was moved on its new day.</summary>
internal static class Needs
{
    /// <summary>g of a feed on a day, all pots together; days before today only where a feed was moved on.</summary>
    public static IEnumerable<(DateOnly Day, string FeedId, double Grams)> Of(Garden garden, IReadOnlyList<PlannedFeed> planned, IReadOnlyList<Entry> entries, DateOnly today)
    {
        HashSet<(TaskId Task, string Pot)> done = [];
        Dictionary<(TaskId Task, string Pot), DateOnly> moved = [];
        foreach (var entry in entries.OrderBy(static e => e.Day).ThenBy(static e => e.Time ?? TimeOnly.MinValue))
        {
            switch (entry.Facts)
            {
                case FeedGiven { Task: { } task } given:
                    done.UnionWith(entry.Pots.Concat(given.Amounts.Select(static a => a.PotId)).Select(p => (task, p)));
                    break;
                case TaskSkipped skipped:
                    done.UnionWith(entry.Pots.Select(p => (skipped.Task, p)));
                    break;
                case TaskMoved shifted:
                    foreach (var pot in entry.Pots)
                    {
                        moved[(shifted.Task, pot)] = shifted.To;
                    }

                    break;
            }
        }

        var counts = garden.Pots.ToDictionary(static p => p.Id, static p => Math.Max(1, p.Count), StringComparer.Ordinal);
        List<(DateOnly Day, string FeedId, double Grams)> needs = [];
        foreach (var feed in planned)
        {
            var task = new TaskId(feed.Date, feed.FeedId);
            foreach (var dose in feed.Doses)
            {
                var day = moved.GetValueOrDefault((task, dose.PotId), feed.Date);
                if (day >= today && dose.Grams > 0 && !done.Contains((task, dose.PotId)))
                {
                    needs.Add((day, feed.FeedId, dose.Grams * counts.GetValueOrDefault(dose.PotId, 1)));
                }
            }
        }

        return needs.GroupBy(static n => (n.Day, n.FeedId)).Select(static g => (g.Key.Day, g.Key.FeedId, g.Sum(static n => n.Grams)))
            .OrderBy(static n => n.Day).ThenBy(static n => n.FeedId, StringComparer.Ordinal);
    }
}
