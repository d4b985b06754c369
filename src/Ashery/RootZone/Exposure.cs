namespace Ashery.RootZone;

/// <summary>How much of the weather of the open reaches a pot.</summary>
/// <param name="RainKeptOff">Share of the rain that a roof keeps off, 0 to 1.</param>
/// <param name="Shade">Share of the sun taken away, 0 to 1.</param>
/// <param name="Warming">Multiplies how much the sun warms the root zone: 0 a pot in a pot or shaded wall, 1 usual, 2 black in full sun.</param>
/// <param name="Drying">Multiplies reference evapotranspiration for wind and hot walls: 1 as over grass.</param>
public sealed record Exposure(double RainKeptOff = 0, double Shade = 0, double Warming = 1, double Drying = 1)
{
    public static Exposure Open { get; } = new();

    public static Exposure UnderRoof { get; } = new(RainKeptOff: 1, Shade: 0.3);
}
