namespace Ashery.Blending;

/// <summary>Blends none of which is beaten by another in error, cost, number of columns and strength all at once.</summary>
/// <param name="Blends">Ordered by number of columns, then error, cost, names.</param>
/// <param name="Exact">True when every set of columns within the limits was looked at or ruled out.</param>
/// <param name="Left">How many more there were beyond the number asked for.</param>
public sealed record TradeAnswer(IReadOnlyList<Blend> Blends, bool Exact, int Left);

/// <summary>Whether the rows can be kept at all, and what stands in the way if not.</summary>
/// <param name="Feasible">True when a blend keeps every row, the pairs and the count limit.</param>
/// <param name="Conflict">
/// Rows of which at least one must give way: without any one of them the rest can be kept (an irreducible set). Empty when
/// feasible, or when pairs and the count limit alone are in the way.
/// </param>
public sealed record RowConflict(bool Feasible, IReadOnlyList<int> Conflict);

/// <summary>The blend that comes nearest to contents wanted at least.</summary>
/// <param name="Blend">The blend, by its own ratio error against the wanted contents.</param>
/// <param name="Contents">Its mass fraction of each nutrient.</param>
/// <param name="Shortfall">(1/d) sum of the relative shortfalls, 0 when all are reached.</param>
/// <param name="FallsShort">The nutrient with the largest relative shortfall; null when none falls short.</param>
public sealed record NearestGrade(Blend Blend, IReadOnlyList<double> Contents, double Shortfall, int? FallsShort);
