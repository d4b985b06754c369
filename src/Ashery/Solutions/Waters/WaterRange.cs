namespace Ashery.Solutions.Waters;

/// <summary>A figure and how far it may lie from it.</summary>
/// <param name="Typical">Taken.</param>
/// <param name="Low">Low end.</param>
/// <param name="High">High end.</param>
public readonly record struct WaterRange(double Typical, double Low, double High)
{
    /// <summary>True when nothing that was estimated moves the figure.</summary>
    public bool IsCertain => Low == High;
}
