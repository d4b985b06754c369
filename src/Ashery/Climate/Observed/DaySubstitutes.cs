using System.Globalization;
using Ashery.Climate.Evapotranspiration;
using Ashery.Problems;

namespace Ashery.Climate.Observed;

/// <summary>Radiation, vapour pressure and wind of each day from the best that is known (FAO-56, missing data), and evapotranspiration from all.</summary>
internal sealed class DaySubstitutes(Place place, List<Problem> problems)
{
    private int ranged;
    private int sunned;
    private int impossible;
    private int damp;
    private int windless;

    public DailyWeather[] Finish(ObservedDay[] days)
    {
        var sun = new DayEt(place.Latitude, place.ElevationMetres ?? 0);
        var finished = new DailyWeather[days.Length];
        for (var i = 0; i < days.Length; i++)
        {
            var d = days[i];
            var number = d.Date.DayOfYear;
            var radiation = Radiation(d, sun, number);
            var vapour = Math.Min(Vapour(d), VapourPressure.MeanSaturation(d.Max, d.Min));
            windless += double.IsNaN(d.Wind) ? 1 : 0;
            var wind = double.IsNaN(d.Wind) ? Wind.Unknown : d.Wind;
            finished[i] = new(d.Date, d.Min, d.Max, d.Rain, radiation, wind, vapour, sun.Of(number, d.Max, d.Min, radiation, wind, vapour));
        }

        Notes(days.Length);
        return finished;
    }

    private double Radiation(ObservedDay d, DayEt sun, int number)
    {
        var top = sun.Extraterrestrial(number);
        if (!double.IsNaN(d.Radiation))
        {
            // A twentieth is left for a coarse sensor; more than the sun sends is a wrong unit or place.
            if (d.Radiation <= (top * 1.05) + 0.5)
            {
                return d.Radiation;
            }

            impossible++;
        }

        if (!double.IsNaN(d.Sunshine))
        {
            sunned++;
            return SolarRadiation.FromSunshine(Math.Min(d.Sunshine, sun.Daylight(number)), sun.Daylight(number), top);
        }

        ranged++;
        return SolarRadiation.FromRange(d.Max, d.Min, top, place.NearCoast ? SolarRadiation.Coast : SolarRadiation.Inland, place.ElevationMetres ?? 0);
    }

    private double Vapour(ObservedDay d)
    {
        if (!double.IsNaN(d.Vapour))
        {
            return d.Vapour;
        }

        if (!double.IsNaN(d.DewPoint))
        {
            return VapourPressure.FromDewPoint(d.DewPoint);
        }

        if (!double.IsNaN(d.HighestHumidity))
        {
            return double.IsNaN(d.LowestHumidity)
                ? VapourPressure.FromHighestHumidity(d.Min, d.HighestHumidity)
                : VapourPressure.FromHumidityExtremes(d.Max, d.Min, d.HighestHumidity, d.LowestHumidity);
        }

        if (!double.IsNaN(d.Humidity))
        {
            return VapourPressure.FromMeanHumidity(d.Max, d.Min, d.Humidity);
        }

        damp++;
        return VapourPressure.FromMinimum(d.Min);
    }

    private void Notes(int days)
    {
        if (impossible > days / 20)
        {
            problems.Add(new(
                "radiation",
                string.Create(CultureInfo.InvariantCulture, $"{impossible} of {days} days have more than the sun sends to this latitude."),
                "Check the unit, MJ/m² a day (1 kWh = 3.6 MJ), and the latitude."));
            return;
        }

        Note(impossible, days, "radiation", "with more radiation than the sun sends there; it was estimated instead", Severity.Warning);
        Note(sunned, days, "radiation", "with radiation from hours of sunshine");
        Note(ranged, days, "radiation", "with radiation estimated from the temperature range");
        Note(damp, days, "humidity", "with the dew point taken to be the minimum");
        Note(windless, days, "wind", "with wind taken as 2 m/s");
        if (place.ElevationMetres is null)
        {
            problems.Add(new("elevation", "No height is given: sea level is taken.", "Give it in metres; a kilometre changes evapotranspiration by a few per cent.", Severity.Note));
        }
    }

    private void Note(int count, int days, string field, string what, Severity severity = Severity.Note)
    {
        if (count > 0)
        {
            problems.Add(new(field, string.Create(CultureInfo.InvariantCulture, $"{count} of {days} days {what}."), "Give measured values if there are any.", severity));
        }
    }
}
