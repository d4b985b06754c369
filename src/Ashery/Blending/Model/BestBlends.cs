namespace Ashery.Blending.Model;

/// <summary>The k best blends found so far, in order, and what a search may rule out because of them.</summary>
internal sealed class BestBlends(int capacity)
{
    /// <summary>A bound must pass the last blend's error by this much before a branch is given up: more than rounding can reach.</summary>
    public const double Margin = 1e-10;

    private readonly List<FoundBlend> found = [];

    public IReadOnlyList<FoundBlend> Found => found;

    /// <summary>How many are wanted.</summary>
    public int Wanted => capacity;

    public bool Full => found.Count == capacity;

    public FoundBlend Last => found[^1];

    /// <summary>No blend with a larger error can still come in.</summary>
    public double Cutoff => Full ? Last.Error + Margin : double.PositiveInfinity;

    /// <summary>
    /// True when blends of at least this error, cost and number of members would all come after the last one kept.
    /// </summary>
    public bool RulesOut(double error, double cost, int members)
    {
        if (!Full)
        {
            return false;
        }

        if (error > Last.Error + Margin)
        {
            return true;
        }

        if (error < Last.Error - FoundBlend.Tie)
        {
            return false;
        }

        var c = FoundBlend.CompareCost(cost, Last.Cost);
        return c > 0 || (c == 0 && members > Last.Members.Length);
    }

    /// <summary>True when blends of this error and cost would tie with the last one kept.</summary>
    public bool Ties(double error, double cost) =>
        Full && Math.Abs(error - Last.Error) <= FoundBlend.Tie && FoundBlend.CompareCost(cost, Last.Cost) == 0;

    public bool Add(FoundBlend blend)
    {
        if (Full && blend.CompareTo(Last) >= 0)
        {
            return false;
        }

        var at = found.Count;
        while (at > 0)
        {
            var c = blend.CompareTo(found[at - 1]);
            if (c == 0)
            {
                return false;
            }

            if (c > 0)
            {
                break;
            }

            at--;
        }

        found.Insert(at, blend);
        if (found.Count > capacity)
        {
            found.RemoveAt(capacity);
        }

        return true;
    }
}
