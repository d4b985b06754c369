using System.Globalization;
using Ashery.Records;

namespace Ashery.Web.Gardens;

/// <summary>How an address and a form name entries that were just written: <c>j12-15</c> and <c>id/revision</c>.</summary>
internal static class WrittenEntries
{
    /// <summary>More at once are written without a way back on the next page; the list of changes has them.</summary>
    private const int Most = 100;

    /// <summary>For the address of the page that says so.</summary>
    public static string Mark(IReadOnlyList<StoredEntry> written) => written.Count == 0
        ? ""
        : string.Create(CultureInfo.InvariantCulture, $"j{written.Min(static e => e.Sequence)}-{written.Max(static e => e.Sequence)}");

    /// <summary>The entries of such a mark while they are the newest; none when others were written since.</summary>
    public static IReadOnlyList<StoredEntry> Find(string? mark, GardenDesk desk)
    {
        if (mark is not ['j', ..] || mark[1..].Split('-') is not [var first, var last] || Number(first) is not { } from || Number(last) is not { } to
            || to - from is < 0 or >= Most)
        {
            return [];
        }

        var latest = desk.WrittenLately((int)(to - from) + 1);
        return latest is [var newest, ..] && newest.Sequence == to ? [.. latest.Where(e => e.Sequence >= from)] : [];
    }

    public static string Name(StoredEntry entry) => string.Create(CultureInfo.InvariantCulture, $"{entry.Entry.Id:D}/{entry.Revision}");

    public static (Guid Id, int Revision)? Named(string? name) =>
        name?.Split('/') is [var id, var revision] && Guid.TryParseExact(id, "D", out var entry) && Number(revision) is > 0 and <= int.MaxValue and var number
            ? (entry, (int)number)
            : null;

    private static long? Number(string text) => long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? n : null;
}
