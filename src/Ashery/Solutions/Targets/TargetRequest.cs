using Ashery.Solutions.Can;

namespace Ashery.Solutions.Targets;

/// <summary>A target, the water, and what may go into it.</summary>
public sealed record TargetRequest
{
    public required SolutionTarget Target { get; init; }

    /// <summary>The water; its own temperature and air do not count.</summary>
    public SolutionInput Water { get; init; } = SolutionInput.Pure();

    /// <summary>What the grower calls the water.</summary>
    public string WaterName { get; init; } = "pure";

    /// <summary>Each material once.</summary>
    public required IReadOnlyList<TargetOffer> Offers { get; init; }

    /// <summary>What brings the pH; needed where one is wanted.</summary>
    public PhAgent? Agent { get; init; }

    /// <summary>Most materials, the agent for the pH not counted.</summary>
    public int AtMost { get; init; } = 6;

    /// <summary>How many recipes, best first.</summary>
    public int Best { get; init; } = 3;

    /// <summary>Everything is to stand together in one stock: pairs that come out of a concentrate are kept apart. Else only what is dangerous together.</summary>
    public bool OneStock { get; init; }

    public double Celsius { get; init; } = 20;

    public Air Air { get; init; } = Air.Closed;

    /// <summary>L to be made.</summary>
    public double Litres { get; init; } = 10;

    /// <summary>g of one step of the scale, for what is weighed into the litres made; null for any amount.</summary>
    public double? StepGrams { get; init; }
}

/// <summary>One material within reach.</summary>
/// <param name="Material">What a gram gives.</param>
/// <param name="PricePerKg">Null when unknown.</param>
/// <param name="StockGrams">g there are; null for as much as wanted.</param>
/// <param name="MostGramsPerLitre">Most of it in a litre; null for no limit.</param>
public sealed record TargetOffer(MaterialInWater Material, double? PricePerKg = null, double? StockGrams = null, double? MostGramsPerLitre = null);
