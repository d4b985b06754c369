using Ashery.Feeds;
using Ashery.Journal;

namespace Ashery.Today;

/// <summary>A planned feed with those of its pots that are in the same case, in walking order.</summary>
/// <param name="Task">Which.</param>
/// <param name="Kind">What kind.</param>
/// <param name="FeedName">Its name.</param>
/// <param name="On">The day it is due.</param>
/// <param name="Pots">Which pots.</param>
/// <param name="Reasons">Why this feed.</param>
/// <param name="How">Hour, moisture, placing.</param>
public sealed record DueRound(
    TaskId Task, FeedKind Kind, string FeedName, DateOnly On, IReadOnlyList<DuePot> Pots, IReadOnlyList<string> Reasons, IReadOnlyList<string> How)
{
    /// <summary>True when its day is past.</summary>
    public bool IsOverdue => Pots.Any(static p => p.State == DueState.Overdue);
}
