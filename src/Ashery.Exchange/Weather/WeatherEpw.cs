using System.Globalization;
using Ashery.Climate.Evapotranspiration;
using Ashery.Climate.Observed;

namespace Ashery.Exchange.Weather;

/// <summary>
/// Reads an EPW file: eight header lines, then a line an hour with 35 fields (column order seen in published documentation; codes for missing values from
/// the same, temperatures from 99.9 on, humidity, wind and rain from 999, radiation from 9999). Hours become days. Typical years, put together of months of different years, are laid on one year.
/// </summary>
internal sealed class WeatherEpw(WeatherProblems problems)
{
    private const int Width = 35, HeaderLines = 8;

    /// <summary>Year that a typical year is laid on: one without and one with a leap day.</summary>
    private const int CommonYear = 2001, LeapYear = 2004;

    private readonly List<(ObservedDay Day, long Line)> days = [];
    private readonly EpwDay hours = new();
    private string? name;
    private double? latitude;
    private double? elevation;

    public WeatherRecord Read(WeatherLines lines)
    {
        while (!problems.Full && lines.Next())
        {
            if (lines.Number <= HeaderLines)
            {
                Header(lines.Current, lines.Number);
            }
            else if (!lines.Current.IsWhiteSpace())
            {
                Hour(lines.Current, lines.Number);
            }

            if (problems.Any && lines.Number <= HeaderLines)
            {
                break;
            }
        }

        CloseDay();
        var book = new DayBook(problems);
        foreach (var (day, line) in OneYear())
        {
            if (problems.Full)
            {
                break;
            }

            book.Add(day, line);
        }

        return new(book.Days, name, latitude, elevation);
    }

    private void Header(ReadOnlySpan<char> line, long number)
    {
        Span<Range> pieces = stackalloc Range[16];
        var count = Fields.Cut(line, ',', pieces);
        if (number == 1)
        {
            if (!line[pieces[0]].Trim().Equals("LOCATION", StringComparison.OrdinalIgnoreCase) || count < 10
                || !Fields.Number(line[pieces[6]], out var north) || !Fields.Number(line[pieces[9]], out var height))
            {
                problems.Add(number, null, "It is not the LOCATION line of an EPW file, with latitude and height as fields 7 and 10.", "Give the file as it was downloaded.");
                return;
            }

            name = WeatherText.Shown(line[pieces[1]].Trim());
            latitude = problems.Within(north, number, "latitude", -90, 90, "degrees");
            elevation = problems.Within(height, number, "elevation", Air.LowestPlace, Air.HighestPlace, "m");
        }

        if (number == HeaderLines)
        {
            if (!line[pieces[0]].Trim().Equals("DATA PERIODS", StringComparison.OrdinalIgnoreCase))
            {
                problems.Add(number, null, "The eighth line is not the DATA PERIODS line of an EPW file.", "Give the file as it was downloaded.");
            }
            else if (count < 3 || !Fields.Whole(line[pieces[2]], out var records) || records != 1)
            {
                problems.Add(number, null, "The file has not one record an hour.", "Take the hourly file of the station.");
            }
        }
    }

    private void Hour(ReadOnlySpan<char> line, long number)
    {
        Span<Range> pieces = stackalloc Range[Width + 1];
        var count = Fields.Cut(line, ',', pieces);

        // The last two fields, depth and length of rain, are missing in old files.
        if (count is < Width - 3 or > Width)
        {
            problems.Add(number, null, string.Create(CultureInfo.InvariantCulture, $"It has {count} fields; an hour has {Width}."), "Give the file as it was downloaded.");
            return;
        }

        if (!Fields.Whole(line[pieces[0]], out var year) || !Fields.Whole(line[pieces[1]], out var month) || !Fields.Whole(line[pieces[2]], out var day)
            || !Fields.Whole(line[pieces[3]], out var hour) || hour is < 1 or > 24 || !WeatherText.TryDate(year, month, day, out var date))
        {
            problems.Add(number, "date", $"'{WeatherText.Shown(line[..Math.Min(line.Length, 16)])}' is not a year, month, day and hour (1 to 24).", "Give the file as it was downloaded.");
            return;
        }

        if (date != hours.Date)
        {
            CloseDay();
            hours.Start(date, number);
        }

        if (!hours.Claim(hour))
        {
            problems.Add(number, "hour", string.Create(CultureInfo.InvariantCulture, $"Hour {hour} of {date:yyyy-MM-dd} is there twice."), "Leave one of the two.");
            return;
        }

        var dry = problems.Within(Figure(line, pieces, count, 6, 99.9, number), number, "dry bulb", DayLimits.Coldest, DayLimits.Hottest, "°C");
        var dew = problems.Within(Figure(line, pieces, count, 7, 99.9, number), number, "dew point", DayLimits.Coldest, 50, "°C");
        var sun = problems.Within(Figure(line, pieces, count, 13, 9999, number), number, "global radiation", 0, 1500, "Wh/m²");
        var wind = problems.Within(Figure(line, pieces, count, 21, 999, number), number, "wind", 0, DayLimits.MostWind, "m/s");
        var rain = problems.Within(Figure(line, pieces, count, 33, 999, number), number, "rain", 0, DayLimits.MostRain, "mm");
        hours.Add(dry, dew, sun, wind, rain);
    }

    private double Figure(ReadOnlySpan<char> line, ReadOnlySpan<Range> pieces, int count, int place, double missing, long number)
    {
        if (place >= count || line[pieces[place]].IsWhiteSpace())
        {
            return double.NaN;
        }

        if (!Fields.Number(line[pieces[place]], out var value))
        {
            problems.Add(number, null, string.Create(CultureInfo.InvariantCulture, $"Field {place + 1}, '{WeatherText.Shown(line[pieces[place]])}', is not a number."), "Give the file as it was downloaded.");
            return double.NaN;
        }

        return value >= missing ? double.NaN : value;
    }

    private void CloseDay()
    {
        if (hours.Close() is { } day)
        {
            days.Add((day, hours.Line));
        }
    }

    // Months of a typical year come from different years: where the year jumps back or skips, all are laid on one.
    private List<(ObservedDay Day, long Line)> OneYear()
    {
        var typical = false;
        for (var i = 1; i < days.Count; i++)
        {
            typical |= days[i].Day.Date.Year != days[i - 1].Day.Date.Year && days[i].Day.Date != days[i - 1].Day.Date.AddDays(1);
        }

        if (!typical || days.Count > 366)
        {
            return days;
        }

        problems.Add("dates", "The months come from different years: it is a typical year, laid on one.", "Nothing to do.", Ashery.Problems.Severity.Note);
        var leap = days.Exists(static d => d.Day.Date is { Month: 2, Day: 29 });
        return days.ConvertAll(d => (d.Day with { Date = new DateOnly(leap ? LeapYear : CommonYear, d.Day.Date.Month, d.Day.Date.Day) }, d.Line));
    }
}
