using Ashery.Exchange.Journal;
using Ashery.Journal;
using Ashery.Records.Rows;

namespace Ashery.Records.Stores;

/// <summary>An entry as rows and back.</summary>
internal static class EntryMapping
{
    /// <summary>Lets a row say what an entry says; <paramref name="body"/> is the entry's JSON line.</summary>
    public static void Fill(EntryRow row, Entry entry, string body)
    {
        var task = EntryKind.Task(entry.Facts);
        row.Kind = EntryKind.Of(entry.Facts);
        row.Day = entry.Day;
        row.TaskDay = task?.Day;
        row.TaskFeed = task?.FeedId;
        row.Body = body;
        row.Words = string.Join(' ', SearchWords.Of(entry));
    }

    /// <summary>Rows of the pots of an entry that stands; none of one that was removed.</summary>
    public static IEnumerable<EntryPotRow> Pots(EntryRow row, Entry entry) => row.IsRemoved ? [] : entry.Pots.Distinct(StringComparer.Ordinal)
        .Select(pot => new EntryPotRow { Garden = row.Garden, Pot = pot, Day = row.Day, Sequence = row.Sequence, Entry = row.Number });

    public static StoredEntry Stored(EntryRow row) => new(
        JournalJson.ReadKept(row.Body), row.Revision, row.IsRemoved, row.By, new DateTimeOffset(row.AtTicks, TimeSpan.Zero), row.Sequence);

    public static StoredEntry Stored(EarlierRow row) => new(
        JournalJson.ReadKept(row.Body), row.Revision, row.IsRemoved, row.By, new DateTimeOffset(row.AtTicks, TimeSpan.Zero), row.Sequence);

    public static EarlierRow Earlier(EntryRow row) => new()
    {
        Garden = row.Garden,
        Id = row.Id,
        Revision = row.Revision,
        Sequence = row.Sequence,
        Body = row.Body,
        By = row.By,
        AtTicks = row.AtTicks,
        IsRemoved = row.IsRemoved,
    };
}
