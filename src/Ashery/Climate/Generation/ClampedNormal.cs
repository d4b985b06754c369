namespace Ashery.Climate.Generation;

/// <summary>A normal variable held between bounds: which mean it needs before the holding to have a wanted mean after it.</summary>
internal static class ClampedNormal
{
    /// <summary>Mean after a normal variable is held between two bounds.</summary>
    public static double Mean(double mean, double deviation, double low, double high) => deviation <= 0
        ? Math.Clamp(mean, low, high)
        : low + Above(mean, deviation, low) - Above(mean, deviation, high);

    /// <summary>The mean before holding, by bisection; at most eight deviations from the wanted one, which then lies at a bound.</summary>
    public static double MeanFor(double wanted, double deviation, double low, double high)
    {
        var (a, b) = (wanted - (8 * deviation), wanted + (8 * deviation));
        for (var i = 0; i < 60; i++)
        {
            var middle = (a + b) / 2;
            if (Mean(middle, deviation, low, high) < wanted)
            {
                a = middle;
            }
            else
            {
                b = middle;
            }
        }

        return (a + b) / 2;
    }

    // Mean of max(0, X - bound).
    private static double Above(double mean, double deviation, double bound)
    {
        if (double.IsPositiveInfinity(bound))
        {
            return 0;
        }

        var z = (mean - bound) / deviation;
        return deviation * ((Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI)) + (z * Cumulative(z)));
    }

    /// <summary>Standard normal distribution function, by its series near 0 and its continued fraction in the tails (Abramowitz and Stegun 26.2.10, 26.2.14; from memory).</summary>
    public static double Cumulative(double z)
    {
        var x = Math.Abs(z);
        var density = Math.Exp(-x * x / 2) / Math.Sqrt(2 * Math.PI);
        double upper;
        if (x < 3)
        {
            // Phi = 1/2 + density (x + x³/3 + x⁵/15 + ...).
            var (term, sum) = (x, x);
            for (var k = 3; term > 1e-17 * sum; k += 2)
            {
                term *= x * x / k;
                sum += term;
            }

            upper = 0.5 - (density * sum);
        }
        else
        {
            var fraction = 0.0;
            for (var k = 60; k >= 1; k--)
            {
                fraction = k / (x + fraction);
            }

            upper = density / (x + fraction);
        }

        return z > 0 ? 1 - upper : upper;
    }
}
