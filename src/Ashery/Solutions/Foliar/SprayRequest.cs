using Ashery.Crops;
using Ashery.Solutions.Can;

namespace Ashery.Solutions.Foliar;

/// <summary>A leaf spray to be judged.</summary>
public sealed record SprayRequest
{
    /// <summary>Materials, g a litre of water.</summary>
    public required IReadOnlyList<CanAddition> Additions { get; init; }

    public SolutionInput Water { get; init; } = SolutionInput.Pure();

    public string WaterName { get; init; } = "pure water";

    /// <summary>The plants; null judges by the general limits.</summary>
    public Crop? Crop { get; init; }

    public RuleBook Rules { get; init; } = RuleBook.Default;

    public double Celsius { get; init; } = 20;

    /// <summary>Litres of medium of one pot; null when not said.</summary>
    public double? PotLitres { get; init; }

    /// <summary>Width of one plant, cm; null when not said.</summary>
    public double? PlantWidthCm { get; init; }

    /// <summary>How many pots.</summary>
    public int Pots { get; init; } = 1;

    /// <summary>Biuret, percent of the urea, from the bag; null when the bag does not say.</summary>
    public double? BiuretPercent { get; init; }

    /// <summary>Air now, °C; null when not said.</summary>
    public double? AirCelsius { get; init; }
}
