namespace Ashery.Trials.Chances;

/// <summary>How the chance of a false alarm is spent over several looks.</summary>
public enum SpendingRule
{
    /// <summary>Hardly any early, nearly all at the end: 2 − 2Φ(z/√t) on each side, in the manner of O'Brien and Fleming (1979).</summary>
    OBrienFleming,

    /// <summary>Evenly: α ln(1 + (e − 1)t), in the manner of Pocock (1977).</summary>
    Pocock,
}

/// <summary>One look at a running trial.</summary>
/// <param name="Fraction">Part of the planned information that is in, 0..1.</param>
/// <param name="Spent">Chance of a false alarm spent up to here.</param>
/// <param name="Limit">|z| to pass.</param>
/// <param name="Level">The same as a p of both sides: what a p at this look must be below.</param>
public sealed record LookLimit(double Fraction, double Spent, double Limit, double Level);

/// <summary>
/// Limits of looks from a spending function (Lan and DeMets 1983). The density of the running sum that has passed no limit is carried from look to look by
/// numerical integration (Armitage, McPherson and Rowe 1969); from memory, checked against multivariate normal integrals of R.
/// </summary>
public static class Spending
{
    private const int Panels = 24;

    /// <param name="rule">How it is spent.</param>
    /// <param name="fractions">Rising, above 0, at most 1.</param>
    /// <param name="alpha">False alarms in all, both sides.</param>
    public static IReadOnlyList<LookLimit> Limits(SpendingRule rule, IReadOnlyList<double> fractions, double alpha = 0.05)
    {
        var limits = new List<LookLimit>();
        (double X, double W)[] points = [];
        double[] density = [];
        for (var k = 0; k < fractions.Count; k++)
        {
            var t = fractions[k];
            var spent = Spent(rule, t, alpha);
            var extra = spent - (k == 0 ? 0 : limits[^1].Spent);
            var limit = 0.0;
            if (k == 0)
            {
                limit = Laws.StudentBothSides(extra, double.PositiveInfinity);
            }
            else
            {
                // The chance to pass the limit now, having passed none before, falls as the limit rises.
                var step = Math.Sqrt(t - fractions[k - 1]);
                var (before, weights) = (points, density);
                double low = 0, high = 12;
                for (var i = 0; i < 60; i++)
                {
                    limit = (low + high) / 2;
                    var edge = limit * Math.Sqrt(t);
                    var pass = 0.0;
                    for (var j = 0; j < before.Length; j++)
                    {
                        pass += before[j].W * weights[j] * (Laws.Normal((-edge - before[j].X) / step) + Laws.Normal((before[j].X - edge) / step));
                    }

                    (low, high) = pass > extra ? (limit, high) : (low, limit);
                }
            }

            limits.Add(new(t, spent, limit, Laws.StudentBothTails(limit, double.PositiveInfinity)));
            if (k < fractions.Count - 1)
            {
                (points, density) = Carry(points, density, k == 0 ? 0 : fractions[k - 1], t, limit * Math.Sqrt(t));
            }
        }

        return limits;
    }

    private static double Spent(SpendingRule rule, double t, double alpha) =>
        t >= 1 ? alpha
        : rule == SpendingRule.Pocock ? alpha * Math.Log(1 + ((Math.E - 1) * t))
        : 2 * Laws.StudentBothTails(Laws.NormalQuantile(1 - (alpha / 4)) / Math.Sqrt(t), double.PositiveInfinity);

    private static ((double X, double W)[] Points, double[] Density) Carry((double X, double W)[] before, double[] density, double earlier, double now, double edge)
    {
        var step = Math.Sqrt(now - earlier);
        edge = Math.Min(edge, 9 * Math.Sqrt(now));
        var points = Quadrature.Points(-edge, edge, Panels);
        var carried = new double[points.Length];
        for (var i = 0; i < points.Length; i++)
        {
            var x = points[i].X;
            if (before.Length == 0)
            {
                carried[i] = Density(x / step) / step;
                continue;
            }

            for (var j = 0; j < before.Length; j++)
            {
                carried[i] += before[j].W * density[j] * Density((x - before[j].X) / step) / step;
            }
        }

        return (points, carried);
    }

    private static double Density(double z) => Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI);
}
