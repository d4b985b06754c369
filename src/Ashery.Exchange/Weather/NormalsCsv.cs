using System.Globalization;
using Ashery.Climate;
using Ashery.Problems;

namespace Ashery.Exchange.Weather;

/// <summary>
/// Reads monthly normals: a header with <c>month,max,min,rain</c> and, if known, <c>wet-days,wind,humidity,radiation</c>, then twelve lines. Months are 1 to 12; the units are those
/// of <see cref="MonthlyNormal"/>. Lines that start with # are remarks.
/// </summary>
public static class NormalsCsv
{
    /// <summary>Names of the columns; the first four are needed.</summary>
    public static IReadOnlyList<string> Columns => Names;

    private static readonly string[] Names = ["month", "max", "min", "rain", "wet-days", "wind", "humidity", "radiation"];

    /// <summary>The twelve months of a text.</summary>
    public static Result<IReadOnlyList<MonthlyNormal>> Read(string text)
    {
        var problems = new WeatherProblems();
        var months = new MonthlyNormal?[12];
        int[]? columns = null;
        var number = 0;
        foreach (var raw in text.Split('\n'))
        {
            number++;
            var line = raw.Trim();
            if (line.Length == 0 || line[0] == '#' || problems.Full)
            {
                continue;
            }

            var fields = line.Split(line.Contains(';', StringComparison.Ordinal) ? ';' : line.Contains('\t', StringComparison.Ordinal) ? '\t' : ',', StringSplitOptions.TrimEntries);
            if (columns is null)
            {
                columns = Header(fields, number, problems);
                if (problems.Any)
                {
                    break;
                }
            }
            else
            {
                Row(fields, columns, number, months, problems);
            }
        }

        if (!problems.Any && months.Any(static m => m is null))
        {
            var missing = string.Join(", ", Enumerable.Range(1, 12).Where(m => months[m - 1] is null));
            problems.Add("normals", $"Months are missing: {missing}.", "Give all twelve, a line each, under a header such as month,max,min,rain.");
        }

        return problems.Any ? Result.Fail<IReadOnlyList<MonthlyNormal>>(problems.All) : Result.Of<IReadOnlyList<MonthlyNormal>>([.. months.OfType<MonthlyNormal>()]);
    }

    private static int[] Header(string[] fields, int number, WeatherProblems problems)
    {
        var columns = new int[fields.Length];
        for (var i = 0; i < fields.Length; i++)
        {
            columns[i] = Array.FindIndex(Names, n => n.Equals(fields[i], StringComparison.OrdinalIgnoreCase));
            if (columns[i] < 0)
            {
                problems.Add(number, null, $"The column '{WeatherText.Shown(fields[i])}' is not known.", $"Columns are {string.Join(", ", Names)}.");
            }
            else if (columns.AsSpan(0, i).Contains(columns[i]))
            {
                problems.Add(number, null, $"The column '{Names[columns[i]]}' is there twice.", "Leave one of the two.");
            }
        }

        for (var needed = 0; needed < 4; needed++)
        {
            if (!columns.Contains(needed))
            {
                problems.Add(number, null, $"There is no column '{Names[needed]}'.", "Start with a header, such as month,max,min,rain.");
            }
        }

        return columns;
    }

    private static void Row(string[] fields, int[] columns, int number, MonthlyNormal?[] months, WeatherProblems problems)
    {
        if (fields.Length != columns.Length)
        {
            problems.Add(number, null, string.Create(CultureInfo.InvariantCulture, $"It has {fields.Length} fields, the header has {columns.Length}."), "Leave a figure that is not known empty, and write decimals with a point.");
            return;
        }

        var values = new double?[Names.Length];
        for (var i = 0; i < fields.Length; i++)
        {
            if (fields[i].Length == 0 && columns[i] > 3)
            {
                continue;
            }

            if (!Fields.Number(fields[i], out var value))
            {
                problems.Add(number, Names[columns[i]], $"'{WeatherText.Shown(fields[i])}' is not a number.", "Write digits with a point for decimals.");
                return;
            }

            values[columns[i]] = value;
        }

        if (values[0] is not { } month || month % 1 != 0 || month is < 1 or > 12)
        {
            problems.Add(number, "month", "It is not a month from 1 to 12.", "Write 1 for January.");
            return;
        }

        if (months[(int)month - 1] is not null)
        {
            problems.Add(number, "month", string.Create(CultureInfo.InvariantCulture, $"Month {month} is there already."), "Leave one of the two.");
            return;
        }

        months[(int)month - 1] = new(values[1]!.Value, values[2]!.Value, values[3]!.Value)
        {
            WetDays = values[4],
            WindMs = values[5],
            Humidity = values[6],
            RadiationMj = values[7],
        };
    }
}
