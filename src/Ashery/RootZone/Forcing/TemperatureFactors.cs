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

    private const int Rows = (int)((Warmest - Coldest) * PerDegree) + 2;

    private readonly Row[] rows = new Row[Rows];

    public TemperatureFactors(RootZoneConstants c)
    {
        // Powers of Q10 by a product from row to row: a table is made for each draw, and a power a row would cost as much as months of a pot.
        var (nitrification, known) = (NitrificationRows.Value, 1 / PerDegree / 10);
        double urea = From(c["urea-q10"], 20), organic = From(c["organic-q10"], 20), meal = From(OrganicClass.Meal.Q10.Value, 20), coated = From(c["coated-q10"], 21);
        double ureaStep = Math.Pow(c["urea-q10"], known), organicStep = Math.Pow(c["organic-q10"], known);
        double mealStep = Math.Pow(OrganicClass.Meal.Q10.Value, known), coatedStep = Math.Pow(c["coated-q10"], known);
        double pka = -Math.Log(10) * c["ammonia-pka-a"], perKelvin = -Math.Log(10) * c["ammonia-pka-b"];
        for (var i = 0; i < rows.Length; i++)
        {
            var t = Coldest + (i / PerDegree);
            rows[i] = new()
            {
                Urea = Living(t, urea),
                Organic = Living(t, organic),
                Meal = Living(t, meal),
                Coated = t <= 0 ? 0 : coated,
                Nitrification = nitrification[i],
                AmmoniaK = Math.Exp(pka + (perKelvin / (t + 273.15))),
            };
            urea *= ureaStep;
            organic *= organicStep;
            meal *= mealStep;
            coated *= coatedStep;
        }
    }

    private static Lazy<(double[] Celsius, double[] Relative)> Curves { get; } = new(static () =>
    {
        var curves = DataRows.Read("data/rootzone/temperature.json", static row => Tuple.Create(Numbers(row, "celsius"), Numbers(row, "relative")));
        return (curves[0].Item1, curves[0].Item2);
    });

    // The curve of nitrification is the same in every draw.
    private static Lazy<double[]> NitrificationRows { get; } = new(static () =>
    {
        var curve = Curves.Value;
        return [.. Enumerable.Range(0, Rows).Select(i => Between(curve.Celsius, curve.Relative, Coldest + (i / PerDegree)))];
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

    private static double From(double q10, double reference) => Math.Pow(q10, (Coldest - reference) / 10);

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
