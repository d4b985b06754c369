using Ashery.Nutrients;
using Ashery.Quantities;
using Ashery.Sources;

namespace Ashery.Materials;

/// <summary>A material of the catalogue, or a grower's own bag made from one by its label.</summary>
public sealed record Material
{
    /// <summary>Lower-case words joined by hyphens, as on the command line.</summary>
    public required string Id { get; init; }

    /// <summary>The name a grower says.</summary>
    public required string Name { get; init; }

    public IReadOnlyList<string> OtherNames { get; init; } = [];

    public required MaterialKind Kind { get; init; }

    public bool IsLiquid { get; init; }

    /// <summary>Formula of the pure substance, where it is one.</summary>
    public string? Formula { get; init; }

    /// <summary>g/mol of the pure substance.</summary>
    public double? MolarMass { get; init; }

    /// <summary>What the label guarantees (typical product), label basis.</summary>
    public required LabelAnalysis Label { get; init; }

    /// <summary>Lowest, typical and highest analysis on the market, label basis; only where the spread is known.</summary>
    public IReadOnlyDictionary<Nutrient, Spread> LabelSpread { get; init; } = NutrientSpreads.None;

    /// <summary>What the pure substance holds, label basis: no honest label says more.</summary>
    public LabelAnalysis? Pure { get; init; }

    /// <summary>False for rocks, double salts and solutions, which may honestly hold more of an element than the ideal formula.</summary>
    public bool PureIsLimit { get; init; } = true;

    /// <summary>Chemical Abstracts registry number of the pure substance (from memory).</summary>
    public string? Cas { get; init; }

    /// <summary>Id of the purer grade of the same salt: a label typed above the trade grade means that one.</summary>
    public string? TechnicalGrade { get; init; }

    public NitrogenForms Nitrogen { get; init; }

    /// <summary>Loose poured bulk density of a solid (g/mL).</summary>
    public Spread? BulkDensity { get; init; }

    /// <summary>Density of a liquid at 20 °C (g/mL).</summary>
    public double? LiquidDensity { get; init; }

    /// <summary>Salt index by weight, sodium nitrate = 100 (Rader, White and Whittaker 1943).</summary>
    public Figure? SaltIndex { get; init; }

    /// <summary>kg CaCO3 that neutralise what 1 kg makes; positive acidifies.</summary>
    public Figure? LimeEquivalent { get; init; }

    /// <summary>Relative humidity (percent, 30 °C) above which it takes up water.</summary>
    public Figure? CriticalRelativeHumidity { get; init; }

    /// <summary>g of product as sold per 1000 g water by °C, ascending; empty where unknown or not soluble.</summary>
    public IReadOnlyList<SolubilityPoint> Solubility { get; init; } = [];

    /// <summary>Osmoles set free by one kg of product in dilute solution; null where it does not simply dissolve.</summary>
    public double? OsmolesPerKg { get; init; }

    public double? CarbonToNitrogen { get; init; }

    /// <summary>Mass fraction of water as sold, for moist composts and the like.</summary>
    public double Moisture { get; init; }

    public IReadOnlySet<Hazard> Hazards { get; init; } = HazardSet.None;

    /// <summary>The hazards in the reference's own sentences.</summary>
    public IReadOnlyList<string> HazardWords { get; init; } = [];

    /// <summary>Group of the dry compatibility chart.</summary>
    public required string CompatibilityGroup { get; init; }

    /// <summary>What it sends into solution, for the ion rules: <c>calcium</c>, <c>sulfate</c>, <c>phosphate</c>, <c>ammonium</c> and so on.</summary>
    public IReadOnlySet<string> Ions { get; init; } = new HashSet<string>();

    /// <summary>Dissolves clear at feed strength, so that it may go into a can.</summary>
    public bool Dissolves { get; init; }

    public IReadOnlyList<string> Notes { get; init; } = [];

    public IReadOnlyList<string> Regulations { get; init; } = [];

    /// <summary>Where the analysis comes from.</summary>
    public string SourceId { get; init; } = "recall";

    public Provenance Provenance { get; init; }

    public bool IsOrganic => Kind is MaterialKind.OrganicMeal or MaterialKind.BulkyOrganic;
}

/// <summary>g of product per 1000 g water at a temperature.</summary>
public readonly record struct SolubilityPoint(double Celsius, double GramsPerKgWater);

public enum MaterialKind
{
    Straight,
    SlowRelease,
    CalciumMagnesium,
    Liming,
    TraceElement,
    Acid,
    OrganicMeal,
    BulkyOrganic,
    Filler,
}

/// <summary>What can hurt, as a key; the words are in <c>Cautions</c>.</summary>
public enum Hazard
{
    Oxidiser,
    ExplosivePrecursor,
    StrongAcid,
    Caustic,
    AmmoniaWithAlkali,
    EyeDamage,
    Dust,
    ToxicMeal,
    AnimalByProduct,
    OrganicFuel,
    ReproductiveToxicity,
    HarmfulIfSwallowed,
    AquaticToxicity,
    Deliquescent,
    LeafBurn,
    NarrowMargin,
    Flammable,
    HeatWhenWetted,
    SkinIrritant,
    HeavyMetals,
}
