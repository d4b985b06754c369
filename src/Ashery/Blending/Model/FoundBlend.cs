namespace Ashery.Blending.Model;

/// <summary>A blend as the searches keep it: canonical columns, amounts x, and the key it is ordered by.</summary>
/// <param name="Members">Canonical columns, ascending.</param>
/// <param name="X">Amounts, all positive.</param>
/// <param name="Error">The search's first objective.</param>
/// <param name="Cost">Per unit of nutrient; infinite when a price is unknown.</param>
internal sealed record FoundBlend(int[] Members, double[] X, double Error, double Cost) : IComparable<FoundBlend>
{
    /// <summary>An amount (share of the blend's nutrient mass) below this is no part of a blend.</summary>
    public const double Positive = 1e-9;

    /// <summary>Errors closer than this are the same error; costs, relative to their size.</summary>
    public const double Tie = 1e-12;

    public static FoundBlend Of(BlendModel model, ReadOnlySpan<int> members, ReadOnlySpan<double> x)
    {
        double error = 0;
        for (var j = 0; j < model.Nutrients; j++)
        {
            double deviation = 0;
            for (var k = 0; k < members.Length; k++)
            {
                deviation += (model.U[(members[k] * model.Nutrients) + j] - model.Brings[members[k]]) * x[k];
            }

            error += deviation > 0 ? model.WeightAbove * deviation : -model.WeightBelow * deviation;
        }

        double cost = 0;
        for (var k = 0; k < members.Length; k++)
        {
            cost += model.Unpriced[members[k]] > 0 ? double.PositiveInfinity : model.Cost[members[k]] * x[k];
        }

        return new FoundBlend(members.ToArray(), x.ToArray(), error, cost);
    }

    public static int CompareCost(double a, double b)
    {
        if (a == b)
        {
            return 0;
        }

        if (double.IsPositiveInfinity(a) || double.IsPositiveInfinity(b))
        {
            return a < b ? -1 : 1;
        }

        return Math.Abs(a - b) <= Tie * Math.Max(1, Math.Abs(a)) ? 0 : a.CompareTo(b);
    }

    /// <summary>
    /// Error, then cost (unknown last), then number of members, then names. Distinct values lie farther apart than
    /// the ties' width in practice, so the order is one although closeness is not transitive.
    /// </summary>
    public int CompareTo(FoundBlend? other)
    {
        ArgumentNullException.ThrowIfNull(other);
        if (Math.Abs(Error - other.Error) > Tie)
        {
            return Error.CompareTo(other.Error);
        }

        var c = CompareCost(Cost, other.Cost);
        if (c == 0)
        {
            c = Members.Length.CompareTo(other.Members.Length);
        }

        for (var k = 0; c == 0 && k < Members.Length; k++)
        {
            c = Members[k].CompareTo(other.Members[k]);
        }

        return c;
    }

    public Blend ToBlend(BlendModel model)
    {
        // By place in the request, kept sorted while it is filled.
        var places = new int[Members.Length];
        var mass = new double[Members.Length];
        for (var k = 0; k < places.Length; k++)
        {
            var place = model.Order[Members[k]];
            var at = k;
            for (; at > 0 && places[at - 1] > place; at--)
            {
                places[at] = places[at - 1];
                mass[at] = mass[at - 1];
            }

            places[at] = place;
            mass[at] = X[k] / model.Scale[Members[k]];
        }

        return BlendMeasure.Of(model.Request, places, mass);
    }
}
