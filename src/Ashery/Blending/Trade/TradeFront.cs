using Ashery.Blending.Model;
using Ashery.Blending.Programme;
using Ashery.Blending.Tree;

namespace Ashery.Blending.Trade;

/// <summary>
/// What blends trade: every set of columns at its best ratio, less those that another set beats in error, cost, number of
/// columns and strength at once.
/// </summary>
/// <remarks>
/// A set's best ratio is its blend in <see cref="BlendSearch.Find"/> (error, then cost, then mass; all amounts positive). The front is
/// exact among these for each number of columns from one to the limit, up to the largest error asked for: a blend stays
/// when no blend with as few or fewer columns is at least as good in the other three and better in one. Blends equal in all four count once,
/// the first by name. An unknown cost is worse than any known one. Mixing a set away from its best ratio to save money
/// gives further blends between these corners; they are not listed.
/// Complexity: one small programme a set; where there are more than a few hundred thousand sets, the best blends by error stand in and
/// the answer says that it is not exact.
/// </remarks>
internal static class TradeFront
{
    private const double MostSets = 1_500_000;
    private const int StandIns = 2_000;

    public static TradeAnswer Of(BlendRequest request, double largestError, int most)
    {
        var model = new BlendModel(request);
        if (model.Columns == 0)
        {
            return new TradeAnswer([], true, 0);
        }

        var front = new List<Point>();
        var exact = SupportCount.UpTo(model.Columns, request.AtMost) <= MostSets;
        if (exact)
        {
            Enumerate(model, largestError, front);
        }
        else
        {
            var best = new BestBlends(StandIns);
            using var tree = new BlendTree(model, best);
            tree.Run(4 * StandIns);
            foreach (var blend in best.Found.Where(b => b.Error <= largestError))
            {
                Offer(front, new Point(blend, MassOf(model, blend)));
            }
        }

        var kept = Choose(front, most);
        kept.Sort((a, b) => a.Blend.Members.Length != b.Blend.Members.Length
            ? a.Blend.Members.Length.CompareTo(b.Blend.Members.Length)
            : a.Blend.CompareTo(b.Blend));
        return new TradeAnswer([.. kept.Select(p => p.Blend.ToBlend(model))], exact, front.Count - kept.Count);
    }

    private static void Enumerate(BlendModel model, double largestError, List<Point> front)
    {
        var most = Math.Min(model.Request.AtMost, model.Columns);
        using var support = new SupportSolver(model, most);
        var set = new int[most];

        // Fewer columns first: what is kept never has to give way to a larger set.
        for (var size = 1; size <= most; size++)
        {
            Extend(model, support, largestError, front, set, 0, 0, size);
        }
    }

    private static void Extend(
        BlendModel model, SupportSolver support, double largestError, List<Point> front, int[] set, int size, int next, int wanted)
    {
        if (size == wanted)
        {
            if (support.Solve(set.AsSpan(0, size), largestError) is { } blend && blend.Error <= largestError)
            {
                Offer(front, new Point(blend, MassOf(model, blend)));
            }

            return;
        }

        for (var i = next; i < model.Columns; i++)
        {
            if (model.Fits(set.AsSpan(0, size), i))
            {
                set[size] = i;
                Extend(model, support, largestError, front, set, size + 1, i + 1, wanted);
            }
        }
    }

    private static double MassOf(BlendModel model, FoundBlend blend)
    {
        double mass = 0;
        for (var k = 0; k < blend.Members.Length; k++)
        {
            mass += model.Mass[blend.Members[k]] * blend.X[k];
        }

        return mass;
    }

    private static void Offer(List<Point> front, Point point)
    {
        foreach (var other in front)
        {
            if (other.Beats(point))
            {
                return;
            }
        }

        front.RemoveAll(point.Beats);
        front.Add(point);
    }

    /// <summary>At most so many: of each number of columns the nearest, the cheapest and the strongest, then by error.</summary>
    private static List<Point> Choose(List<Point> front, int most)
    {
        if (front.Count <= most)
        {
            return [.. front];
        }

        var chosen = new List<Point>();
        foreach (var group in front.GroupBy(p => p.Blend.Members.Length).OrderBy(g => g.Key))
        {
            foreach (var pick in new[] { group.MinBy(p => p.Blend.Error)!, group.MinBy(p => p.Blend.Cost)!, group.MinBy(p => p.Mass)! })
            {
                if (chosen.Count < most && !chosen.Contains(pick))
                {
                    chosen.Add(pick);
                }
            }
        }

        chosen.AddRange(front.Except(chosen).OrderBy(p => p.Blend.Error).Take(most - chosen.Count).ToList());
        return chosen;
    }

    /// <summary>A blend in the four objectives, all to be small.</summary>
    private sealed record Point(FoundBlend Blend, double Mass)
    {
        /// <summary>At least as good in all four; ties within rounding count as equal, so that of equals the first stays.</summary>
        public bool Beats(Point other) =>
            Blend.Members.Length <= other.Blend.Members.Length
            && Blend.Error <= other.Blend.Error + FoundBlend.Tie
            && FoundBlend.CompareCost(Blend.Cost, other.Blend.Cost) <= 0
            && Mass <= other.Mass * (1 + FoundBlend.Tie);
    }
}
