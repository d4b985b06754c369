using Ashery.Nutrients;
using Ashery.Sources;

namespace Ashery.Materials;

/// <summary>The words of the data files. A switch and not Enum.Parse: it is quicker at start-up and names what it does not know.</summary>
internal static class MaterialWords
{
    public static MaterialKind Kind(string word) => word switch
    {
        "straight" => MaterialKind.Straight,
        "slowRelease" => MaterialKind.SlowRelease,
        "calciumMagnesium" => MaterialKind.CalciumMagnesium,
        "liming" => MaterialKind.Liming,
        "traceElement" => MaterialKind.TraceElement,
        "acid" => MaterialKind.Acid,
        "organicMeal" => MaterialKind.OrganicMeal,
        "bulkyOrganic" => MaterialKind.BulkyOrganic,
        "filler" => MaterialKind.Filler,
        _ => throw Unknown(word),
    };

    public static Provenance Provenance(string word) => word switch
    {
        "seen" => Sources.Provenance.Seen,
        "computed" => Sources.Provenance.Computed,
        "commonPractice" => Sources.Provenance.CommonPractice,
        "fromMemory" => Sources.Provenance.FromMemory,
        _ => throw Unknown(word),
    };

    public static Nutrient Nutrient(string word) => word switch
    {
        "N" => Nutrients.Nutrient.N,
        "P2O5" => Nutrients.Nutrient.P,
        "K2O" => Nutrients.Nutrient.K,
        "Ca" => Nutrients.Nutrient.Ca,
        "Mg" => Nutrients.Nutrient.Mg,
        "S" => Nutrients.Nutrient.S,
        "Fe" => Nutrients.Nutrient.Fe,
        "Mn" => Nutrients.Nutrient.Mn,
        "Zn" => Nutrients.Nutrient.Zn,
        "Cu" => Nutrients.Nutrient.Cu,
        "B" => Nutrients.Nutrient.B,
        "Mo" => Nutrients.Nutrient.Mo,
        "Cl" => Nutrients.Nutrient.Cl,
        "Na" => Nutrients.Nutrient.Na,
        _ => throw Unknown(word),
    };

    public static Hazard Hazard(string word) => word switch
    {
        "oxidiser" => Materials.Hazard.Oxidiser,
        "explosivePrecursor" => Materials.Hazard.ExplosivePrecursor,
        "strongAcid" => Materials.Hazard.StrongAcid,
        "caustic" => Materials.Hazard.Caustic,
        "ammoniaWithAlkali" => Materials.Hazard.AmmoniaWithAlkali,
        "eyeDamage" => Materials.Hazard.EyeDamage,
        "dust" => Materials.Hazard.Dust,
        "toxicMeal" => Materials.Hazard.ToxicMeal,
        "animalByProduct" => Materials.Hazard.AnimalByProduct,
        "organicFuel" => Materials.Hazard.OrganicFuel,
        "reproductiveToxicity" => Materials.Hazard.ReproductiveToxicity,
        "harmfulIfSwallowed" => Materials.Hazard.HarmfulIfSwallowed,
        "aquaticToxicity" => Materials.Hazard.AquaticToxicity,
        "deliquescent" => Materials.Hazard.Deliquescent,
        "leafBurn" => Materials.Hazard.LeafBurn,
        "narrowMargin" => Materials.Hazard.NarrowMargin,
        "flammable" => Materials.Hazard.Flammable,
        "heatWhenWetted" => Materials.Hazard.HeatWhenWetted,
        "skinIrritant" => Materials.Hazard.SkinIrritant,
        "heavyMetals" => Materials.Hazard.HeavyMetals,
        _ => throw Unknown(word),
    };

    private static InvalidOperationException Unknown(string word) => new($"The data files use a word the library does not know: {word}.");
}
