namespace Ashery.Blending;

/// <summary>A blend as the searches keep it: canonical columns, amounts x, and the key it is ordered by.</summary>
internal sealed record FoundBlend(int[] Members, double[] X, double Error, double Cost)
{
    /// <summary>An amount (share of the blend's nutrient mass) below this is no part of a blend.</summary>
    public const double Positive = 1e-9;

    /// <summary>Errors closer than this are the same error; costs, relative to their size.</summary>
    public const double Tie = 1e-12;

    public static FoundBlend Of(BlendModel model, int[] members, double[] x)
    {
        double error = 0;
        for (var j = 0; j < model.Nutrients; j++)
        {
            double sum = -1;
            for (var k = 0; k < members.Length; k++)
            {
                sum += model.U[(members[k] * model.Nutrients) + j] * x[k];
            }

            error += Math.Abs(sum);
        }

        double cost = 0;
        for (var k = 0; k < members.Length; k++)
        {
            cost += model.Unpriced[members[k]] > 0 ? double.PositiveInfinity : model.Cost[members[k]] * x[k];
        }

        return new FoundBlend(members, x, error / model.Nutrients, cost);
    }

    /// <summary>Error, then cost (unknown last), then number of members, then names; ties are clustered, so that the order is one.</summary>
    public static List<FoundBlend> Sorted(List<FoundBlend> found)
    {
        var byError = found.OrderBy(f => f.Error).ToList();
        var sorted = new List<FoundBlend>(found.Count);
        foreach (var sameError in Clusters(byError, f => f.Error, _ => Tie))
        {
            sameError.Sort((a, b) => a.Cost.CompareTo(b.Cost));
            foreach (var sameCost in Clusters(sameError, f => f.Cost, c => Tie * Math.Max(1, c)))
            {
                sameCost.Sort(CompareNames);
                sorted.AddRange(sameCost);
            }
        }

        return sorted;
    }

    public Blend ToBlend(BlendModel model)
    {
        var mass = new double[Members.Length];
        double total = 0;
        for (var k = 0; k < Members.Length; k++)
        {
            mass[k] = X[k] / model.Scale[Members[k]];
            total += mass[k];
        }

        var places = Array.ConvertAll(Members, i => model.Order[i]);
        var fractions = Array.ConvertAll(mass, g => g / total);
        Array.Sort(places, fractions);
        return BlendMeasure.Of(model.Request, places, fractions);
    }

    private static int CompareNames(FoundBlend a, FoundBlend b)
    {
        var c = a.Members.Length.CompareTo(b.Members.Length);
        for (var k = 0; c == 0 && k < a.Members.Length; k++)
        {
            c = a.Members[k].CompareTo(b.Members[k]);
        }

        return c;
    }

    private static IEnumerable<List<FoundBlend>> Clusters(
        List<FoundBlend> sorted, Func<FoundBlend, double> key, Func<double, double> tie)
    {
        for (var from = 0; from < sorted.Count;)
        {
            var first = key(sorted[from]);
            var to = from + 1;
            while (to < sorted.Count && (key(sorted[to]) <= first + tie(first)))
            {
                to++;
            }

            yield return sorted.GetRange(from, to - from);
            from = to;
        }
    }
}
