namespace Ashery.Blending;

/// <summary>
/// What a caller must have seen to before searching. A grower's mistakes are caught where the wish is read; what is
/// left here is a fault of the program, so it throws.
/// </summary>
internal static class BlendGuard
{
    public static void Check(BlendRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        var nutrients = request.Target.Count;
        Require(nutrients > 0, "The target names no nutrient.");
        Require(request.Target.All(t => double.IsFinite(t) && t > 0), "Every share of the target must be a positive number.");
        Require(request.AtMost >= 1 && request.Best >= 1, "AtMost and Best must be at least one.");
        foreach (var column in request.Columns)
        {
            Require(column.Content.Count == nutrients, $"Column {column.Name} has not one content for each nutrient.");
            Require(column.Content.All(a => double.IsFinite(a) && a >= 0), $"Column {column.Name} has a content that is no amount.");
            Require(column.Price is not { } p || (double.IsFinite(p) && p >= 0), $"Column {column.Name} has a price that is no amount.");
        }

        foreach (var row in request.Rows)
        {
            Require(row.Coefficients.Count == request.Columns.Count, $"Row {row.Name} has not one coefficient for each column.");
            Require(row.Coefficients.All(double.IsFinite), $"Row {row.Name} has a coefficient that is no number.");
        }

        Require(
            request.ForbiddenPairs.All(p => InRange(p.A, request) && InRange(p.B, request) && p.A != p.B),
            "A forbidden pair names a column that is not there.");
    }

    public static double[] Normalised(IReadOnlyList<double> target)
    {
        // Dividing by the largest first keeps a huge or tiny scale from overflowing the sum.
        var largest = target.Max();
        var shares = target.Select(t => t / largest).ToArray();
        var sum = shares.Sum();
        return Array.ConvertAll(shares, s => s / sum);
    }

    private static bool InRange(int i, BlendRequest request) => i >= 0 && i < request.Columns.Count;

    private static void Require(bool holds, string message)
    {
        if (!holds)
        {
            throw new ArgumentException(message);
        }
    }
}
