namespace Ashery.RootZone.Draws;

/// <summary>Least squares of one figure on a few others, by normal equations of centred columns.</summary>
internal static class Regression
{
    /// <summary>
    /// Share of the variance of y that the columns explain, adjusted for their number, 1 - (1 - R²)(n - 1)/(n - p - 1) (Wherry 1931, from memory), so that columns of noise explain
    /// nothing in the mean; not below 0.
    /// </summary>
    public static double Explained(ReadOnlySpan<double> y, params ReadOnlySpan<double[]> columns)
    {
        var (n, p) = (y.Length, columns.Length);
        if (n < p + 3)
        {
            return 0;
        }

        var all = new double[p + 1][];
        for (var j = 0; j <= p; j++)
        {
            all[j] = Centred(j < p ? columns[j] : y);
        }

        var total = Dot(all[p], all[p]);
        if (!(total > 0))
        {
            return 0;
        }

        // Gram-Schmidt: each column stands upright on those before it; what is left of y is the residual.
        var used = 0;
        for (var j = 0; j < p; j++)
        {
            var length = Dot(all[j], all[j]);
            for (var k = 0; k < j; k++)
            {
                Remove(all[k], all[j]);
            }

            if (Dot(all[j], all[j]) <= 1e-12 * length)
            {
                Array.Clear(all[j]);
                continue;
            }

            Remove(all[j], all[p]);
            used++;
        }

        var left = Dot(all[p], all[p]) / total;
        return Math.Max(0, 1 - (left * (n - 1) / (n - used - 1)));
    }

    private static double[] Centred(ReadOnlySpan<double> column)
    {
        var mean = 0.0;
        foreach (var v in column)
        {
            mean += v / column.Length;
        }

        var centred = new double[column.Length];
        for (var i = 0; i < centred.Length; i++)
        {
            centred[i] = column[i] - mean;
        }

        return centred;
    }

    private static void Remove(double[] direction, double[] from)
    {
        var length = Dot(direction, direction);
        if (length <= 0)
        {
            return;
        }

        var k = Dot(direction, from) / length;
        for (var i = 0; i < from.Length; i++)
        {
            from[i] -= k * direction[i];
        }
    }

    private static double Dot(double[] a, double[] b)
    {
        var sum = 0.0;
        for (var i = 0; i < a.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }
}
