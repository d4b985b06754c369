using System.Globalization;
using System.Text.Json;
using Ashery.Nutrients;
using Ashery.Sources;

namespace Ashery.Solutions;

/// <summary>Published solubility of salts alone in pure water. Rows of data/solutions/solubility.json, for the anhydrous salt.</summary>
public static class SaltSolubility
{
    private static readonly Lazy<Dictionary<string, Curve>> Curves = new(static () =>
    {
        var curves = new Dictionary<string, Curve>(StringComparer.Ordinal);
        foreach (var curve in DataRows.Read("data/solutions/solubility.json", Curve.Read))
        {
            curves.Add(curve.Formula, curve);
        }

        return curves;
    });

    /// <summary>
    /// g of the salt as it is weighed, crystal water and all, that dissolve in a kg of added water; null where no table says. Infinite where
    /// the crystals hold enough water to dissolve in their own.
    /// </summary>
    public static double? Limit(Salt salt, double celsius)
    {
        var dot = salt.Formula.IndexOf('·', StringComparison.Ordinal);
        var bare = dot > 0 && salt.CrystalWater > 0 ? salt.Formula[..dot] : salt.Formula;
        if (!Curves.Value.TryGetValue(bare, out var curve) || curve.MassFraction(celsius) is not { } w)
        {
            return null;
        }

        // Anhydrous part a of the hydrate; x g of hydrate bring (1 - a) x of water: a x/(1000 + (1 - a) x) = r.
        var r = w / (1 - w);
        var a = Formula.Parse(bare).Value!.MolarMass / salt.MolarMass;
        var left = a - (r * (1 - a));
        return left > 0 ? 1000 * r / left : double.PositiveInfinity;
    }

    private sealed record Curve(string Formula, double[] Celsius, double[] Fractions)
    {
        public static Curve Read(JsonElement row)
        {
            var celsius = new List<double>();
            var fractions = new List<double>();
            foreach (var point in row.GetProperty("at").EnumerateObject())
            {
                celsius.Add(double.Parse(point.Name, CultureInfo.InvariantCulture));
                var grams = point.Value.GetDouble();
                fractions.Add(grams / (1000 + grams));
            }

            return new(row.Text("formula"), [.. celsius], [.. fractions]);
        }

        // Mass fractions run straighter with temperature than grams a kg of water.
        public double? MassFraction(double celsius)
        {
            if (celsius < Celsius[0] || celsius > Celsius[^1])
            {
                return null;
            }

            var i = 1;
            while (i < Celsius.Length - 1 && celsius > Celsius[i])
            {
                i++;
            }

            var part = (celsius - Celsius[i - 1]) / (Celsius[i] - Celsius[i - 1]);
            return Fractions[i - 1] + (part * (Fractions[i] - Fractions[i - 1]));
        }
    }
}
