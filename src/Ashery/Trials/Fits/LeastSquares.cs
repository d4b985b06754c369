namespace Ashery.Trials.Fits;

/// <summary>
/// Least squares by orthogonal columns (modified Gram-Schmidt, each column twice), in the order given. A column that the ones before it explain
/// is left out and marked, as statistics programs do, so that factors confounded with blocks do no harm.
/// </summary>
internal sealed class LeastSquares
{
    private const double Negligible = 1e-7;

    private readonly double[,] inverse; // of R, of the columns kept
    private readonly int[] kept;

    public LeastSquares(IReadOnlyList<double[]> columns, double[] y, double[]? rootWeights = null)
    {
        var n = y.Length;
        var q = new List<double[]>();
        var r = new List<double[]>();
        var effects = new double[columns.Count];
        var left = Scaled(y, rootWeights);
        Aliased = new bool[columns.Count];
        var keep = new List<int>();
        for (var c = 0; c < columns.Count; c++)
        {
            var v = Scaled(columns[c], rootWeights);
            var length = Math.Sqrt(Dot(v, v));
            var coefficients = new double[q.Count + 1];
            for (var again = 0; again < 2; again++)
            {
                for (var j = 0; j < q.Count; j++)
                {
                    var part = Dot(q[j], v);
                    coefficients[j] += part;
                    Subtract(v, q[j], part);
                }
            }

            var rest = Math.Sqrt(Dot(v, v));
            if (!(rest > Negligible * length) || q.Count >= n)
            {
                Aliased[c] = true;
                continue;
            }

            coefficients[q.Count] = rest;
            for (var i = 0; i < n; i++)
            {
                v[i] /= rest;
            }

            effects[c] = Dot(v, left);
            Subtract(left, v, effects[c]);
            q.Add(v);
            r.Add(coefficients);
            keep.Add(c);
        }

        kept = [.. keep];
        Effects = effects;
        Rank = kept.Length;
        Rss = Dot(left, left);
        inverse = Invert(r);
        Coefficients = new double[columns.Count];
        Array.Fill(Coefficients, double.NaN);
        for (var i = 0; i < Rank; i++)
        {
            var b = 0.0;
            for (var j = i; j < Rank; j++)
            {
                b += inverse[i, j] * effects[kept[j]];
            }

            Coefficients[kept[i]] = b;
        }
    }

    /// <summary>One a column; not a number for one left out.</summary>
    public double[] Coefficients { get; }

    public bool[] Aliased { get; }

    /// <summary>Part of y along each column after the ones before it; its square is the column's sum of squares.</summary>
    public double[] Effects { get; }

    public int Rank { get; }

    public double Rss { get; }

    /// <summary>L (XᵀX)⁻¹ Mᵀ, without the residual variance.</summary>
    public double Covariance(double[] l, double[] m)
    {
        var sum = 0.0;
        for (var j = 0; j < Rank; j++)
        {
            double a = 0, b = 0;
            for (var i = 0; i <= j; i++)
            {
                a += l[kept[i]] * inverse[i, j];
                b += m[kept[i]] * inverse[i, j];
            }

            sum += a * b;
        }

        return sum;
    }

    /// <summary>L β; not a number when it needs a column left out.</summary>
    public double Value(double[] l)
    {
        var sum = 0.0;
        for (var c = 0; c < l.Length; c++)
        {
            sum += l[c] == 0 ? 0 : l[c] * Coefficients[c];
        }

        return sum;
    }

    private static double[,] Invert(List<double[]> r)
    {
        var n = r.Count;
        var inverted = new double[n, n];
        for (var j = 0; j < n; j++)
        {
            inverted[j, j] = 1 / r[j][j];
            for (var i = j - 1; i >= 0; i--)
            {
                var sum = 0.0;
                for (var k = i + 1; k <= j; k++)
                {
                    sum += r[k][i] * inverted[k, j];
                }

                inverted[i, j] = -sum / r[i][i];
            }
        }

        return inverted;
    }

    private static double[] Scaled(double[] v, double[]? weights)
    {
        var copy = (double[])v.Clone();
        for (var i = 0; weights is not null && i < copy.Length; i++)
        {
            copy[i] *= weights[i];
        }

        return copy;
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

    private static void Subtract(double[] v, double[] q, double part)
    {
        for (var i = 0; i < v.Length; i++)
        {
            v[i] -= part * q[i];
        }
    }
}
