using System.Globalization;
using Ashery.Exchange.Journal;
using Ashery.Journal;

namespace Ashery.Records.Moving.Exports;

/// <summary>The journal as a table for a spreadsheet: an entry that stands a line. Written only; what is read back are the lines of JSON.</summary>
internal static class JournalTable
{
    public static void Write(TextWriter writer, IEnumerable<StoredEntry> entries)
    {
        writer.Write("day,time,kind,pots,note,by,written,entry\r\n");
        foreach (var stored in entries)
        {
            var entry = stored.Entry;
            string[] cells =
            [
                entry.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), entry.Time?.ToString("HH:mm", CultureInfo.InvariantCulture) ?? "", EntryKind.Of(entry.Facts),
                string.Join(' ', entry.Pots), entry.Note, stored.By, stored.At.UtcDateTime.ToString("yyyy-MM-dd HH:mm:ss", CultureInfo.InvariantCulture), JournalJson.WriteLine(entry),
            ];
            writer.Write(string.Join(',', cells.Select(Cell)) + "\r\n");
        }
    }

    // RFC 4180; a cell that a spreadsheet would take for a formula gets an apostrophe (OWASP, "CSV Injection").
    private static string Cell(string text)
    {
        var safe = text.Length > 0 && text[0] is '=' or '+' or '-' or '@' or '\t' or '\r' ? "'" + text : text;
        return safe.AsSpan().IndexOfAny(",\"\r\n") >= 0 ? $"\"{safe.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : safe;
    }
}
