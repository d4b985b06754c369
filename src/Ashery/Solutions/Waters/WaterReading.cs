namespace Ashery.Solutions.Waters;

/// <summary>What a report comes to.</summary>
public sealed record WaterReading
{
    public required WaterReport Report { get; init; }

    /// <summary>The water, neutral and complete, to dissolve things in.</summary>
    public required SourceWater Water { get; init; }

    /// <summary>At its pH, 25 °C, closed.</summary>
    public required Solution Solution { get; init; }
}
