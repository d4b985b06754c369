using Ashery.RootZone;

namespace Ashery.Planning.Fit;

/// <summary>What a garden does not tell and the model needs. Every figure here is a choice of this project and is listed with each plan.</summary>
public sealed record PotAssumptions
{
    /// <summary>Plain water is given when this share of the available water is left.</summary>
    public double WaterAt { get; init; } = 0.6;

    /// <summary>Share of the water given that runs out below: the 10 to 20 % nurseries aim at.</summary>
    public double LeachingFraction { get; init; } = 0.15;

    /// <summary>Where the pots stand; in the open unless told.</summary>
    public Exposure Exposure { get; init; } = Exposure.Open;

    /// <summary>Flowering, 0 none to 1 full: a mean over the growing season.</summary>
    public double FlowerLoad { get; init; } = 0.5;

    /// <summary>Salts left in a medium that is not fresh, mS/cm of pore water.</summary>
    public double OldStrength { get; init; } = 0.3;

    /// <summary>Days after repotting for which a medium still has its starter charge.</summary>
    public int FreshDays { get; init; } = 60;

    /// <summary>Days after which the lime of the mix has dissolved.</summary>
    public int LimeDays { get; init; } = 365;
}
