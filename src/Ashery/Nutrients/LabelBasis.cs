namespace Ashery.Nutrients;

/// <summary>
/// The bases a label may be printed on. Phosphorus and potassium are sold as oxides nearly everywhere; calcium,
/// magnesium and sulfur as elements in some countries and as oxides in others. Ashery keeps
/// <see cref="LabelAnalysis"/> (N, P2O5, K2O, all others as the element) and <see cref="ElementAnalysis"/> apart as types.
/// </summary>
public static class LabelBasis
{
    // IUPAC 2021 abridged standard atomic weights (from memory; Prohaska et al. 2022, Pure Appl. Chem. 94:573).
    private const double O = 15.999;

    /// <summary>Mass of P in a mass of P2O5: 2 P / (2 P + 5 O). Published checks print 0.4364.</summary>
    public const double PhosphorusInP2O5 = 2 * 30.974 / ((2 * 30.974) + (5 * O));

    /// <summary>Mass of K in a mass of K2O: 2 K / (2 K + O). Published checks print 0.8301.</summary>
    public const double PotassiumInK2O = 2 * 39.098 / ((2 * 39.098) + O);

    /// <summary>Mass of Ca in a mass of CaO.</summary>
    public const double CalciumInCaO = 40.078 / (40.078 + O);

    /// <summary>Mass of Mg in a mass of MgO.</summary>
    public const double MagnesiumInMgO = 24.305 / (24.305 + O);

    /// <summary>Mass of S in a mass of SO3.</summary>
    public const double SulfurInSO3 = 32.06 / (32.06 + (3 * O));

    /// <summary>Factor from the label's figure to the element: one stored factor, divided for the way back.</summary>
    public static double ElementPerLabel(Nutrient nutrient) => nutrient switch
    {
        Nutrient.P => PhosphorusInP2O5,
        Nutrient.K => PotassiumInK2O,
        _ => 1.0,
    };

    /// <summary>The nutrient as a label prints it.</summary>
    public static string Symbol(Nutrient nutrient) => nutrient switch
    {
        Nutrient.P => "P2O5",
        Nutrient.K => "K2O",
        _ => nutrient.ToString(),
    };
}
