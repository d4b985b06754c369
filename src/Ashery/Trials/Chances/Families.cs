namespace Ashery.Trials.Chances;

/// <summary>
/// The largest of several comparisons that are judged together, so that the whole family errs in one case of twenty: all pairs (Tukey 1949, with Kramer's
/// 1956 form for unequal numbers), all against a control (Dunnett 1955). Both are integrals over the estimated standard deviation; from memory.
/// </summary>
internal static class Families
{
    private static readonly (double X, double W)[] NormalPoints = [.. Quadrature.Points(-8.5, 8.5, 6).Select(static p => (p.X, p.W * Math.Exp(-p.X * p.X / 2) / Math.Sqrt(2 * Math.PI)))];

    /// <summary>P(all |t| ≤ c) over the pairs of k equal groups: the studentised range at c√2.</summary>
    public static double AllPairs(double c, int groups, double df) => StudentisedRange(c * Math.Sqrt(2), groups, df);

    /// <summary>P(Q ≤ q) of the studentised range.</summary>
    public static double StudentisedRange(double q, int groups, double df) =>
        q <= 0 ? 0 : Math.Clamp(Quadrature.OverScale(s => Range(q * s, groups), df), 0, 1);

    /// <summary>P(all |t| ≤ c) over groups of <paramref name="counts"/> against a control of <paramref name="control"/> plots.</summary>
    public static double AgainstControl(double c, double control, IReadOnlyList<double> counts, double df)
    {
        var lambda = counts.Select(n => Math.Sqrt(n / (n + control))).ToArray();
        return c <= 0 ? 0 : Math.Clamp(Quadrature.OverScale(s => Within(c * s, lambda), df), 0, 1);
    }

    /// <summary>The c at which a rising chance reaches <paramref name="wanted"/>.</summary>
    public static double Quantile(Func<double, double> chance, double wanted)
    {
        double low = 1, high = 4;
        low = chance(low) < wanted ? low : 0;
        while (chance(high) < wanted && high < 1e6)
        {
            (low, high) = (high, high * 2);
        }

        // False position with halving of the stale side (Illinois): a few evaluations, since each is a double integral.
        var (atLow, atHigh) = (chance(low) - wanted, chance(high) - wanted);
        for (var i = 0; i < 100 && high - low > 1e-10 * high; i++)
        {
            var middle = Math.Clamp(low - (atLow * (high - low) / (atHigh - atLow)), low + (1e-12 * high), high);
            var here = chance(middle) - wanted;
            if (Math.Abs(here) < 1e-12)
            {
                return middle;
            }

            if (here < 0)
            {
                (low, atLow, atHigh) = (middle, here, atHigh / 2);
            }
            else
            {
                (high, atHigh, atLow) = (middle, here, atLow / 2);
            }
        }

        return (low + high) / 2;
    }

    private static double Range(double w, int groups)
    {
        var sum = 0.0;
        foreach (var (z, weight) in NormalPoints)
        {
            sum += weight * Math.Pow(Math.Max(0, Laws.Normal(z) - Laws.Normal(z - w)), groups - 1);
        }

        return Math.Min(1, groups * sum);
    }

    private static double Within(double c, double[] lambda)
    {
        var sum = 0.0;
        foreach (var (y, weight) in NormalPoints)
        {
            var all = weight;
            foreach (var l in lambda)
            {
                var own = Math.Sqrt(1 - (l * l));
                all *= Laws.Normal(((l * y) + c) / own) - Laws.Normal(((l * y) - c) / own);
            }

            sum += all;
        }

        return sum;
    }
}
