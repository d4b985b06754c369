using Ashery.Blending.Model;
using Ashery.Blending.Trade;

namespace Ashery.Blending;

/// <summary>The best blends of given columns, proved best.</summary>
public static class BlendSearch
{
    /// <summary>
    /// The best blends: error, cost a kg of nutrient (unknown last), number of columns, names. A set of columns counts
    /// when its best amounts (error, then cost, then mass, then names) are all positive.
    /// </summary>
    public static BlendAnswer Find(BlendRequest request)
    {
        var model = new BlendModel(request);
        var (found, proved, root) = Search(model, request.Best);
        return new BlendAnswer([.. found.Select(f => f.ToBlend(model))], proved, root is null ? null : Certificates.Of(model, root));
    }

    /// <summary>The strongest blend at exactly the wanted ratio within the limits; null when no blend has that ratio.</summary>
    public static Blend? StrongestAtRatio(BlendRequest request)
    {
        var model = new BlendModel(request, BlendAim.StrongestAtRatio);
        var (found, _, _) = Search(model, 1);
        return found.Count > 0 && found[0].Error <= FoundBlend.Positive ? found[0].ToBlend(model) : null;
    }

    /// <summary>
    /// What blends trade for each other in error, cost, number of columns and strength (see <see cref="TradeAnswer"/>), up to a largest
    /// error, and at most so many.
    /// </summary>
    public static TradeAnswer TradeOffs(BlendRequest request, double largestError = 0.25, int most = 60) =>
        TradeFront.Of(request, largestError, most);

    /// <summary>
    /// The blend nearest to contents wanted at least (the target, as mass fractions): least mean relative shortfall, then
    /// cost; null when the rows leave no blend at all.
    /// </summary>
    public static NearestGrade? NearestToGrade(BlendRequest request)
    {
        var model = new BlendModel(request, BlendAim.AtLeast);
        var (found, _, _) = Search(model, 1);
        if (found.Count == 0)
        {
            return null;
        }

        var blend = found[0].ToBlend(model);
        var contents = BlendMeasure.Contents(request, blend);
        int? shortest = null;
        var largest = FoundBlend.Positive;
        for (var j = 0; j < contents.Length; j++)
        {
            var shortfall = 1 - (contents[j] / request.Target[j]);
            if (shortfall > largest)
            {
                (largest, shortest) = (shortfall, j);
            }
        }

        return new NearestGrade(blend, contents, Math.Max(0, found[0].Error), shortest);
    }

    /// <summary>
    /// Whether any blend keeps the rows, the pairs and the count limit; if none does, rows of which one must give way.
    /// </summary>
    public static RowConflict Conflict(BlendRequest request)
    {
        if (AnyBlend(request))
        {
            return new RowConflict(true, []);
        }

        // Deletion filter: a row that can go without making the rest possible is no part of the conflict.
        var kept = Enumerable.Range(0, request.Rows.Count).ToList();
        foreach (var r in kept.ToArray())
        {
            var without = kept.Where(k => k != r).ToList();
            if (!AnyBlend(request with { Rows = [.. without.Select(k => request.Rows[k])] }))
            {
                kept = without;
            }
        }

        return new RowConflict(false, kept);
    }

    private static bool AnyBlend(BlendRequest request) => Search(new BlendModel(request), 1).Found.Count > 0;

    private static (IReadOnlyList<FoundBlend> Found, bool Proved, double[]? Root) Search(BlendModel model, int count)
    {
        if (model.Columns == 0)
        {
            return ([], true, null);
        }

        var best = new BestBlends(count);
        using var race = new BlendRace(model, best);
        var proved = race.Run(model.Request.WorkLimit);
        return (best.Found, proved, race.RootMultipliers);
    }
}
