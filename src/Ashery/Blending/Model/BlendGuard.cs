namespace Ashery.Blending.Model;

/// <summary>
/// What a caller must have seen to before searching. A grower's mistakes are caught where the wish is read; what is
/// left here is a fault of the program, so it throws.
/// </summary>
internal static class BlendGuard
{
    /// <summary>Far above any mass fraction, price or limit, far below where sums overflow.</summary>
    private const double Largest = 1e12;

    public static void Check(BlendRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        var nutrients = request.Target.Count;
        Require(nutrients > 0, "The target names no nutrient.");
        for (var j = 0; j < nutrients; j++)
        {
            Require(request.Target[j] > 0 && double.IsFinite(request.Target[j]), "Every share of the target must be a positive number.");
        }

        Require(request.AtMost >= 1 && request.Best >= 1, "AtMost and Best must be at least one.");
        foreach (var column in request.Columns)
        {
            Check(column, nutrients);
        }

        foreach (var row in request.Rows)
        {
            Check(row, request.Columns.Count);
        }

        for (var p = 0; p < request.ForbiddenPairs.Count; p++)
        {
            var pair = request.ForbiddenPairs[p];
            Require(
                InRange(pair.A, request) && InRange(pair.B, request) && pair.A != pair.B, "A forbidden pair names a column that is not there.");
        }
    }

    /// <summary>The target's shares, summing to one.</summary>
    public static double[] Normalised(IReadOnlyList<double> target)
    {
        // Dividing by the largest first keeps a huge or tiny scale from overflowing the sum.
        double largest = 0;
        for (var j = 0; j < target.Count; j++)
        {
            largest = Math.Max(largest, target[j]);
        }

        var shares = new double[target.Count];
        double sum = 0;
        for (var j = 0; j < shares.Length; j++)
        {
            shares[j] = target[j] / largest;
            sum += shares[j];
        }

        for (var j = 0; j < shares.Length; j++)
        {
            shares[j] /= sum;
        }

        return shares;
    }

    private static void Check(Column column, int nutrients)
    {
        Require(column.Content.Count == nutrients, "A column has not one content for each nutrient: ", column.Name);
        foreach (var content in Numbers.Span(column.Content))
        {
            Require(content is >= 0 and <= Largest, "A column has a content that is no amount: ", column.Name);
        }

        Require(column.Price is null or (>= 0 and <= Largest), "A column has a price that is no amount: ", column.Name);
    }

    private static void Check(LinearRow row, int columns)
    {
        Require(row.Coefficients.Count == columns, "A row has not one coefficient for each column: ", row.Name);
        foreach (var coefficient in Numbers.Span(row.Coefficients))
        {
            Require(Math.Abs(coefficient) <= Largest, "A row has a coefficient that is no number: ", row.Name);
        }
    }

    private static bool InRange(int i, BlendRequest request) => i >= 0 && i < request.Columns.Count;

    private static void Require(bool holds, string message, string name = "")
    {
        if (!holds)
        {
            throw new ArgumentException(message + name);
        }
    }
}
