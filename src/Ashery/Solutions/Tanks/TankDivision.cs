namespace Ashery.Solutions.Tanks;

/// <summary>
/// Shares a material over two tanks where that allows a more concentrated stock: the tank that limits gives up a quarter, a half or three
/// quarters of one material to another tank, as long as that raises the ratio. A search step by step, not a proof.
/// </summary>
internal sealed class TankDivision(TankRequest request, TankRatios ratios)
{
    // A material in two tanks is one more thing to weigh: only for a twentieth more.
    private const double WorthDividing = 1.05;

    // A material below this part of the largest is a trace, which does not limit a tank.
    private const double Least = 0.02;

    private static readonly int[] Quarters = [2, 1, 3];

    /// <summary>The shares and the ratio after dividing; the same when nothing is gained.</summary>
    public (double Ratio, IReadOnlyList<double[]> Shares, bool Divided) Of(double ratio, IReadOnlyList<double[]> shares)
    {
        var divided = false;
        for (var round = 0; round < 3 && request.MayDivide && request.Tanks > 1 && ratio is > 0 and < TankSplit.MostRatio; round++)
        {
            var goal = ratio * WorthDividing;
            double[][]? found = null;
            foreach (var moved in Moves(shares))
            {
                if (moved.All(tank => ratios.Judge.IsClear(tank, goal)) && ratios.Common(moved, moved.Min(tank => ratios.RatioOf(tank, TankSplit.MostRatio))) is var reached && reached > goal)
                {
                    (goal, found) = (reached, moved);
                }
            }

            if (found is null)
            {
                break;
            }

            (ratio, shares, divided) = (goal, found, true);
        }

        return (ratio, shares, divided);
    }

    private IEnumerable<double[][]> Moves(IReadOnlyList<double[]> shares)
    {
        var most = request.Feed.Max(static m => m.GramsPerLitre);
        var from = Enumerable.Range(0, shares.Count).MinBy(t => ratios.RatioOf(shares[t], TankSplit.MostRatio));
        for (var i = 0; i < request.Feed.Count; i++)
        {
            // What was moved before is not cut smaller.
            if (shares[from][i] < 1 || request.Feed[i].GramsPerLitre < Least * most)
            {
                continue;
            }

            for (var to = 0; to < Math.Min(shares.Count + 1, request.Tanks); to++)
            {
                for (var step = 0; to != from && step < Quarters.Length; step++)
                {
                    yield return Moved(shares, i, from, to, Quarters[step] / 4.0);
                }
            }
        }
    }

    private double[][] Moved(IReadOnlyList<double[]> shares, int i, int from, int to, double part)
    {
        var moved = new double[Math.Max(shares.Count, to + 1)][];
        for (var t = 0; t < moved.Length; t++)
        {
            moved[t] = t < shares.Count ? [.. shares[t]] : new double[request.Feed.Count];
        }

        moved[from][i] -= part;
        moved[to][i] += part;
        return moved;
    }
}
