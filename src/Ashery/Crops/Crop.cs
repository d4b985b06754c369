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

    /// <summary>Where <see cref="BaseCelsius"/> and <see cref="OptimumCelsius"/> come from.</summary>
    public FigureSource? TemperatureSource { get; init; }

    public PhosphorusSensitivity Phosphorus { get; init; }

    /// <summary>Where <see cref="Phosphorus"/> comes from, and what too much does.</summary>
    public FigureSource? PhosphorusSource { get; init; }

    /// <summary>Wants an acid medium (iron-inefficient): lime with care.</summary>
    public bool AcidLoving { get; init; }

    /// <summary>Watch for chloride. Set only where a source says so.</summary>
    public bool ChlorideSensitive { get; init; }

    /// <summary>Where <see cref="ChlorideSensitive"/> comes from; null when it is not set.</summary>
    public FigureSource? ChlorideSource { get; init; }

    public IReadOnlyList<string> Notes { get; init; } = [];
}

/// <summary>A wanted ratio N : P2O5 : K2O.</summary>
/// <param name="N">Part of nitrogen.</param>
/// <param name="P2O5">Part of phosphorus, label basis.</param>
/// <param name="K2O">Part of potassium, label basis.</param>
/// <param name="AsPrinted">The words of the source, where it prints a span or several ratios.</param>
/// <param name="SourceId">Key of a <see cref="Source"/>.</param>
/// <param name="Provenance">How it came into the data.</param>
/// <param name="Note">Why this one of the printed ratios is shipped.</param>
public sealed record CropRatio(double N, double P2O5, double K2O, string AsPrinted, string SourceId, Provenance Provenance, string? Note = null);

/// <summary>Low and high of a published range.</summary>
public sealed record SourcedRange(double Low, double High, string SourceId, Provenance Provenance, string? Note = null);

/// <summary>Where a figure or a class comes from.</summary>
public sealed record FigureSource(string SourceId, Provenance Provenance, string? Note = null);

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
