namespace Ashery.RootZone;

/// <summary>One pot, what is done with it and what it stands in: everything a run needs but the weather.</summary>
public sealed record PotScenario
{
    public required string Name { get; init; }

    public required PotShape Shape { get; init; }

    public required Medium Medium { get; init; }

    public required PlantSpec Plant { get; init; }

    public IrrigationRule Irrigation { get; init; } = new();

    public Exposure Exposure { get; init; } = Exposure.Open;

    public WaterSupply Water { get; init; } = WaterSupply.Pure;

    /// <summary>What falls from the sky.</summary>
    public WaterSupply Rain { get; init; } = WaterSupply.Rain;

    public StartState Start { get; init; } = new();

    /// <summary>In any order; days outside the weather are left out and said so.</summary>
    public IReadOnlyList<PotEvent> Events { get; init; } = [];

    /// <summary>Steps of the calculation a day; 1 is what figures in the documentation are for.</summary>
    public int StepsPerDay { get; init; } = 1;
}
