using Ashery.Materials;
using Ashery.Quantities;

namespace Ashery.Recipes;

/// <summary>What one level scoop of a material weighs.</summary>
internal static class ScoopMass
{
    /// <summary>
    /// Grams a scoop: the grower's own calibration first, else density times volume. Null when neither is known.
    /// </summary>
    public static Spread? Of(Scoop scoop, Material material)
    {
        if (scoop.Calibrations.TryGetValue(material.Id, out var weighed) && weighed.Typical > 0)
        {
            return weighed;
        }

        var millilitres = scoop.Volume.Millilitres;
        if (material.IsLiquid)
        {
            return material.LiquidDensity is { } density and > 0 ? Spread.Exactly(density * millilitres) : null;
        }

        return material.BulkDensity is { Typical: > 0 } loose
            ? new Spread(loose.Min * millilitres, loose.Typical * millilitres, loose.Max * millilitres)
            : null;
    }

    /// <summary>True when the mass comes from the grower's own weighing.</summary>
    public static bool IsCalibrated(Scoop scoop, Material material) => scoop.Calibrations.ContainsKey(material.Id);

    /// <summary>Millilitres that so many grams fill, by loose bulk density or a liquid's density; null when unknown.</summary>
    public static double? Millilitres(Material material, double grams)
    {
        var density = material.IsLiquid ? material.LiquidDensity : material.BulkDensity?.Typical;
        return density is > 0 ? grams / density : null;
    }
}
