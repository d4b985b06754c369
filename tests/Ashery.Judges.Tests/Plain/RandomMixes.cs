using Ashery.Materials;
using Ashery.Solutions;
using Ashery.Solutions.Can;

namespace Ashery.Plain;

/// <summary>
/// Cans nobody would make and every solver must solve: one to eight materials of the catalogue, each from a milligram a kilogram up to what
/// dissolves of it alone, in waters from almost none to thirty millimoles of each ion, 0 to 40 °C, closed or open to the air.
/// </summary>
internal sealed class RandomMixes
{
    private const double MostWhereUnknown = 300;

    private static readonly string[] WaterIons = ["calcium", "magnesium", "sodium", "potassium", "chloride", "sulfate", "nitrate", "carbonate"];

    private readonly Random random;

    public RandomMixes(int seed)
    {
        random = new Random(seed);
        Materials = [.. MaterialCatalogue.Default.All.Select(MaterialInWater.Of).Where(m => m.Ok).Select(m => m.Value!)];
    }

    /// <summary>Everything of the catalogue that goes into water.</summary>
    public IReadOnlyList<MaterialInWater> Materials { get; }

    public SolutionInput Next()
    {
        var celsius = 40 * random.NextDouble();
        var water = SolutionInput.Pure(celsius, random.Next(2) == 0 ? Air.Closed : Air.Open);
        foreach (var ion in WaterIons)
        {
            // One ion in five is missing, the others over five decades.
            if (random.Next(5) > 0)
            {
                water = water.With(ion, 0.03 * Math.Pow(10, -5 * random.NextDouble()));
            }
        }

        var totals = water.Totals.ToArray();
        var mass = 1.0;
        for (var left = 1 + random.Next(8); left > 0; left--)
        {
            var material = Materials[random.Next(Materials.Count)];

            // Half of them over the whole range, half within a factor of ten of saturation.
            var grams = Saturation(material, celsius) * Math.Pow(10, (random.Next(2) == 0 ? -6 : -1) * random.NextDouble());
            foreach (var (component, moles) in material.Gives)
            {
                totals[component] += grams * moles;
            }

            mass += grams * material.Water / 1000;
        }

        for (var c = 0; c < totals.Length; c++)
        {
            totals[c] /= mass;
        }

        return water.WithTotals(totals);
    }

    // g of product a kg of water; what melts in its own crystal water, and acids, up to as much as the water itself.
    private static double Saturation(MaterialInWater material, double celsius)
    {
        if (material.Salt is { } salt && SaltSolubility.Limit(salt, celsius) is { } limit)
        {
            return Math.Min(limit, 1000) / material.Purity;
        }

        return material.Solubility.Count > 0 ? Math.Min(1000, material.Solubility.MinBy(p => Math.Abs(p.Celsius - celsius))!.GramsPerKgWater) : MostWhereUnknown;
    }
}
