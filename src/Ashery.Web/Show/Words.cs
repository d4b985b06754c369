using Ashery.Cards.Pictures;
using Ashery.Climate;
using Ashery.Compatibility;
using Ashery.Crops;
using Ashery.Feeds;
using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Pots;
using Ashery.Sources;

namespace Ashery.Web.Show;

/// <summary>What the trade calls the kinds of things.</summary>
public static class Words
{
    public static string Of(MediumKind medium) => medium switch
    {
        MediumKind.PeatMix => "Peat mix",
        MediumKind.BarkMix => "Bark mix",
        MediumKind.CoirMix => "Coir mix",
        MediumKind.LoamMix => "Loam mix (with soil)",
        MediumKind.Mineral => "Mineral (grit, pumice, clay)",
        _ => medium.ToString(),
    };

    public static string Of(PlantStage stage) => stage switch
    {
        PlantStage.Seedling => "Seedling",
        PlantStage.Liner => "Liner (rooted cutting)",
        PlantStage.Young => "Young",
        PlantStage.Mature => "Mature",
        PlantStage.RootBound => "Root-bound",
        PlantStage.Dormant => "Dormant",
        _ => stage.ToString(),
    };

    public static string Of(SeasonKind season) => season switch
    {
        SeasonKind.Growing => "Growing",
        SeasonKind.Hot => "Hot",
        SeasonKind.Rainy => "Rainy",
        SeasonKind.Resting => "Resting",
        _ => season.ToString(),
    };

    public static string Of(FeedKind kind) => FeedMarks.Name(kind);

    public static string Of(MaterialKind kind) => kind switch
    {
        MaterialKind.Straight => "Straight fertiliser",
        MaterialKind.SlowRelease => "Slow release",
        MaterialKind.CalciumMagnesium => "Calcium and magnesium",
        MaterialKind.Liming => "Liming material",
        MaterialKind.TraceElement => "Trace element",
        MaterialKind.Acid => "Acid",
        MaterialKind.OrganicMeal => "Organic meal",
        MaterialKind.BulkyOrganic => "Bulky organic",
        MaterialKind.Filler => "Filler",
        _ => kind.ToString(),
    };

    public static string Of(FeederClass feeder) => feeder switch
    {
        FeederClass.Light => "Light feeder",
        FeederClass.Medium => "Medium feeder",
        FeederClass.Heavy => "Heavy feeder",
        _ => feeder.ToString(),
    };

    public static string Of(Verdict verdict) => verdict switch
    {
        Verdict.Fine => "Fine",
        Verdict.Limited => "Limited",
        Verdict.Stop => "Stop",
        Verdict.Unknown => "Not known",
        _ => verdict.ToString(),
    };

    public static string Of(StorageClass storage) => storage switch
    {
        StorageClass.KeepsDry => "Keeps in a closed bag",
        StorageClass.Airtight => "Keeps only airtight",
        StorageClass.OnTheDay => "Mix on the day",
        StorageClass.Never => "Never mix",
        StorageClass.Unknown => "Keeping: not known",
        _ => storage.ToString(),
    };

    public static string Of(Provenance provenance) => provenance switch
    {
        Provenance.FromMemory => "from memory",
        Provenance.CommonPractice => "common practice",
        Provenance.Computed => "computed",
        Provenance.Seen => "seen in the source",
        _ => provenance.ToString(),
    };

    public static string Of(DoseMethod method) => method switch
    {
        DoseMethod.TopDress => "Spread dry",
        DoseMethod.Can => "By the can",
        DoseMethod.Spray => "From the sprayer",
        _ => method.ToString(),
    };

    /// <summary>The nutrient as a label prints it, with figures set low.</summary>
    public static string Of(Nutrient nutrient) => nutrient switch
    {
        Nutrient.P => "P₂O₅",
        Nutrient.K => "K₂O",
        _ => nutrient.ToString(),
    };

    /// <summary>The nutrient in full.</summary>
    public static string Full(Nutrient nutrient) => nutrient switch
    {
        Nutrient.N => "Nitrogen",
        Nutrient.P => "Phosphate",
        Nutrient.K => "Potash",
        Nutrient.Ca => "Calcium",
        Nutrient.Mg => "Magnesium",
        Nutrient.S => "Sulfur",
        Nutrient.Fe => "Iron",
        Nutrient.Mn => "Manganese",
        Nutrient.Zn => "Zinc",
        Nutrient.Cu => "Copper",
        Nutrient.B => "Boron",
        Nutrient.Mo => "Molybdenum",
        Nutrient.Cl => "Chloride",
        Nutrient.Na => "Sodium",
        _ => nutrient.ToString(),
    };

    public static IEnumerable<(string Value, string Text)> Choices<TEnum>(Func<TEnum, string> name)
        where TEnum : struct, Enum => Enum.GetValues<TEnum>().Select(v => (v.ToString(), name(v)));
}
