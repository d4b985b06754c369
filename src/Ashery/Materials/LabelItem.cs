using Ashery.Nutrients;

namespace Ashery.Materials;

/// <summary>A line a label may carry. Oxide and element of the same nutrient are two items: which one the bag prints is for the grower to say.</summary>
public enum LabelItem
{
    N,
    AmmoniumN,
    NitrateN,
    UreaN,
    OrganicN,
    SlowN,
    P2O5,
    P,
    K2O,
    K,
    CaO,
    Ca,
    MgO,
    Mg,
    SO3,
    S,
    Fe,
    Mn,
    Zn,
    Cu,
    B,
    Mo,
    Cl,
    Na2O,
    Na,
}

/// <summary>What is known of a label line: its words, its nutrient and its basis.</summary>
public static class LabelItems
{
    // Sodium oxide and the other four oxides: mass of element in a mass of oxide.
    private const double SodiumInNa2O = 2 * 22.99 / ((2 * 22.99) + 15.999);

    /// <summary>The item by any of the words labels use; null when it is none.</summary>
    public static LabelItem? Find(string word) => word.Trim().ToLowerInvariant().Replace("₂", "2").Replace("₃", "3").Replace("₅", "5") switch
    {
        "n" or "total n" or "total nitrogen" or "nitrogen" => LabelItem.N,
        "nh4-n" or "n-nh4" or "ammonium" or "ammonium-n" or "ammonium n" or "ammoniacal" or "ammoniacal n" => LabelItem.AmmoniumN,
        "no3-n" or "n-no3" or "nitrate" or "nitrate-n" or "nitrate n" or "nitric n" => LabelItem.NitrateN,
        "urea" or "urea-n" or "urea n" or "ureic n" or "amide-n" => LabelItem.UreaN,
        "organic" or "organic-n" or "organic n" => LabelItem.OrganicN,
        "slow" or "slow-n" or "slow n" or "win" or "water insoluble n" => LabelItem.SlowN,
        "p2o5" or "phosphate" => LabelItem.P2O5,
        "p" or "phosphorus" => LabelItem.P,
        "k2o" or "potash" => LabelItem.K2O,
        "k" or "potassium" => LabelItem.K,
        "cao" => LabelItem.CaO,
        "ca" or "calcium" => LabelItem.Ca,
        "mgo" => LabelItem.MgO,
        "mg" or "magnesium" => LabelItem.Mg,
        "so3" => LabelItem.SO3,
        "s" or "sulfur" or "sulphur" => LabelItem.S,
        "fe" or "iron" => LabelItem.Fe,
        "mn" or "manganese" => LabelItem.Mn,
        "zn" or "zinc" => LabelItem.Zn,
        "cu" or "copper" => LabelItem.Cu,
        "b" or "boron" => LabelItem.B,
        "mo" or "molybdenum" => LabelItem.Mo,
        "cl" or "chloride" or "chlorine" => LabelItem.Cl,
        "na2o" => LabelItem.Na2O,
        "na" or "sodium" => LabelItem.Na,
        _ => null,
    };

    /// <summary>As a label prints it.</summary>
    public static string Symbol(LabelItem item) => item switch
    {
        LabelItem.AmmoniumN => "NH4-N",
        LabelItem.NitrateN => "NO3-N",
        LabelItem.UreaN => "urea-N",
        LabelItem.OrganicN => "organic-N",
        LabelItem.SlowN => "slow-N",
        _ => item.ToString(),
    };

    /// <summary>The nutrient it is a figure of.</summary>
    public static Nutrient NutrientOf(LabelItem item) => item switch
    {
        LabelItem.N or LabelItem.AmmoniumN or LabelItem.NitrateN or LabelItem.UreaN or LabelItem.OrganicN or LabelItem.SlowN => Nutrient.N,
        LabelItem.P2O5 or LabelItem.P => Nutrient.P,
        LabelItem.K2O or LabelItem.K => Nutrient.K,
        LabelItem.CaO or LabelItem.Ca => Nutrient.Ca,
        LabelItem.MgO or LabelItem.Mg => Nutrient.Mg,
        LabelItem.SO3 or LabelItem.S => Nutrient.S,
        LabelItem.Fe => Nutrient.Fe,
        LabelItem.Mn => Nutrient.Mn,
        LabelItem.Zn => Nutrient.Zn,
        LabelItem.Cu => Nutrient.Cu,
        LabelItem.B => Nutrient.B,
        LabelItem.Mo => Nutrient.Mo,
        LabelItem.Cl => Nutrient.Cl,
        _ => Nutrient.Na,
    };

    /// <summary>Factor from the printed figure to the label basis Ashery keeps (N, P2O5, K2O, all others as the element).</summary>
    public static double ToLabelBasis(LabelItem item) => item switch
    {
        LabelItem.P => 1 / LabelBasis.PhosphorusInP2O5,
        LabelItem.K => 1 / LabelBasis.PotassiumInK2O,
        LabelItem.CaO => LabelBasis.CalciumInCaO,
        LabelItem.MgO => LabelBasis.MagnesiumInMgO,
        LabelItem.SO3 => LabelBasis.SulfurInSO3,
        LabelItem.Na2O => SodiumInNa2O,
        _ => 1,
    };

    /// <summary>The same nutrient on the other basis, for those that labels print both ways.</summary>
    public static LabelItem? Twin(LabelItem item) => item switch
    {
        LabelItem.P2O5 => LabelItem.P,
        LabelItem.P => LabelItem.P2O5,
        LabelItem.K2O => LabelItem.K,
        LabelItem.K => LabelItem.K2O,
        LabelItem.CaO => LabelItem.Ca,
        LabelItem.Ca => LabelItem.CaO,
        LabelItem.MgO => LabelItem.Mg,
        LabelItem.Mg => LabelItem.MgO,
        LabelItem.SO3 => LabelItem.S,
        LabelItem.S => LabelItem.SO3,
        LabelItem.Na2O => LabelItem.Na,
        LabelItem.Na => LabelItem.Na2O,
        _ => null,
    };

    /// <summary>True for a form of nitrogen, which is part of the total.</summary>
    public static bool IsNitrogenForm(LabelItem item) => item is >= LabelItem.AmmoniumN and <= LabelItem.SlowN;

    /// <summary>True for the elements that plants need in traces.</summary>
    public static bool IsTrace(LabelItem item) => item is >= LabelItem.Fe and <= LabelItem.Mo;
}
