using System.Globalization;
using System.Text;
using Ashery.Problems;
using Ashery.Trials;
using Ashery.Trials.Results;

namespace Ashery.Exchange.Trials;

/// <summary>
/// Results as text, a line a figure: <c>pot,date,value</c> with a header, the columns in any order, <c>date</c> if wanted; or just pot and value. Commas,
/// semicolons or tabs, as a spreadsheet puts them. Lines without a value are pots not looked at.
/// </summary>
public static class ResultsCsv
{
    public const int LongestText = 4 * 1024 * 1024;

    private const int MostProblems = 20;

    public static Result<IReadOnlyList<TrialReading>> Read(string text)
    {
        if (text.Length > LongestText)
        {
            return Fail("results", "The text is longer than 4 MB; no record sheet is.", "Check that it is the right file.");
        }

        var lines = text.ReplaceLineEndings("\n").Split('\n');
        var first = Array.FindIndex(lines, static l => !string.IsNullOrWhiteSpace(l));
        if (first < 0)
        {
            return Fail("results", "There is no line in it.", "Write a header, pot,value, and one line a pot.");
        }

        var separator = lines[first].Contains('\t', StringComparison.Ordinal) ? '\t' : lines[first].Contains(';', StringComparison.Ordinal) ? ';' : ',';
        var columns = Columns(Cells(lines[first], separator), out var headed);
        if (columns is not var (pot, date, value) || pot < 0 || value < 0)
        {
            return Fail("results, line " + Number(first + 1), "The header needs the columns pot and value.", "Write pot,date,value or pot,value.");
        }

        var readings = new List<TrialReading>();
        var wrong = new List<Problem>();
        for (var i = headed ? first + 1 : first; i < lines.Length && wrong.Count < MostProblems; i++)
        {
            if (string.IsNullOrWhiteSpace(lines[i]))
            {
                continue;
            }

            var cells = Cells(lines[i], separator);
            var line = "line " + Number(i + 1);
            if (Cell(cells, pot) is not { Length: > 0 } key)
            {
                wrong.Add(new($"{line}, pot", "No pot is named.", "Write the key that is on its tag."));
            }
            else if (Cell(cells, value) is { Length: > 0 } figure)
            {
                Add(readings, wrong, line, key, Cell(cells, date), figure);
            }
        }

        return wrong.Count > 0 ? Result.Fail<IReadOnlyList<TrialReading>>(wrong) : Result.Of<IReadOnlyList<TrialReading>>(readings);
    }

    /// <summary>A sheet to fill in: the pots in walking order, figures empty.</summary>
    public static string Sheet(Trial trial)
    {
        var text = new StringBuilder("pot,date,value\n");
        foreach (var place in trial.Layout)
        {
            text.Append(Quoted(place.Pot)).Append(",,\n");
        }

        return text.ToString();
    }

    private static void Add(List<TrialReading> readings, List<Problem> wrong, string line, string pot, string? day, string figure)
    {
        if (pot.Length > 80)
        {
            wrong.Add(new($"{line}, pot", "This key is longer than 80 signs.", "Check that it is the right file."));
            return;
        }

        DateOnly? date = null;
        if (day is { Length: > 0 })
        {
            if (!DateOnly.TryParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var read) || read.Year is < 1900 or > 2200)
            {
                wrong.Add(new($"{line}, date", $"\"{Short(day)}\" is not a date.", "Write dates as 2026-06-15."));
                return;
            }

            date = read;
        }

        if (double.TryParse(figure, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value))
        {
            readings.Add(new(pot, value, date));
        }
        else
        {
            wrong.Add(new($"{line}, value", $"\"{Short(figure)}\" is not a number.", "Write a plain number with a point, such as 12 or 31.5; leave it empty for a pot not looked at."));
        }
    }

    // A first line without the word pot is a figure already: pot and value, or pot, date and value.
    private static (int Pot, int Date, int Value)? Columns(List<string> cells, out bool headed)
    {
        var names = cells.ConvertAll(static c => c.ToLowerInvariant());
        headed = names.Contains("pot");
        if (headed)
        {
            return (names.IndexOf("pot"), names.IndexOf("date"), names.IndexOf("value"));
        }

        return cells.Count switch { 2 => (0, -1, 1), 3 => (0, 1, 2), _ => null };
    }

    private static List<string> Cells(string line, char separator)
    {
        var cells = new List<string>();
        var cell = new StringBuilder();
        var quoted = false;
        for (var i = 0; i < line.Length; i++)
        {
            if (line[i] == '"')
            {
                if (quoted && i + 1 < line.Length && line[i + 1] == '"')
                {
                    cell.Append('"');
                    i++;
                }
                else
                {
                    quoted = !quoted;
                }
            }
            else if (line[i] == separator && !quoted)
            {
                cells.Add(cell.ToString().Trim());
                cell.Clear();
            }
            else
            {
                cell.Append(line[i]);
            }
        }

        cells.Add(cell.ToString().Trim());
        return cells;
    }

    private static string? Cell(List<string> cells, int at) => at >= 0 && at < cells.Count ? cells[at] : null;

    private static string Quoted(string key) => key.AsSpan().IndexOfAny(",;\"\t") >= 0 ? "\"" + key.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"" : key;

    private static string Short(string text) => text.Length > 40 ? text[..40] + "..." : text;

    private static string Number(int n) => n.ToString(CultureInfo.InvariantCulture);

    private static Result<IReadOnlyList<TrialReading>> Fail(string field, string message, string wayOut) => Result.Fail<IReadOnlyList<TrialReading>>(field, message, wayOut);
}
