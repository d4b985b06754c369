namespace Ashery.RootZone.Draws;

/// <summary>
/// One unknown with its spread: triangular between the ends of the published range, with its top at the value in use. A published range without a distribution
/// tells no more than that; ends are certain bounds, so no draw leaves what is physical.
/// </summary>
/// <param name="Id">As <c>nitrification</c>, <c>medium-buffer</c>, <c>scoop-2027-04-12</c>.</param>
/// <param name="Name">In words.</param>
/// <param name="Group">To which it belongs.</param>
/// <param name="Low">Lowest.</param>
/// <param name="Usual">Most likely.</param>
/// <param name="High">Highest.</param>
public sealed record UncertainFigure(string Id, string Name, UncertainGroup Group, double Low, double Usual, double High)
{
    /// <summary>True when it has a spread at all.</summary>
    public bool Spreads => High > Low;

    /// <summary>Mean of the triangle.</summary>
    public double Mean => (Low + Usual + High) / 3;

    /// <summary>Standard deviation of the triangle.</summary>
    public double Deviation => Math.Sqrt(((Low * Low) + (Usual * Usual) + (High * High) - (Low * Usual) - (Low * High) - (Usual * High)) / 18);

    /// <summary>The value below which a share of all draws falls.</summary>
    public double At(double share) => Triangle(share, Low, Usual, High);

    /// <summary>Inverse of the triangular distribution function.</summary>
    internal static double Triangle(double u, double low, double top, double high)
    {
        var span = high - low;
        if (!(span > 0))
        {
            return top;
        }

        return u * span < top - low ? low + Math.Sqrt(u * span * (top - low)) : high - Math.Sqrt((1 - u) * span * (high - top));
    }
}
