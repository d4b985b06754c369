namespace Ashery.Blending;

/// <summary>The blends found, best first, and whether that is proved.</summary>
/// <param name="Blends">Ordered by error, cost a kg of nutrient, number of columns, names.</param>
/// <param name="Proved">True when no other blend can come before the last one shown.</param>
/// <param name="Certificate">Dual vector that anyone can check for the best blend; null when there is none.</param>
public sealed record BlendAnswer(IReadOnlyList<Blend> Blends, bool Proved, Certificate? Certificate);

/// <summary>A blend by mass.</summary>
/// <param name="Members">Column indices, ascending.</param>
/// <param name="MassFractions">Share of the blend's mass, in the order of <paramref name="Members"/>; sums to 1.</param>
/// <param name="RatioError">Mean relative deviation of the nutrient shares from the target's.</param>
/// <param name="LargestDeviation">Largest relative deviation of a share.</param>
/// <param name="Strength">Mass fraction of the target's nutrients in the blend.</param>
/// <param name="CostPerNutrient">Price a kg of the target's nutrients; null when a price is unknown.</param>
public sealed record Blend(
    IReadOnlyList<int> Members,
    IReadOnlyList<double> MassFractions,
    double RatioError,
    double LargestDeviation,
    double Strength,
    double? CostPerNutrient);

/// <summary>
/// A dual solution that bounds the error from below for every blend of the columns: checkable in decimal arithmetic.
/// </summary>
/// <param name="NutrientDuals">Multiplier of each nutrient's deviation.</param>
/// <param name="ShareDual">Multiplier of the row that shares sum to one; equals the bound.</param>
/// <param name="RowDuals">Multipliers of the linear rows, none negative.</param>
public sealed record Certificate(IReadOnlyList<double> NutrientDuals, double ShareDual, IReadOnlyList<double> RowDuals);
