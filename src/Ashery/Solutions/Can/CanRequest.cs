using Ashery.Solutions.Waters;

namespace Ashery.Solutions.Can;

/// <summary>What goes into the can.</summary>
public sealed record CanRequest
{
    /// <summary>The water, pure unless said; its own temperature and air do not count.</summary>
    public SolutionInput Water { get; init; } = SolutionInput.Pure();

    /// <summary>What the grower calls the water.</summary>
    public string WaterName { get; init; } = "pure water";

    /// <summary>Each material once.</summary>
    public required IReadOnlyList<CanAddition> Additions { get; init; }

    /// <summary>0 to 40 °C.</summary>
    public double Celsius { get; init; } = 20;

    /// <summary>Closed: nothing leaves. Open: in balance with the carbon dioxide of the air, as after a day of standing.</summary>
    public Air Air { get; init; } = Air.Closed;

    /// <summary>A request in a source water.</summary>
    public static CanRequest In(SourceWater water, IReadOnlyList<CanAddition> additions, double celsius = 20, Air air = Air.Closed) =>
        new() { Water = water.ToInput(celsius), WaterName = water.Name, Additions = additions, Celsius = celsius, Air = air };
}

/// <summary>One material in the can.</summary>
/// <param name="Material">What it gives.</param>
/// <param name="Grams">g per kg of added water.</param>
public sealed record CanAddition(MaterialInWater Material, double Grams);
