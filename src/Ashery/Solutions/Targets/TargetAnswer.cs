using Ashery.Problems;
using Ashery.Solutions.Can;

namespace Ashery.Solutions.Targets;

/// <summary>Recipes for a target, best first, and what stands in the way.</summary>
public sealed record TargetAnswer
{
    public required TargetRequest Request { get; init; }

    /// <summary>Best first; where no amounts keep the limits, the nearest without them.</summary>
    public required IReadOnlyList<TargetRecipe> Recipes { get; init; }

    /// <summary>
    /// True when no other materials and amounts come nearer to the wished amounts than the first recipe, beside the water and what its pH takes, at its strength. EC and
    /// pH are met by iteration and checked by the full solution; they are no part of what is proved.
    /// </summary>
    public required bool Proved { get; init; }

    /// <summary>Error below which no amounts of these materials can come, however many are taken; null without a certificate.</summary>
    public double? Bound { get; init; }

    /// <summary>What the water alone holds too much of.</summary>
    public required IReadOnlyList<WaterExcess> WaterExceeds { get; init; }

    /// <summary>Set when the target is missed by more than a tenth somewhere, or a limit, the EC or the pH cannot be had.</summary>
    public Problem? OutOfReach { get; init; }

    /// <summary>Warnings and notes.</summary>
    public required IReadOnlyList<Problem> Problems { get; init; }

    /// <summary>What was assumed, in a grower's words.</summary>
    public required IReadOnlyList<string> Assumed { get; init; }
}

/// <summary>The water alone passes what is wanted.</summary>
/// <param name="Item">Of what.</param>
/// <param name="Water">mg/L the water holds.</param>
/// <param name="Most">mg/L wanted, or allowed.</param>
public sealed record WaterExcess(TargetItem Item, double Water, double Most)
{
    /// <summary>Part of the water to be replaced by rain or demineralised water.</summary>
    public double Replace => 1 - (Most / Water);
}

/// <summary>One recipe with what it becomes.</summary>
public sealed record TargetRecipe
{
    /// <summary>Materials, most first; the agent for the pH last.</summary>
    public required IReadOnlyList<TargetPart> Parts { get; init; }

    /// <summary>Every nutrient there is or was wished, in the order of <see cref="TargetItem.All"/>.</summary>
    public required IReadOnlyList<TargetRow> Rows { get; init; }

    /// <summary>Mean relative deviation of the wished amounts.</summary>
    public required double Error { get; init; }

    public required double LargestDeviation { get; init; }

    /// <summary>What the wished amounts were multiplied by to have the EC; 1 without one.</summary>
    public required double Strength { get; init; }

    /// <summary>The solution with everything in it.</summary>
    public required CanState State { get; init; }

    /// <summary>All about its can; worked out when first asked for, since only one of several recipes is made.</summary>
    public CanReport Can => Made.Value;

    public double Ec25 => State.Ec25;

    public double PH => State.PH;

    /// <summary>False when the EC or pH wished was not met within 0.01 mS/cm and 0.01.</summary>
    public required bool Tuned { get; init; }

    /// <summary>Keys of the cautions that go with it, those of the acid among them.</summary>
    public IReadOnlyList<string> CautionIds => [.. Can.CautionIds.Union(AcidCautions, StringComparer.Ordinal)];

    /// <summary>Full solutions computed on the way.</summary>
    public required int Solutions { get; init; }

    /// <summary>Price of a litre; null when one is unknown. The agent is not counted.</summary>
    public double? CostPerLitre { get; init; }

    internal Lazy<CanReport> Made { get; init; } = null!;

    internal IReadOnlyList<string> AcidCautions { get; init; } = [];
}

/// <summary>One material of a recipe.</summary>
/// <param name="Material">Which.</param>
/// <param name="GramsPerLitre">g of product a litre of water.</param>
/// <param name="Grams">g for the litres asked.</param>
/// <param name="Millilitres">mL for the litres asked, of a bottle; null for what is weighed.</param>
/// <param name="IsAgent">True for what brings the pH.</param>
/// <param name="Steps">Whole steps of the scale; null in free amounts.</param>
public sealed record TargetPart(MaterialInWater Material, double GramsPerLitre, double Grams, double? Millilitres, bool IsAgent, int? Steps = null);

/// <summary>One nutrient of a recipe, mg/L.</summary>
/// <param name="Item">Which.</param>
/// <param name="Wish">What was wished of it; null when nothing was.</param>
/// <param name="Low">At least, at the recipe's strength; 0 for no limit.</param>
/// <param name="High">At most; infinite for no limit.</param>
/// <param name="Water">What the water brings.</param>
/// <param name="ByPart">What each part brings, in the order of the parts.</param>
/// <param name="Total">All together.</param>
public sealed record TargetRow(TargetItem Item, TargetWish? Wish, double Low, double High, double Water, IReadOnlyList<double> ByPart, double Total)
{
    /// <summary>How far outside, as a part of the nearer end; 0 within, negative below.</summary>
    public double Deviation => Wish is null ? 0
        : Total < Low ? (Total / Low) - 1
        : Total > High ? High > 0 ? (Total / High) - 1 : double.PositiveInfinity
        : 0;
}
