using Ashery.Feeds;

namespace Ashery.Planning.Fit;

/// <summary>A round of the garden in the search: a day, a kind of feed, and how much of the rule of thumb's full dose each pot gets.</summary>
internal sealed class FitVisit(int day, FeedKind kind, int? besideDay, int pots)
{
    /// <summary>Days since the first day of the year.</summary>
    public int Day { get; set; } = day;

    public FeedKind Kind { get; } = kind;

    /// <summary>The day the plan it began from has for it; null for a round that was added.</summary>
    public int? BesideDay { get; } = besideDay;

    /// <summary>Multiples of the rule of thumb's full dose, by pot.</summary>
    public double[] Levels { get; private init; } = new double[pots];

    /// <summary>Days since the last round with the same kind of feed, at most the interval: what a cap a fortnight is worked out for.</summary>
    public int Interval { get; set; }

    public bool IsEmpty => Array.TrueForAll(Levels, static l => l <= 0);

    /// <summary>The same as the one to begin from.</summary>
    public FitVisit AsBefore() => new(Day, Kind, Day, 0) { Levels = [.. Levels], Interval = Interval };

    public FitVisit Copy() => new(Day, Kind, BesideDay, 0) { Levels = [.. Levels], Interval = Interval };
}
