using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Ashery.Gardens;
using Ashery.Journal;
using Ashery.Pots;
using Ashery.Problems;
using Ashery.Quantities;
using CsvHelper;
using Measured = Ashery.Journal.Measured;

namespace Ashery.Exchange.Journal;

/// <summary>Reads measurements line by line; every problem names the line, the column and the way out.</summary>
internal sealed class MeasurementsReader(Garden garden, DateOnly today)
{
    /// <summary>After so many problems the table is plainly another one.</summary>
    private const int MostProblems = 50;

    private static readonly CsvReaderOptions Options = CsvReaderOptions.Default with
    {
        TrackLineNumbers = true,
        MaxRecordSize = 64 * 1024,
        MalformedData = CsvMalformedDataHandling.Throw,
    };

    private readonly List<Problem> problems = [];
    private readonly List<MeasurementLine> lines = [];
    private readonly HashSet<Guid> seen = [];

    public Result<IReadOnlyList<MeasurementLine>> Read(string text)
    {
        if (text.Length > MeasurementsCsv.LongestText)
        {
            return Fail("file", "The table is longer than 4 million signs.", "Split it by year.");
        }

        try
        {
            using var csv = CsvReader.FromText(text.TrimStart('\uFEFF'), Options with { Separator = Separator(text) });
            csv.ReadHeader();
            if (Header(csv))
            {
                Rows(csv);
            }
        }
        catch (CsvFormatException wrong)
        {
            problems.Add(new(Place(wrong.LineNumber), "The quotes of this line do not match, or it is far too long.", "Open and close every quoted text."));
        }

        return problems.Exists(IsError) ? Result.Fail<IReadOnlyList<MeasurementLine>>(problems)
            : lines.Count == 0 ? Fail("file", "There is no figure in it.", "Put a header on the first line, such as day,pot,flowers, and a pot a line below.")
            : Result.Of<IReadOnlyList<MeasurementLine>>(lines, problems);
    }

    // What is pasted from a spreadsheet comes with tabs, what some save with semicolons: the header says.
    private static char Separator(string text)
    {
        var end = text.IndexOfAny(['\r', '\n']);
        var header = end < 0 ? text : text[..end];
        return header.Contains('\t', StringComparison.Ordinal) ? '\t' : header.Contains(';', StringComparison.Ordinal) && !header.Contains(',', StringComparison.Ordinal) ? ';' : ',';
    }

    private bool Header(CsvReader csv)
    {
        var found = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var header in csv.Headers)
        {
            var name = header.Trim();
            if (!MeasurementColumns.All.Contains(name, StringComparer.OrdinalIgnoreCase))
            {
                problems.Add(new("line 1", $"The column '{NumberReader.Shown(name)}' is not known.", $"Columns are {string.Join(", ", MeasurementColumns.All)}."));
            }
            else if (!found.Add(name))
            {
                problems.Add(new("line 1", $"The column '{NumberReader.Shown(name)}' is there twice.", "Leave one of the two."));
            }
        }

        foreach (var needed in new[] { MeasurementColumns.Day, MeasurementColumns.Pot })
        {
            if (!found.Contains(needed))
            {
                problems.Add(new("line 1", $"The column '{needed}' is missing.", "Start with a header, such as day,pot,leachateEc,flowers."));
            }
        }

        return problems.Count == 0;
    }

    private static bool IsError(Problem p) => p.Severity == Severity.Error;

    private void Rows(CsvReader csv)
    {
        while (csv.Read())
        {
            var place = Place(csv.LineNumber);
            if (lines.Count >= MeasurementsCsv.MostReadings || problems.Count(IsError) >= MostProblems)
            {
                problems.Add(problems.Count(IsError) >= MostProblems
                    ? new(place, FormattableString.Invariant($"There are {MostProblems} problems up to here; the rest was not read."), "Put these right first.")
                    : new(place, FormattableString.Invariant($"There are more than {MeasurementsCsv.MostReadings} figures."), "Split the table."));
                return;
            }

            if (csv.FieldCount > csv.Headers.Count)
            {
                problems.Add(new(place, FormattableString.Invariant($"It has {csv.FieldCount} fields, the header has {csv.Headers.Count}."), "Put text that holds the separator in double quotes, and write decimals with a point."));
                continue;
            }

            Row(csv, csv.LineNumber, place);
        }
    }

    private void Row(CsvReader csv, long line, string place)
    {
        var before = problems.Count(IsError);
        var (day, time, pot) = (ReadDay(csv, place), ReadTime(csv, place), ReadPot(csv, place));
        var celsius = Number(csv, place, MeasurementColumns.Celsius, -5, 60);
        var note = Text(csv, MeasurementColumns.Note);

        // What the writer put in front so that a spreadsheet takes it as text.
        note = note.Length > 1 && note[0] == '\'' && note[1] is '=' or '+' or '-' or '@' ? note[1..] : note;
        if (note.Length > EntryRules.LongestNote)
        {
            problems.Add(new($"{place}, {MeasurementColumns.Note}", FormattableString.Invariant($"It has {note.Length} signs; {EntryRules.LongestNote} fit."), "Shorten it."));
        }

        List<Measured> figures = [];
        foreach (var (name, what) in MeasurementColumns.Figures)
        {
            var (from, to, _) = MeasuredRange.Of(what);
            if (Number(csv, place, name, from, to) is { } value)
            {
                figures.Add(new(what, value, celsius));
            }
        }

        if (problems.Count(IsError) > before || day is null || pot is null)
        {
            return;
        }

        foreach (var figure in figures)
        {
            var entry = new Entry { Id = IdOf(day.Value, time, pot.Id, figure, note), Day = day.Value, Time = time, Pots = [pot.Id], Note = note, Facts = figure };
            if (EntryRules.Check(entry) is { Count: > 0 } wrong)
            {
                problems.AddRange(wrong.Select(p => p with { Field = $"{place}, {p.Field}" }));
            }
            else if (seen.Add(entry.Id))
            {
                lines.Add(new(line, entry));
            }
            else
            {
                problems.Add(new(place, "It says what a line above says already.", "It is read once.", Severity.Note));
            }
        }
    }

    private DateOnly? ReadDay(CsvReader csv, string place)
    {
        var text = Text(csv, MeasurementColumns.Day);
        var field = $"{place}, {MeasurementColumns.Day}";
        if (!DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
        {
            problems.Add(new(field, text.Length == 0 ? "The day is missing." : $"'{NumberReader.Shown(text)}' is not a day.", "Write year-month-day, as in 2027-04-03."));
            return null;
        }

        if (day > today)
        {
            problems.Add(new(field, $"'{NumberReader.Shown(text)}' is still to come.", "Look at the year and the month."));
        }

        return day;
    }

    private TimeOnly? ReadTime(CsvReader csv, string place)
    {
        var text = Text(csv, MeasurementColumns.Time);
        if (text.Length == 0)
        {
            return null;
        }

        if (TimeOnly.TryParseExact(text, ["HH:mm", "H:mm"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var time))
        {
            return time;
        }

        problems.Add(new($"{place}, {MeasurementColumns.Time}", $"'{NumberReader.Shown(text)}' is not an hour.", "Write hours and minutes, as in 07:30."));
        return null;
    }

    private Pot? ReadPot(CsvReader csv, string place)
    {
        var text = Text(csv, MeasurementColumns.Pot);
        if (garden.Pots.FirstOrDefault(p => p.Id == text) is { } pot)
        {
            return pot;
        }

        var named = garden.Pots.Where(p => string.Equals(p.Name, text, StringComparison.OrdinalIgnoreCase)).Take(2).ToList();
        if (named.Count == 1)
        {
            return named[0];
        }

        problems.Add(new(
            $"{place}, {MeasurementColumns.Pot}",
            text.Length == 0 ? "The pot is missing." : named.Count > 1 ? $"Two pots are called '{NumberReader.Shown(text)}'." : $"There is no pot '{NumberReader.Shown(text)}'.",
            garden.Pots.Count == 0 ? "Add the pot to the garden first." : $"Write its key or its name, as in {garden.Pots[0].Id}."));
        return null;
    }

    private double? Number(CsvReader csv, string place, string column, double low, double high)
    {
        var cell = Text(csv, column);
        if (cell.Length == 0)
        {
            return null;
        }

        var read = NumberReader.Read(cell, $"{place}, {column}", low, high);
        problems.AddRange(read.Problems.Where(static p => p.Severity == Severity.Error));
        return read.Ok ? read.Value : null;
    }

    private static string Text(CsvReader csv, string column)
    {
        if (!csv.TryGetFieldIndex(column, out var index))
        {
            var at = csv.Headers.ToList().FindIndex(h => string.Equals(h.Trim(), column, StringComparison.OrdinalIgnoreCase));
            if (at < 0)
            {
                return "";
            }

            index = at;
        }

        return index < csv.FieldCount ? csv.GetString(index).Trim() : "";
    }

    /// <summary>A UUID of version 8 (RFC 9562, section 5.8): the first bits of a SHA-256 of what the reading says.</summary>
    private static Guid IdOf(DateOnly day, TimeOnly? time, string pot, Measured m, string note)
    {
        var says = string.Join('\n', day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), time?.ToString("HH:mm", CultureInfo.InvariantCulture), pot, m.What.ToString(), m.Value.ToString("R", CultureInfo.InvariantCulture), m.Celsius?.ToString("R", CultureInfo.InvariantCulture), note);
        Span<byte> hash = stackalloc byte[32];
        SHA256.HashData(Encoding.UTF8.GetBytes(says), hash);
        hash[6] = (byte)((hash[6] & 0x0F) | 0x80);
        hash[8] = (byte)((hash[8] & 0x3F) | 0x80);
        return new Guid(hash[..16], bigEndian: true);
    }

    private static string Place(long line) => string.Create(CultureInfo.InvariantCulture, $"line {line}");

    private static Result<IReadOnlyList<MeasurementLine>> Fail(string field, string message, string wayOut) => Result.Fail<IReadOnlyList<MeasurementLine>>(field, message, wayOut);
}
