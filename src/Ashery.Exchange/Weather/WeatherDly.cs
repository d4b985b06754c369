using System.Globalization;

namespace Ashery.Exchange.Weather;

/// <summary>
/// Reads a GHCN-Daily station file (.dly): a line a month and element of fixed width. Station 1 to 11, year 12 to 15, month 16 and 17, element 18 to 21, then 31 times
/// value (5), measurement, quality and source flag (1 each).
/// </summary>
internal sealed class WeatherDly(WeatherProblems problems)
{
    private const int Head = 21, Cell = 8, Full = Head + (31 * Cell);

    private readonly GhcnDays days = new(problems);
    private string? station;

    public WeatherRecord Read(WeatherLines lines)
    {
        while (!problems.Full && lines.Next())
        {
            if (!lines.Current.IsWhiteSpace())
            {
                Month(lines.Current, lines.Number);
            }
        }

        return new(days.Close(), station);
    }

    private void Month(ReadOnlySpan<char> line, long number)
    {
        // Blank flags at the end of the last day may have been cut off.
        if (line.Length is < Full - 3 or > Full)
        {
            problems.Add(number, null, string.Create(CultureInfo.InvariantCulture, $"It is {line.Length} characters long; a month has {Full}."), "Give the file as it was downloaded.");
            return;
        }

        if (!Fields.Whole(line[11..15], out var year) || !Fields.Whole(line[15..17], out var month) || !WeatherText.TryDate(year, month, 1, out var first))
        {
            problems.Add(number, "date", $"'{WeatherText.Shown(line[11..17])}' is not a year and month.", "Give the file as it was downloaded.");
            return;
        }

        var id = line[..11];
        station ??= WeatherText.Shown(id);
        if (!id.SequenceEqual(station))
        {
            problems.Add(number, "station", $"'{WeatherText.Shown(id)}' is another station than '{station}'.", "Give the file of one station.");
            return;
        }

        var element = GhcnDays.Known(line[17..21]);
        if (element == GhcnDays.Element.Other)
        {
            return;
        }

        for (var day = 0; day < 31; day++)
        {
            var at = Head + (day * Cell);
            if (!Fields.Whole(line.Slice(at, 5), out var value))
            {
                problems.Add(number, string.Create(CultureInfo.InvariantCulture, $"day {day + 1}"), $"'{WeatherText.Shown(line.Slice(at, 5))}' is not a whole number.", "Give the file as it was downloaded; missing is -9999.");
                return;
            }

            if (day < DateTime.DaysInMonth(year, month))
            {
                days.Add(first.AddDays(day), element, value, at + 6 < line.Length ? line[at + 6] : ' ', number);
            }
            else if (value != -9999)
            {
                problems.Add(number, string.Create(CultureInfo.InvariantCulture, $"day {day + 1}"), "The month has no such day, yet there is a figure.", "Give the file as it was downloaded.");
                return;
            }
        }
    }
}
