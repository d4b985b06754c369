namespace Ashery.Solutions.Acids;

/// <summary>What the acid is to do.</summary>
/// <param name="Water">The water as it comes from the tap, closed.</param>
/// <param name="Bottle">The acid.</param>
/// <param name="Target">Where the water is to come to.</param>
public sealed record AcidRequest(SolutionInput Water, AcidBottle Bottle, AcidTarget Target)
{
    /// <summary>When the pH is meant: at once, or after the water stood in the air.</summary>
    public Air At { get; init; } = Air.Closed;

    /// <summary>L of water in the can or barrel.</summary>
    public double Litres { get; init; } = 10;

    /// <summary>Parts of water to one part of stock for an injector; null without one.</summary>
    public double? InjectorRatio { get; init; }
}

/// <summary>A pH, or an alkalinity in mg/L as CaCO3.</summary>
/// <param name="PH">pH, or null.</param>
/// <param name="Alkalinity">mg/L as CaCO3, or null.</param>
public sealed record AcidTarget(double? PH, double? Alkalinity)
{
    public static AcidTarget ToPh(double pH) => new(pH, null);

    public static AcidTarget ToAlkalinity(double milligrams) => new(null, milligrams);
}
