namespace Ashery.RootZone.Salts;

/// <summary>Growth under salt: 100 - b (ECe - a) % above the threshold a (Maas and Hoffman 1977, from memory; FAO-56 equation 89, seen).</summary>
public static class SaltTolerance
{
    /// <summary>Relative growth, 0 to 1.</summary>
    /// <param name="extractEc">Saturated extract, mS/cm.</param>
    /// <param name="threshold">a, mS/cm.</param>
    /// <param name="slope">b, % a mS/cm.</param>
    public static double RelativeGrowth(double extractEc, double threshold, double slope) =>
        Math.Clamp(1 - (slope / 100 * Math.Max(0, extractEc - threshold)), 0, 1);

    /// <summary>Water stress from salt, Ks = 1 - b/(100 Ky) (ECe - a), to be multiplied by that of a dry root zone; FAO-56 equation 89.</summary>
    public static double WaterStress(double extractEc, double threshold, double slope, double yieldResponse) =>
        Math.Clamp(1 - (slope / (100 * yieldResponse) * Math.Max(0, extractEc - threshold)), 0, 1);
}
