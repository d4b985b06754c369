namespace Ashery.Solutions;

/// <summary>
/// log10 g = -A z² √I/(1 + B å √I) + b I (Truesdell and Jones 1974); Davies' equation, log10 g = -A z² (√I/(1 + √I) - 0.3 I),
/// for a charged species without parameters; b I for a neutral one.
/// </summary>
public static class ActivityCoefficient
{
    /// <summary>Natural logarithm of the activity coefficient at an ionic strength (mol/kg).</summary>
    public static double Ln(AqueousSpecies species, WaterProperties water, double ionicStrength)
    {
        var root = Math.Sqrt(ionicStrength);
        var shield = water.A * species.Charge * species.Charge;
        var size = species.Charge == 0 ? 0 : species.Size is { } s ? water.B * s : 1;
        var linear = species.ByDavies ? species.Linear * shield : species.Linear;
        return Math.Log(10) * ((linear * ionicStrength) - (shield * root / (1 + (size * root))));
    }
}
