using System.Text.Json;
using Ashery.Sources;

namespace Ashery.RootZone.Forcing;

/// <summary>
/// Relative rates by root-zone temperature, in a table of quarter degrees: Q10 laws, the curve of nitrification, and the dissociation of
/// ammonium pKa = 0.09018 + 2729.92/T (Emerson and others 1975, from memory).
/// </summary>
public sealed class TemperatureFactors
{
    private const double Coldest = -20, Warmest = 60, PerDegree = 4;

    // Microbes slow down above this; the Q10 laws are told for 5 to 35 °C.
    private const double TooHot = 40, StopsAt = 55;

    private readonly Row[] rows = new Row[(int)((Warmest - Coldest) * PerDegree) + 2];

    public TemperatureFactors(RootZoneConstants c)
    {
        var curve = Curves.Value;
        for (var i = 0; i < rows.Length; i++)
        {
            var t = Coldest + (i / PerDegree);
            rows[i] = new()
            {
                Urea = Living(t, Math.Pow(c["urea-q10"], (t - 20) / 10)),
                Organic = Living(t, Math.Pow(c["organic-q10"], (t - 20) / 10)),
                Meal = Living(t, Math.Pow(OrganicClass.Meal.Q10.Value, (t - 20) / 10)),
                Coated = t <= 0 ? 0 : Math.Pow(c["coated-q10"], (t - 21) / 10),
                Nitrification = Between(curve.Celsius, curve.Relative, t),
                AmmoniaK = Math.Pow(10, -(c["ammonia-pka-a"] + (c["ammonia-pka-b"] / (t + 273.15)))),
            };
        }
    }

    private static Lazy<(double[] Celsius, double[] Relative)> Curves { get; } = new(static () =>
    {
        var curves = DataRows.Read("data/rootzone/temperature.json", static row => Tuple.Create(Numbers(row, "celsius"), Numbers(row, "relative")));
        return (curves[0].Item1, curves[0].Item2);
    });

    /// <summary>Sets the factors of a day by straight lines between the rows.</summary>
    public void Set(ref DayForcing day, double celsius)
    {
        var at = (Math.Clamp(celsius, Coldest, Warmest) - Coldest) * PerDegree;
        var i = (int)at;
        var part = at - i;
        ref readonly var low = ref rows[i];
        ref readonly var high = ref rows[i + 1];
        day.RootCelsius = celsius;
        day.Urea = low.Urea + (part * (high.Urea - low.Urea));
        day.Organic = low.Organic + (part * (high.Organic - low.Organic));
        day.Meal = low.Meal + (part * (high.Meal - low.Meal));
        day.Coated = low.Coated + (part * (high.Coated - low.Coated));
        day.Nitrification = low.Nitrification + (part * (high.Nitrification - low.Nitrification));
        day.AmmoniaK = low.AmmoniaK + (part * (high.AmmoniaK - low.AmmoniaK));
    }

    // Nothing lives in ice; above 40 °C rates fall in a straight line.
    private static double Living(double celsius, double rate) => celsius <= 0 ? 0
        : celsius <= TooHot ? rate
        : Math.Max(0, rate * (StopsAt - celsius) / (StopsAt - TooHot));

    private static double Between(double[] x, double[] y, double at)
    {
        if (at <= x[0])
        {
            return y[0];
        }

        for (var i = 1; i < x.Length; i++)
        {
            if (at <= x[i])
            {
                return y[i - 1] + ((y[i] - y[i - 1]) * (at - x[i - 1]) / (x[i] - x[i - 1]));
            }
        }

        return y[^1];
    }

    private static double[] Numbers(JsonElement row, string key) => [.. row.GetProperty(key).EnumerateArray().Select(static n => n.GetDouble())];

    private struct Row
    {
        public double Urea, Organic, Meal, Coated, Nitrification, AmmoniaK;
    }
}
