using Ashery.Materials;

namespace Ashery.Solutions.Can;

/// <summary>Each material against what of it dissolves alone.</summary>
internal static class SaltLimits
{
    public static SaltLimit Of(CanAddition addition, double celsius)
    {
        var material = addition.Material;
        var limit = Alone(material, celsius);
        var never = material.Undissolved > 0 && material.Behaviour == WaterBehaviour.Partly ? material.Undissolved * addition.Grams : 0;
        var beyond = limit is { } most && Counts(material) ? Math.Max(0, addition.Grams - most) : 0;
        return new(addition, limit, Math.Max(never, beyond));
    }

    /// <summary>g of the product that go into solution: what lies beyond the limit does not.</summary>
    public static double Dissolved(SaltLimit limit) =>
        limit.Limit is { } most && Counts(limit.Addition.Material) ? Math.Min(limit.Addition.Grams, most) : limit.Addition.Grams;

    // Salts of calcium with sulfate or phosphate fall apart into the solids of the model, which settle them.
    private static bool Counts(MaterialInWater material)
    {
        bool calcium = false, partner = false;
        foreach (var (component, _) in material.Gives)
        {
            var name = Chemistry.Default.Components[component].Name;
            calcium |= name == "calcium";
            partner |= name is "sulfate" or "phosphate";
        }

        return !(calcium && partner);
    }

    private static double? Alone(MaterialInWater material, double celsius)
    {
        if (material.Salt is { } salt && SaltSolubility.Limit(salt, celsius) is { } table)
        {
            return table / material.Purity;
        }

        return At(material.Solubility, celsius);
    }

    // Between the nearest points; outside them the nearest.
    private static double? At(IReadOnlyList<SolubilityPoint> points, double celsius)
    {
        if (points.Count == 0)
        {
            return null;
        }

        for (var i = 1; i < points.Count; i++)
        {
            var (a, b) = (points[i - 1], points[i]);
            if (celsius >= a.Celsius && celsius <= b.Celsius)
            {
                return a.GramsPerKgWater + ((celsius - a.Celsius) / (b.Celsius - a.Celsius) * (b.GramsPerKgWater - a.GramsPerKgWater));
            }
        }

        return celsius < points[0].Celsius ? points[0].GramsPerKgWater : points[^1].GramsPerKgWater;
    }
}
