using System.Globalization;

namespace Ashery.Journal;

/// <summary>
/// A planned feed as the journal knows it: which feed on which planned day. It stays the same when doses or pots change, so that what was
/// ticked off stays ticked off; which of its pots were done stands in the entry.
/// </summary>
/// <param name="Day">The day the plan names.</param>
/// <param name="FeedId">Feed of the garden.</param>
public readonly record struct TaskId(DateOnly Day, string FeedId)
{
    /// <summary><c>2027-04-03/spring-feed</c>, as files and tables hold it.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Day:yyyy-MM-dd}/{FeedId}");

    /// <summary>Reads what <see cref="ToString"/> wrote; null when it is something else.</summary>
    public static TaskId? Parse(string? text) =>
        text is { Length: > 11 } && text[10] == '/'
        && DateOnly.TryParseExact(text.AsSpan(0, 10), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
            ? new TaskId(day, text[11..])
            : null;
}
