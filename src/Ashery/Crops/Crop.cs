using Ashery.Sources;

namespace Ashery.Crops;

/// <summary>What a plant needs and bears, from published figures; null where nothing published is known.</summary>
public sealed record Crop
{
    public required string Id { get; init; }

    public required string Name { get; init; }

    public string? Latin { get; init; }

    public required FeederClass Feeder { get; init; }

    /// <summary>Wanted N : P2O5 : K2O (label basis), and where it comes from.</summary>
    public required CropRatio Ratio { get; init; }

    /// <summary>mg N per litre of constant liquid feed, low and high.</summary>
    public SourcedRange? LiquidNitrogen { get; init; }

    /// <summary>g N per litre of medium a season, low and high, as top-dressed feed.</summary>
    public SourcedRange? SeasonNitrogen { get; init; }

    public SourcedRange? MediumPh { get; init; }

    /// <summary>Electrical conductivity of the saturated medium extract, mS/cm.</summary>
    public SourcedRange? SaturatedExtractEc { get; init; }

    /// <summary>°C below which growth, and so feeding, stops.</summary>
    public double? BaseCelsius { get; init; }

    public (double Low, double High)? OptimumCelsius { get; init; }

    public PhosphorusSensitivity Phosphorus { get; init; }

    /// <summary>Wants an acid medium (iron-inefficient): lime with care.</summary>
    public bool AcidLoving { get; init; }

    /// <summary>Watch for chloride.</summary>
    public bool ChlorideSensitive { get; init; }

    public IReadOnlyList<string> Notes { get; init; } = [];
}

/// <summary>A wanted ratio N : P2O5 : K2O.</summary>
public sealed record CropRatio(double N, double P2O5, double K2O, string AsPrinted, string SourceId, Provenance Provenance, string? Note = null);

/// <summary>Low and high of a published range.</summary>
public sealed record SourcedRange(double Low, double High, string SourceId, Provenance Provenance, string? Note = null);

public enum FeederClass
{
    Light,
    Medium,
    Heavy,
}

public enum PhosphorusSensitivity
{
    Low,
    Moderate,
    High,
}
