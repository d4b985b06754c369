using Ashery.Gardens;
using Ashery.Journal;

namespace Ashery.Today;

/// <summary>What the day's work is worked out from.</summary>
/// <param name="Garden">The whole garden.</param>
/// <param name="Plan">The planned feeds around the day, of the same garden.</param>
/// <param name="Entries">The journal: entries that stand (no removed ones, the newest revision of each), in any order.</param>
public sealed record DueRequest(Garden Garden, DuePlan Plan, IReadOnlyCollection<Entry> Entries)
{
    /// <summary>Since when each pot is in the garden, where known: nothing is overdue from before.</summary>
    public IReadOnlyDictionary<string, DateOnly> Since { get; init; } = new Dictionary<string, DateOnly>();
}
