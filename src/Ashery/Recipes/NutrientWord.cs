using Ashery.Nutrients;

namespace Ashery.Recipes;

/// <summary>
/// A nutrient as a grower writes it, and the factor from the figure written to the label's basis. Writing <c>P</c> or
/// <c>K</c> means the element, as a soil laboratory prints it; <c>P2O5</c> and <c>K2O</c> are what a bag prints.
/// </summary>
/// <param name="Nutrient">Which.</param>
/// <param name="LabelPerWritten">Multiply the written figure by this to get the label's.</param>
internal readonly record struct NutrientWord(Nutrient Nutrient, double LabelPerWritten)
{
    /// <summary>Every word understood, for messages.</summary>
    public const string Known = "N, P2O5, K2O, P, K, Ca, CaO, Mg, MgO, S, SO3, Fe, Mn, Zn, Cu, B, Mo, Cl, Na";

    /// <summary>True when the written basis is not the label's and the figure changes.</summary>
    public bool IsConverted => LabelPerWritten is not 1.0;

    public static NutrientWord? Find(string word) => word.ToUpperInvariant() switch
    {
        "N" => new(Nutrient.N, 1),
        "P2O5" => new(Nutrient.P, 1),
        "K2O" => new(Nutrient.K, 1),
        "P" => new(Nutrient.P, 1 / LabelBasis.PhosphorusInP2O5),
        "K" => new(Nutrient.K, 1 / LabelBasis.PotassiumInK2O),
        "CA" => new(Nutrient.Ca, 1),
        "CAO" => new(Nutrient.Ca, LabelBasis.CalciumInCaO),
        "MG" => new(Nutrient.Mg, 1),
        "MGO" => new(Nutrient.Mg, LabelBasis.MagnesiumInMgO),
        "S" => new(Nutrient.S, 1),
        "SO3" => new(Nutrient.S, LabelBasis.SulfurInSO3),
        "FE" => new(Nutrient.Fe, 1),
        "MN" => new(Nutrient.Mn, 1),
        "ZN" => new(Nutrient.Zn, 1),
        "CU" => new(Nutrient.Cu, 1),
        "B" => new(Nutrient.B, 1),
        "MO" => new(Nutrient.Mo, 1),
        "CL" => new(Nutrient.Cl, 1),
        "NA" => new(Nutrient.Na, 1),
        _ => null,
    };
}
