using System.Globalization;
using Ashery.Gardens;
using Ashery.Journal;
using Ashery.Problems;
using CsvHelper;

namespace Ashery.Exchange.Journal;

/// <summary>
/// Measurements as a table: a line a pot and day, a column a figure. What is written reads back as the same readings; ids are made of what a
/// reading says, so that the same table read twice is written once.
/// </summary>
public static class MeasurementsCsv
{
    /// <summary>Longest text, signs.</summary>
    public const int LongestText = 4 * 1024 * 1024;

    /// <summary>Most readings in a table.</summary>
    public const int MostReadings = 20_000;

    private static readonly CsvWriterOptions Options = CsvWriterOptions.Default with { Injection = CsvInjection.Escape };

    /// <summary>Reads a table; all that is wrong comes back at once, each with line and column.</summary>
    /// <param name="text">The table, with its header.</param>
    /// <param name="garden">For its pots, by key or name.</param>
    /// <param name="today">Nothing is measured later.</param>
    public static Result<IReadOnlyList<MeasurementLine>> Read(string text, Garden garden, DateOnly today) => new MeasurementsReader(garden, today).Read(text);

    /// <summary>Writes readings, oldest first. A note that a spreadsheet would run as a formula is written as text.</summary>
    public static void Write(TextWriter writer, IEnumerable<Entry> entries)
    {
        using var csv = CsvWriter.Create(writer, Options, leaveOpen: true);
        foreach (var column in MeasurementColumns.All)
        {
            csv.WriteField(column);
        }

        csv.EndRecord();
        foreach (var line in Lines(entries))
        {
            Write(csv, line);
        }
    }

    // Readings of one pot, hour, temperature and note share a line, each kind once.
    private static IEnumerable<List<Entry>> Lines(IEnumerable<Entry> entries)
    {
        var measured = entries.Where(static e => e is { Facts: Measured, Pots.Count: 1 })
            .OrderBy(static e => e.Day).ThenBy(static e => e.Time).ThenBy(static e => e.Pots[0], StringComparer.Ordinal).ThenBy(static e => ((Measured)e.Facts).What).ThenBy(static e => e.Id);
        foreach (var together in measured.GroupBy(static e => (e.Day, e.Time, e.Pots[0], ((Measured)e.Facts).Celsius, e.Note)))
        {
            List<List<Entry>> lines = [];
            foreach (var entry in together)
            {
                var line = lines.Find(l => l.TrueForAll(e => ((Measured)e.Facts).What != ((Measured)entry.Facts).What));
                if (line is null)
                {
                    lines.Add(line = []);
                }

                line.Add(entry);
            }

            foreach (var line in lines)
            {
                yield return line;
            }
        }
    }

    private static void Write(CsvWriter csv, List<Entry> line)
    {
        var first = line[0];
        csv.WriteField(first.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        csv.WriteField(first.Time?.ToString("HH:mm", CultureInfo.InvariantCulture) ?? "");
        csv.WriteField(first.Pots[0]);
        foreach (var (_, what) in MeasurementColumns.Figures)
        {
            csv.WriteField(line.Find(e => ((Measured)e.Facts).What == what) is { Facts: Measured m } ? Number(m.Value) : "");
        }

        csv.WriteField(((Measured)first.Facts).Celsius is { } celsius ? Number(celsius) : "");
        csv.WriteField(first.Note);
        csv.EndRecord();
    }

    // The shortest figure that reads back as the same; never in powers of ten.
    private static string Number(double value)
    {
        var text = value.ToString("R", CultureInfo.InvariantCulture);
        return text.Contains('E', StringComparison.Ordinal) ? value.ToString("0.####################", CultureInfo.InvariantCulture) : text;
    }
}

/// <summary>A reading of a table.</summary>
/// <param name="Line">Line it stands in, the header being line 1.</param>
/// <param name="Entry">What it says.</param>
public sealed record MeasurementLine(long Line, Entry Entry)
{
    /// <summary>True when the journal has the same figure of the same pot, day and hour.</summary>
    public bool IsIn(IEnumerable<Entry> known) => known.Any(e =>
        e.Day == Entry.Day && e.Time == Entry.Time && e.Facts is Measured had && had == (Measured)Entry.Facts && e.Pots.SequenceEqual(Entry.Pots, StringComparer.Ordinal));
}
