using Ashery.Journal;
using Ashery.Planning;

namespace Ashery.Today;

/// <summary>The work of a day: what is due and overdue, what was done, what comes.</summary>
public sealed record DueDay
{
    public required DateOnly Today { get; init; }

    /// <summary>Every planned feed of every pot around the day, each in one state.</summary>
    public required IReadOnlyList<DuePot> All { get; init; }

    /// <summary>Due or overdue, the oldest first.</summary>
    public required IReadOnlyList<DueRound> Open { get; init; }

    /// <summary>To come, by day.</summary>
    public required IReadOnlyList<DueRound> Coming { get; init; }

    /// <summary>What was done today or to today's work, last first: feeds given, feeds left out, feeds moved, weather noted.</summary>
    public required IReadOnlyList<Entry> Done { get; init; }

    /// <summary>The weather noted today; the entry of each sign.</summary>
    public required IReadOnlyDictionary<WeatherSign, Entry> Weather { get; init; }

    /// <summary>What the weather changes, in words.</summary>
    public required IReadOnlyList<string> WeatherWords { get; init; }

    /// <summary>Where the rules leave no feed today, and what would still be safe.</summary>
    public required IReadOnlyList<SafeOffer> Offers { get; init; }
}
