using Ashery.Feeds;
using Ashery.Journal;
using Ashery.Pots;

namespace Ashery.Today;

/// <summary>A planned feed for one pot, and where it stands.</summary>
public sealed record DuePot
{
    public required string PotId { get; init; }

    /// <summary>The planned feed.</summary>
    public required TaskId Task { get; init; }

    public required FeedKind Kind { get; init; }

    public required Dose Dose { get; init; }

    /// <summary>The day it is due: as planned, as moved, or a whole interval after the feed before; of a given or skipped one the day that was.</summary>
    public required DateOnly On { get; init; }

    public required DueState State { get; init; }

    /// <summary>True when the grower put it on another day.</summary>
    public bool IsMoved { get; init; }

    /// <summary>Day of the feed that pushed this one back; null when none did.</summary>
    public DateOnly? PushedBy { get; init; }

    /// <summary>Rules that say "not today", for what is due or overdue.</summary>
    public IReadOnlyList<GateHold> Holds { get; init; } = [];

    /// <summary>Rules that would rather not.</summary>
    public IReadOnlyList<GateHold> Warnings { get; init; } = [];

    /// <summary>The entry that answers it; null while it is open.</summary>
    public Entry? Answer { get; init; }

    /// <summary>True when it waits for the grower today.</summary>
    public bool IsOpenToday => State is DueState.Due or DueState.Overdue;
}
