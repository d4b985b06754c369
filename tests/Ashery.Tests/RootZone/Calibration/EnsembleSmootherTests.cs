using Ashery.Climate.Generation;
using Ashery.RootZone.Calibration;

namespace Ashery.Tests.RootZone.Calibration;

public class EnsembleSmootherTests(ITestOutputHelper output)
{
    private const int Members = 40_000;

    // A linear model of three unknowns and two readings.
    private static readonly double[,] G = { { 1, 0.5, -0.3 }, { 0, 1.2, 0.8 } };

    private static readonly double[] Readings = [1.4, -0.7];

    private static readonly double[] Errors = [0.5, 0.8];

    /// <summary>
    /// Closed form of the linear normal case (Kalman 1960): with prior N(0, I), mean G'(GG' + S)⁻¹ d and covariance I - G'(GG' + S)⁻¹ G, worked out here by hand for two
    /// readings. S is the error alone, or error and noise of the prediction together.
    /// </summary>
    [Theory]
    [InlineData(1, false)]
    [InlineData(4, false)]
    [InlineData(1, true)]
    [InlineData(4, true)]
    public void A_linear_normal_case_ends_where_Kalman_says(int rounds, bool noisy)
    {
        double[]? w = noisy ? [0.6, 0.25, 0.25, 0.4] : null;
        var random = new WeatherStream(7, 0);
        var z = new double[Members * 3];
        for (var i = 0; i < z.Length; i++)
        {
            z[i] = random.Normal();
        }

        EnsembleSmoother.Run(z, 3, Readings, Errors, _ => w, round => Predict(z, w, round), rounds, 3);
        var (mean, covariance) = Kalman(w);
        for (var a = 0; a < 3; a++)
        {
            var found = Enumerable.Range(0, Members).Average(j => z[(j * 3) + a]);
            output.WriteLine(FormattableString.Invariant($"mean {a}: {found:0.000}, closed form {mean[a]:0.000}"));

            // Standard error of a mean of 40,000 is 0.005, that of a covariance 0.007; gains are estimated too.
            Assert.Equal(mean[a], found, 0.025);
            for (var b = 0; b < 3; b++)
            {
                var (ma, mb) = (found, Enumerable.Range(0, Members).Average(j => z[(j * 3) + b]));
                Assert.Equal(covariance[a, b], Enumerable.Range(0, Members).Average(j => (z[(j * 3) + a] - ma) * (z[(j * 3) + b] - mb)), 0.03);
            }
        }
    }

    [Fact]
    public void Without_readings_nothing_moves()
    {
        double[] z = [1, 2, 3];
        EnsembleSmoother.Run(z, 1, [], [], static _ => null, static _ => [], 4, 1);
        Assert.Equal([1, 2, 3], z);
    }

    /// <summary>Quantiles of the normal distribution (any table of statistics; digits from memory).</summary>
    [Theory]
    [InlineData(0.5, 0)]
    [InlineData(0.95, 1.6448536269514722)]
    [InlineData(0.975, 1.959963984540054)]
    [InlineData(0.005, -2.5758293035489004)]
    [InlineData(0.999, 3.090232306167813)]
    [InlineData(1e-9, -5.997807015007773)]
    public void Quantiles_are_those_of_the_tables(double share, double z)
    {
        Assert.Equal(z, NormalQuantile.Of(share), 1e-9);
        Assert.Equal(share, NormalQuantile.Share(z), 1e-12);
    }

    private static double[] Predict(double[] z, double[]? w, int round)
    {
        var random = new WeatherStream(100 + round, 0);
        var factor = w is null ? null : Cholesky.Factor(w, 2);
        var d = new double[Members * 2];
        for (var j = 0; j < Members; j++)
        {
            for (var i = 0; i < 2; i++)
            {
                for (var k = 0; k < 3; k++)
                {
                    d[(j * 2) + i] += G[i, k] * z[(j * 3) + k];
                }
            }

            if (factor is not null)
            {
                var (e, f) = (random.Normal(), random.Normal());
                d[j * 2] += factor[0] * e;
                d[(j * 2) + 1] += (factor[2] * e) + (factor[3] * f);
            }
        }

        return d;
    }

    private static (double[] Mean, double[,] Covariance) Kalman(double[]? w)
    {
        var s = new double[2, 2];
        for (var i = 0; i < 2; i++)
        {
            for (var j = 0; j < 2; j++)
            {
                s[i, j] = (w?[(i * 2) + j] ?? 0) + (i == j ? Errors[i] * Errors[i] : 0) + Enumerable.Range(0, 3).Sum(k => G[i, k] * G[j, k]);
            }
        }

        var det = (s[0, 0] * s[1, 1]) - (s[0, 1] * s[1, 0]);
        double[,] inverse = { { s[1, 1] / det, -s[0, 1] / det }, { -s[1, 0] / det, s[0, 0] / det } };
        var (mean, covariance) = (new double[3], new double[3, 3]);
        for (var a = 0; a < 3; a++)
        {
            covariance[a, a] = 1;
            for (var i = 0; i < 2; i++)
            {
                for (var j = 0; j < 2; j++)
                {
                    var k = G[i, a] * inverse[i, j];
                    mean[a] += k * Readings[j];
                    for (var b = 0; b < 3; b++)
                    {
                        covariance[a, b] -= k * G[j, b];
                    }
                }
            }
        }

        return (mean, covariance);
    }
}
