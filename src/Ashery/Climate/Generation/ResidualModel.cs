namespace Ashery.Climate.Generation;

/// <summary>
/// Departures of maximum and minimum temperature and radiation from their means, in standard deviations, correlated among
/// each other and from day to day: z(t) = A z(t-1) + B e(t) (Richardson 1981, after Matalas 1967). The printed matrices are rounded, so that the
/// variances they lead to are only near 1; dividing by their roots makes them 1.
/// </summary>
internal sealed class ResidualModel
{
    private static readonly Lazy<ResidualModel> Shared = new(static () => new(GeneratorData.Of("residualA"), GeneratorData.Of("residualB")));

    private readonly double[] a;
    private readonly double[] b;
    private readonly double[] start = new double[9];

    private ResidualModel(double[] a, double[] b)
    {
        // Stationary covariance S = A S A' + B B', by repeating: the largest eigenvalue of A is below 0.7.
        var noise = Product(b, Transposed(b));
        var s = noise;
        for (var i = 0; i < 200; i++)
        {
            s = Sum(Product(Product(a, s), Transposed(a)), noise);
        }

        Span<double> root = [Math.Sqrt(s[0]), Math.Sqrt(s[4]), Math.Sqrt(s[8])];
        this.a = new double[9];
        this.b = new double[9];
        Correlation = new double[9];
        for (var i = 0; i < 3; i++)
        {
            for (var j = 0; j < 3; j++)
            {
                this.a[(i * 3) + j] = a[(i * 3) + j] * root[j] / root[i];
                this.b[(i * 3) + j] = b[(i * 3) + j] / root[i];
                Correlation[(i * 3) + j] = s[(i * 3) + j] / (root[i] * root[j]);
            }
        }

        Factor(Correlation, start);
        Lag1 = Product(this.a, Correlation);
    }

    public static ResidualModel Default => Shared.Value;

    /// <summary>Correlation of the three on the same day.</summary>
    public double[] Correlation { get; }

    /// <summary>Correlation of each (row) with each of the day before (column).</summary>
    public double[] Lag1 { get; }

    /// <summary>A first day drawn from the long run.</summary>
    public (double Max, double Min, double Sun) First(ref WeatherStream random)
    {
        var (x, y, z) = (random.Normal(), random.Normal(), random.Normal());
        return (start[0] * x, (start[3] * x) + (start[4] * y), (start[6] * x) + (start[7] * y) + (start[8] * z));
    }

    /// <summary>The day after.</summary>
    public (double Max, double Min, double Sun) Next((double Max, double Min, double Sun) last, ref WeatherStream random)
    {
        var (x, y, z) = (random.Normal(), random.Normal(), random.Normal());
        var (p, q, r) = last;
        return (
            (a[0] * p) + (a[1] * q) + (a[2] * r) + (b[0] * x),
            (a[3] * p) + (a[4] * q) + (a[5] * r) + (b[3] * x) + (b[4] * y),
            (a[6] * p) + (a[7] * q) + (a[8] * r) + (b[6] * x) + (b[7] * y) + (b[8] * z));
    }

    // Lower triangular L with L L' = the matrix.
    private static void Factor(double[] m, double[] l)
    {
        l[0] = Math.Sqrt(m[0]);
        l[3] = m[3] / l[0];
        l[4] = Math.Sqrt(m[4] - (l[3] * l[3]));
        l[6] = m[6] / l[0];
        l[7] = (m[7] - (l[6] * l[3])) / l[4];
        l[8] = Math.Sqrt(m[8] - (l[6] * l[6]) - (l[7] * l[7]));
    }

    private static double[] Product(double[] x, double[] y)
    {
        var p = new double[9];
        for (var i = 0; i < 9; i++)
        {
            var (row, column) = (i / 3 * 3, i % 3);
            p[i] = (x[row] * y[column]) + (x[row + 1] * y[column + 3]) + (x[row + 2] * y[column + 6]);
        }

        return p;
    }

    private static double[] Transposed(double[] x) => [x[0], x[3], x[6], x[1], x[4], x[7], x[2], x[5], x[8]];

    private static double[] Sum(double[] x, double[] y)
    {
        var s = new double[9];
        for (var i = 0; i < 9; i++)
        {
            s[i] = x[i] + y[i];
        }

        return s;
    }
}
