using System.Text.Json;
using Ashery.Sources;

namespace Ashery.Solutions.Acids;

/// <summary>Density of a dissolved acid at 20 °C by mass fraction, straight between the rows of the table.</summary>
public sealed class AcidDensity
{
    private readonly double[] fractions;
    private readonly double[] densities;

    private AcidDensity(double[] fractions, double[] densities)
    {
        this.fractions = fractions;
        this.densities = densities;
    }

    /// <summary>Temperature the table holds for, °C.</summary>
    public static double Celsius => 20;

    /// <summary>Strongest of the table, mass fraction.</summary>
    public double MostFraction => fractions[^1];

    public double Lightest => densities[0];

    public double Heaviest => densities.Max();

    /// <summary>g/mL of a solution; null beyond the table.</summary>
    public double? At(double massFraction)
    {
        if (!(massFraction >= 0 && massFraction <= fractions[^1]))
        {
            return null;
        }

        var i = 1;
        while (i < fractions.Length - 1 && massFraction > fractions[i])
        {
            i++;
        }

        return densities[i - 1] + ((densities[i] - densities[i - 1]) * (massFraction - fractions[i - 1]) / (fractions[i] - fractions[i - 1]));
    }

    /// <summary>
    /// Every strength (mass fraction, ascending) that has this density. Sulfuric acid has two between 1.8305 and its heaviest, about
    /// 1.8364 at 97 %: from there it gets lighter as it gets stronger.
    /// </summary>
    public IReadOnlyList<double> Strengths(double density)
    {
        var found = new List<double>();
        for (var i = 1; i < fractions.Length; i++)
        {
            double from = densities[i - 1], to = densities[i];
            if ((density - from) * (density - to) <= 0 && from != to)
            {
                var at = fractions[i - 1] + ((fractions[i] - fractions[i - 1]) * (density - from) / (to - from));
                if (found.Count == 0 || at - found[^1] > 1e-9)
                {
                    found.Add(at);
                }
            }
        }

        return found;
    }

    internal static AcidDensity Read(JsonElement rows)
    {
        var parts = new List<double>();
        var weights = new List<double>();
        foreach (var row in rows.EnumerateArray())
        {
            parts.Add(row.Number("percent") / 100);
            weights.Add(row.Number("density"));
        }

        return new([.. parts], [.. weights]);
    }
}
