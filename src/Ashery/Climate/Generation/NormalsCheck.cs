using System.Globalization;
using Ashery.Climate.Evapotranspiration;
using Ashery.Problems;

namespace Ashery.Climate.Generation;

/// <summary>Whether a place's normals can be, before weather is made from them.</summary>
internal static class NormalsCheck
{
    public static List<Problem> Of(Place place)
    {
        var problems = new List<Problem>();
        Within(problems, "latitude", place.Latitude, -90, 90, "degrees");
        Within(problems, "elevation", place.ElevationMetres, Air.LowestPlace, Air.HighestPlace, "m");
        if (place.Normals is not { Count: 12 } normals)
        {
            problems.Add(new("normals", "The place has no monthly normals.", "Give all twelve months, January first: mean maximum and minimum in °C and rain in mm."));
            return problems;
        }

        for (var m = 0; m < 12; m++)
        {
            var (month, name) = (normals[m], CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(m + 1));
            Within(problems, name + ", mean maximum", month.MeanMax, -60, 60, "°C");
            Within(problems, name + ", mean minimum", month.MeanMin, -60, 60, "°C");
            Within(problems, name + ", rain", month.RainMm, 0, 3000, "mm");
            Within(problems, name + ", wet days", month.WetDays, 0, DateTime.DaysInMonth(2024, m + 1), "days");
            Within(problems, name + ", wind", month.WindMs, 0, 30, "m/s");
            Within(problems, name + ", humidity", month.Humidity, 1, 100, "%");
            Within(problems, name + ", radiation", month.RadiationMj, 0, 45, "MJ/m² a day");
            if (!(month.MeanMax - month.MeanMin >= 0.5))
            {
                problems.Add(new(name, "The mean maximum is not half a degree above the mean minimum.", "Check whether the two were swapped or one is the mean of the whole day."));
            }

            if (month.WetDays is 0 && month.RainMm > 0)
            {
                problems.Add(new(name + ", wet days", "There is rain but no day with rain.", "Give the days with rain, or leave them out and they are estimated."));
            }
        }

        return problems;
    }

    private static void Within(List<Problem> problems, string field, double? value, double low, double high, string unit)
    {
        if (value is { } v && !(v >= low && v <= high))
        {
            problems.Add(new(field, string.Create(CultureInfo.InvariantCulture, $"{v:0.##} is outside {low:0.##} to {high:0.##} {unit}."), "Correct it or leave it out."));
        }
    }
}
