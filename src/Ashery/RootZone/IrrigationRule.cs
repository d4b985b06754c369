namespace Ashery.RootZone;

/// <summary>When water is given and how much.</summary>
public sealed record IrrigationRule
{
    public IrrigationKind Kind { get; init; } = IrrigationKind.ByWeight;

    /// <summary>By weight: water when this share of the available water is left.</summary>
    public double Trigger { get; init; } = 0.6;

    /// <summary>By day: every so many days.</summary>
    public int EveryDays { get; init; } = 1;

    /// <summary>Litres each time; null for as much as brings the pot to capacity and the leaching fraction out below.</summary>
    public double? Litres { get; init; }

    /// <summary>Share of the water given that runs out below.</summary>
    public double LeachingFraction { get; init; } = 0.15;

    /// <summary>Feed in every watering, mol/L on top of the source water.</summary>
    public State.Ions Feed { get; init; }

    public static IrrigationRule RainOnly => new() { Kind = IrrigationKind.None };

    public static IrrigationRule ByWeight(double trigger = 0.6, double leachingFraction = 0.15) => new() { Trigger = trigger, LeachingFraction = leachingFraction };

    public static IrrigationRule ByDay(int everyDays, double? litres = null, double leachingFraction = 0.15) =>
        new() { Kind = IrrigationKind.ByDay, EveryDays = everyDays, Litres = litres, LeachingFraction = leachingFraction };

    /// <summary>Every day to capacity, with this share running out below.</summary>
    public static IrrigationRule ByLeaching(double leachingFraction) => ByDay(1, null, leachingFraction);
}

public enum IrrigationKind
{
    None,
    ByWeight,
    ByDay,
}
