using System.Collections.Concurrent;
using Ashery.Planning;
using Ashery.Records;
using Ashery.Today;

namespace Ashery.Web.Gardens;

/// <summary>
/// What Today was worked out from, kept by garden and day and checked by version and sequence: another instance may have written meanwhile.
/// </summary>
public sealed class TodayCache
{
    private const int Most = 256;

    private readonly ConcurrentDictionary<(string Garden, DateOnly Day), TodayPlan> plans = new();
    private readonly ConcurrentDictionary<(string Garden, DateOnly Day), TodayWork> work = new();

    /// <summary>The plan of a day for a state of the garden.</summary>
    public TodayPlan Plan(string garden, DateOnly day, long version, Func<TodayPlan> make) => Keep(plans, (garden, day), p => p.Version == version, make);

    /// <summary>The work of a day for a state of garden and journal.</summary>
    public TodayWork Work(string garden, DateOnly day, long version, long sequence, Func<TodayWork> make) =>
        Keep(work, (garden, day), w => w.Version == version && w.Sequence == sequence, make);

    private static T Keep<T>(ConcurrentDictionary<(string Garden, DateOnly Day), T> kept, (string Garden, DateOnly Day) key, Func<T, bool> fits, Func<T> make)
    {
        if (kept.TryGetValue(key, out var known) && fits(known))
        {
            return known;
        }

        if (kept.Count >= Most)
        {
            kept.Clear();
        }

        return kept[key] = make();
    }
}

/// <summary>The plan around a day, what runs out under it, and since when each pot is there.</summary>
public sealed record TodayPlan(long Version, DuePlan Plan, IReadOnlyList<ShoppingLine> RunningOut, IReadOnlyDictionary<string, DateOnly> Since);

/// <summary>The work of a day, with the stored entries it was read from.</summary>
public sealed record TodayWork(long Version, long Sequence, DueDay Day, IReadOnlyDictionary<Guid, StoredEntry> Stored);
