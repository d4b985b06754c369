using Ashery.Nutrients;

namespace Ashery.Recipes;

/// <summary>Limits on a blend; null means none. Fractions are 0 to 1.</summary>
public sealed record MixLimits
{
    /// <summary>Most of the nitrogen that may be urea nitrogen.</summary>
    public double? UreaShareOfNitrogen { get; init; }

    /// <summary>Most of the nitrogen that may be ammonium plus urea.</summary>
    public double? AmmoniacalShareOfNitrogen { get; init; }

    /// <summary>Most chloride, mass fraction of the blend.</summary>
    public double? Chloride { get; init; }

    /// <summary>Highest salt index by weight (sodium nitrate = 100).</summary>
    public double? SaltIndex { get; init; }

    /// <summary>Highest lime equivalent, kg CaCO3 a kg (positive acidifies).</summary>
    public double? Acidity { get; init; }

    /// <summary>Highest cost a kg of blend.</summary>
    public double? CostPerKg { get; init; }

    /// <summary>Lowest strength: N + P2O5 + K2O, mass fraction.</summary>
    public double? Strength { get; init; }

    public bool OrganicOnly { get; init; }

    /// <summary>Only materials that dissolve.</summary>
    public bool SolubleOnly { get; init; }

    /// <summary>Material ids not to use.</summary>
    public IReadOnlySet<string> Without { get; init; } = new HashSet<string>();

    /// <summary>A grower's own limits on contents.</summary>
    public IReadOnlyList<ContentLimit> Contents { get; init; } = [];

    /// <summary>A grower's own limits on single materials.</summary>
    public IReadOnlyList<MaterialLimit> Materials { get; init; } = [];

    /// <summary>Nutrients wanted in proportion to the nitrogen, for alternatives to a blend that misses one.</summary>
    public IReadOnlyList<NitrogenShareLimit> PerNitrogen { get; init; } = [];

    /// <summary>What the blend is for decides which pairs may not be together.</summary>
    public BlendUse Use { get; init; } = BlendUse.DryStored;
}

/// <summary>At least or at most so much of a nutrient (label basis, mass fraction).</summary>
public sealed record ContentLimit(Nutrient Nutrient, double? AtLeast, double? AtMost);

/// <summary>At least or at most so much of a material (mass fraction of the blend).</summary>
public sealed record MaterialLimit(string MaterialId, double? AtLeast, double? AtMost);

/// <summary>At least so many grams of a nutrient for one gram of nitrogen (label basis).</summary>
public sealed record NitrogenShareLimit(Nutrient Nutrient, double AtLeast);

/// <summary>What becomes of the blend, which decides the pairs that are stopped.</summary>
public enum BlendUse
{
    DryToday,
    DryStored,
    Dissolved,
}
