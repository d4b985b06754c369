using Ashery.Climate.Generation;

namespace Ashery.RootZone.Calibration;

/// <summary>
/// Ensemble smoother with multiple data assimilation (Emerick and Reynolds 2013, Computers and Geosciences 55:3-15; from memory): the readings are taken in several times, each time with their
/// error inflated by a factor α, the reciprocals of all factors adding up to 1, so that for a linear model and normal unknowns the end is that of one Kalman step.
/// Each time K = C(z, d) (C(d, d) + α R)⁻¹ and z + K (reading + √α error - predicted).
/// <para>
/// A prediction may carry noise that the unknowns do not explain (weather of days nobody measured), of covariance W and new each time: then the error of a reading is R + W, of which each
/// prediction brings one W itself, and √(α - 1) of it is added, so that C(d, d) + α R + (α - 1) W holds.
/// </para>
/// </summary>
internal static class EnsembleSmoother
{
    /// <summary>Moves an ensemble to readings.</summary>
    /// <param name="z">Unknowns on the standard normal scale, member by member; changed in place.</param>
    /// <param name="unknowns">How many a member has.</param>
    /// <param name="readings">What was read.</param>
    /// <param name="errors">Standard deviation of each reading.</param>
    /// <param name="noise">Covariance W of predictions for the same unknowns, row by row; null for none. Called with the round, since unknowns move.</param>
    /// <param name="predict">Predictions of all members, member by member, for a round from 0 on.</param>
    /// <param name="rounds">How often the readings are taken in.</param>
    /// <param name="seed">Of the perturbed readings.</param>
    public static void Run(
        double[] z, int unknowns, ReadOnlySpan<double> readings, ReadOnlySpan<double> errors, Func<int, double[]?> noise, Func<int, double[]> predict, int rounds, int seed)
    {
        var m = readings.Length;
        if (m == 0)
        {
            return;
        }

        var members = z.Length / unknowns;
        var random = new WeatherStream(seed, -1000);
        var innovation = new double[m];
        double alpha = rounds;
        for (var round = 0; round < rounds; round++)
        {
            var predicted = predict(round);
            var w = noise(round);
            var (gain, factor) = Gain(z, unknowns, predicted, m, errors, w, alpha);
            var wFactor = w is null ? null : Cholesky.Factor(w, m);
            for (var j = 0; j < members; j++)
            {
                Innovation(predicted.AsSpan(j * m, m), readings, errors, wFactor, alpha, ref random, innovation);
                Cholesky.Solve(factor, m, innovation);
                for (var k = 0; k < unknowns; k++)
                {
                    var step = 0.0;
                    for (var i = 0; i < m; i++)
                    {
                        step += gain[(k * m) + i] * innovation[i];
                    }

                    z[(j * unknowns) + k] += step;
                }
            }
        }
    }

    private static void Innovation(
        ReadOnlySpan<double> predicted, ReadOnlySpan<double> readings, ReadOnlySpan<double> errors, double[]? wFactor, double alpha, ref WeatherStream random, double[] into)
    {
        var m = readings.Length;
        for (var i = 0; i < m; i++)
        {
            into[i] = readings[i] + (Math.Sqrt(alpha) * errors[i] * random.Normal()) - predicted[i];
        }

        if (wFactor is null || alpha <= 1)
        {
            return;
        }

        for (var i = 0; i < m; i++)
        {
            var draw = Math.Sqrt(alpha - 1) * random.Normal();
            for (var r = i; r < m; r++)
            {
                into[r] += wFactor[(r * m) + i] * draw;
            }
        }
    }

    /// <summary>C(z, d), unknown by unknown, and the factor of C(d, d) + α R + (α - 1) W.</summary>
    private static (double[] Gain, double[] Factor) Gain(double[] z, int unknowns, double[] predicted, int m, ReadOnlySpan<double> errors, double[]? w, double alpha)
    {
        var members = z.Length / unknowns;
        var (zMean, dMean) = (Means(z, unknowns), Means(predicted, m));
        var gain = new double[unknowns * m];
        var c = new double[m * m];
        for (var j = 0; j < members; j++)
        {
            for (var i = 0; i < m; i++)
            {
                var d = (predicted[(j * m) + i] - dMean[i]) / (members - 1);
                for (var k = 0; k < unknowns; k++)
                {
                    gain[(k * m) + i] += (z[(j * unknowns) + k] - zMean[k]) * d;
                }

                for (var r = 0; r < m; r++)
                {
                    c[(i * m) + r] += (predicted[(j * m) + r] - dMean[r]) * d;
                }
            }
        }

        Taper(gain, z, zMean, unknowns, c, m);
        for (var i = 0; i < m; i++)
        {
            c[(i * m) + i] += alpha * errors[i] * errors[i];
            for (var r = 0; w is not null && r < m; r++)
            {
                c[(i * m) + r] += (alpha - 1) * w[(i * m) + r];
            }
        }

        return (gain, Cholesky.Factor(c, m));
    }

    // A few hundred members show correlations of 1/√N where there are none. Each is shrunk by the factor of least expected error, r²/(r² + (1 + r²)/N) (after Furrer and
    // Bengtsson 2007, J. Multivariate Analysis 98:227-255; from memory), r² freed of the 1/N that chance gives.
    private static void Taper(double[] gain, double[] z, double[] zMean, int unknowns, double[] c, int m)
    {
        var members = z.Length / unknowns;
        var variance = new double[unknowns];
        for (var i = 0; i < z.Length; i++)
        {
            var d = z[i] - zMean[i % unknowns];
            variance[i % unknowns] += d * d / (members - 1);
        }

        for (var k = 0; k < unknowns; k++)
        {
            for (var i = 0; i < m; i++)
            {
                var both = variance[k] * c[(i * m) + i];
                var r = both > 0 ? Math.Max(0, (gain[(k * m) + i] * gain[(k * m) + i] / both) - (1.0 / members)) : 0;
                gain[(k * m) + i] *= r / (r + ((1 + r) / members));
            }
        }
    }

    private static double[] Means(double[] values, int width)
    {
        var means = new double[width];
        var rows = values.Length / width;
        for (var i = 0; i < values.Length; i++)
        {
            means[i % width] += values[i] / rows;
        }

        return means;
    }
}
