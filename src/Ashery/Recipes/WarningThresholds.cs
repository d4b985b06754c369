using Ashery.Nutrients;

namespace Ashery.Recipes;

/// <summary>From where on a blend is warned of, each with its source.</summary>
public static class WarningThresholds
{
    /// <summary>
    /// Chloride, mass fraction. "Low in chloride" could be printed on a bag up to 2 % Cl under Regulation (EC) 2003/2003,
    /// Annex I (from memory; that regulation was repealed in 2022).
    /// </summary>
    public const double Chloride = 0.02;

    /// <summary>
    /// Part of the nitrogen as ammonium and urea from which it is all but ammonium nitrogen. Urea counts because it turns to
    /// ammonium within about two days in a growing medium (Mattson, Leatherwood and Peters 2009, GMPro, June; seen).
    /// </summary>
    public const double AllAmmoniacal = 0.95;

    /// <summary>
    /// Part of the nitrogen as ammonium and urea that a blend offered instead keeps to: half, the usual upper bound for
    /// soilless mixes in cool months (from memory, no page seen).
    /// </summary>
    public const double BalancedAmmoniacal = 0.5;

    /// <summary>
    /// Calcium that goes with nitrogen in a plant, 0.5 to 1.5 by dry matter: Epstein 1965, Mineral metabolism, in Plant
    /// Biochemistry (table seen in lecture notes of the University of Wisconsin, Soil Science 326).
    /// </summary>
    public const double CalciumPerNitrogen = 0.5 / 1.5;

    /// <summary>Magnesium that goes with nitrogen in a plant, 0.2 to 1.5, from the same table.</summary>
    public const double MagnesiumPerNitrogen = 0.2 / 1.5;

    /// <summary>A blend with less than this part of the plant's proportion is said to miss the nutrient (our own choice).</summary>
    public const double Missing = 0.1;

    internal static double PerNitrogen(Nutrient nutrient) =>
        nutrient is Nutrient.Ca ? CalciumPerNitrogen : MagnesiumPerNitrogen;
}
