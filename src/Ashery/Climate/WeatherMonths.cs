using Ashery.Climate.Evapotranspiration;

namespace Ashery.Climate;

/// <summary>A month of a series in a line. Sums are of the days there are; in the mean year of a whole month.</summary>
/// <param name="Year">The year; null where months of several years were averaged.</param>
/// <param name="Month">1 to 12.</param>
/// <param name="Days">Days that were counted, of all years together.</param>
/// <param name="MeanMax">Mean maximum, °C.</param>
/// <param name="MeanMin">Mean minimum, °C.</param>
/// <param name="RainMm">Rain, mm a month.</param>
/// <param name="WetDays">Days with 0.1 mm or more, a month.</param>
/// <param name="RadiationMj">Mean solar radiation, MJ/m² a day.</param>
/// <param name="DaylightHours">Mean daylight, h.</param>
/// <param name="ReferenceEtMm">Reference evapotranspiration, mm a month.</param>
public sealed record WeatherMonth(
    int? Year, int Month, int Days, double MeanMax, double MeanMin, double RainMm, double WetDays, double RadiationMj, double DaylightHours, double ReferenceEtMm);

/// <summary>A series by its months.</summary>
public static class WeatherMonths
{
    /// <summary>So many months are listed one by one; of longer series the mean year is shown.</summary>
    public const int MostListed = 24;

    /// <summary>Month by month in order, or twelve months of the mean year.</summary>
    public static IReadOnlyList<WeatherMonth> Of(WeatherSeries series)
    {
        var days = series.Days;
        if (days.Count == 0)
        {
            return [];
        }

        var (first, last) = (days[0].Date, days[^1].Date);
        var months = ((last.Year - first.Year) * 12) + last.Month - first.Month + 1;
        var mean = months > MostListed;
        var sums = new Sum[mean ? 12 : months];
        foreach (var day in days)
        {
            var at = ((day.Date.Year - first.Year) * 12) + day.Date.Month - first.Month;
            sums[mean ? day.Date.Month - 1 : at].Add(day, series.Place.Latitude);
        }

        var lines = new List<WeatherMonth>(sums.Length);
        for (var i = 0; i < sums.Length; i++)
        {
            var month = first.AddMonths(i);
            lines.Add(mean ? sums[i].Line(null, i + 1) : sums[i].Line(month.Year, month.Month));
        }

        return lines;
    }

    private struct Sum
    {
        private int days;
        private double max;
        private double min;
        private double rain;
        private int wet;
        private double radiation;
        private double daylight;
        private double et;

        public void Add(DailyWeather day, double latitude)
        {
            days++;
            max += day.MaxCelsius;
            min += day.MinCelsius;
            rain += day.RainMm;
            wet += day.RainMm >= 0.1 ? 1 : 0;
            radiation += day.RadiationMj;
            daylight += SolarGeometry.DaylightHours(latitude, day.Date.DayOfYear);
            et += day.ReferenceEtMm;
        }

        public readonly WeatherMonth Line(int? year, int month)
        {
            if (days == 0)
            {
                return new(year, month, 0, 0, 0, 0, 0, 0, 0, 0);
            }

            // A month of the mean year is whole, even where the series starts or ends within one.
            var share = year is null ? (month == 2 ? 28.25 : DateTime.DaysInMonth(2023, month)) / days : 1;
            return new(year, month, days, max / days, min / days, rain * share, wet * share, radiation / days, daylight / days, et * share);
        }
    }
}
