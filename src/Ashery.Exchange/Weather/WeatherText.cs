using System.Globalization;
using Ashery.Quantities;

namespace Ashery.Exchange.Weather;

/// <summary>Dates and words of weather files as problems show them.</summary>
internal static class WeatherText
{
    /// <summary>Earliest and latest year that is taken for one.</summary>
    public const int FirstYear = 1700, LastYear = 2200;

    public static string Date(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>What stands there, cut short and without control characters.</summary>
    public static string Shown(ReadOnlySpan<char> text) => NumberReader.Shown(text[..Math.Min(text.Length, 60)].ToString());

    /// <summary>A date from its parts, or false when there is no such day.</summary>
    public static bool TryDate(int year, int month, int day, out DateOnly date)
    {
        date = default;
        if (year is < FirstYear or > LastYear || month is < 1 or > 12 || day < 1 || day > DateTime.DaysInMonth(year, month))
        {
            return false;
        }

        date = new(year, month, day);
        return true;
    }
}
