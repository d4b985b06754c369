namespace Ashery.Cards.Drawing;

/// <summary>Convex hull by monotone chain (Andrew 1979): sorts, then keeps only left turns.</summary>
internal static class Hull
{
    /// <summary>Corners in order; fewer than three when the points lie on a line or one spot.</summary>
    public static IReadOnlyList<Spot> Of(IEnumerable<Spot> spots)
    {
        var sorted = spots.Distinct().OrderBy(s => s.X).ThenBy(s => s.Y).ToList();
        if (sorted.Count < 3)
        {
            return sorted;
        }

        var lower = Half(sorted);
        sorted.Reverse();
        var upper = Half(sorted);
        lower.RemoveAt(lower.Count - 1);
        upper.RemoveAt(upper.Count - 1);
        return [.. lower, .. upper];
    }

    private static List<Spot> Half(List<Spot> sorted)
    {
        var chain = new List<Spot>();
        foreach (var s in sorted)
        {
            while (chain.Count >= 2 && Cross(chain[^2], chain[^1], s) <= 1e-9)
            {
                chain.RemoveAt(chain.Count - 1);
            }

            chain.Add(s);
        }

        return chain;
    }

    private static double Cross(Spot o, Spot a, Spot b) => ((a.X - o.X) * (b.Y - o.Y)) - ((a.Y - o.Y) * (b.X - o.X));
}
