namespace Ashery.Trials.Fits;

/// <summary>
/// Repeated measurements: each pot has its own level, drawn with variance γσ² about the model, beside a residual of σ². γ by restricted maximum
/// likelihood (Patterson and Thompson 1971; the profile in Pinheiro and Bates 2000, chapter 2; from memory), fixed effects by generalised least squares.
/// </summary>
internal sealed class RandomIntercept
{
    private readonly double[,] inverse;

    public RandomIntercept(IReadOnlyList<double[]> columns, double[] y, IReadOnlyList<int> pots)
    {
        // ln γ by golden section: the profile has one top; its lower end stands for no spread of pots at all.
        const double Golden = 0.6180339887498949;
        double low = Math.Log(1e-8), high = Math.Log(1e5);
        var (a, b) = (high - (Golden * (high - low)), low + (Golden * (high - low)));
        var (fa, fb) = (Profile(columns, y, pots, Math.Exp(a)).LogLikelihood, Profile(columns, y, pots, Math.Exp(b)).LogLikelihood);
        while (high - low > 1e-4)
        {
            if (fa > fb)
            {
                (high, b, fb) = (b, a, fa);
                a = high - (Golden * (high - low));
                fa = Profile(columns, y, pots, Math.Exp(a)).LogLikelihood;
            }
            else
            {
                (low, a, fa) = (a, b, fb);
                b = low + (Golden * (high - low));
                fb = Profile(columns, y, pots, Math.Exp(b)).LogLikelihood;
            }
        }

        // The top is flat: the last digits come from the root of its slope, by Newton's steps over differences.
        var top = (low + high) / 2;
        const double Step = 3e-4;
        for (var i = 0; i < 3; i++)
        {
            var (left, at, right) = (Profile(columns, y, pots, Math.Exp(top - Step)).LogLikelihood, Profile(columns, y, pots, Math.Exp(top)).LogLikelihood, Profile(columns, y, pots, Math.Exp(top + Step)).LogLikelihood);
            var bend = left - (2 * at) + right;
            top += bend < 0 ? Math.Clamp(Step / 2 * (left - right) / bend, -0.01, 0.01) : 0;
        }

        var gamma = Math.Exp(top);
        gamma = gamma < 1e-7 ? 0 : gamma;
        var best = Profile(columns, y, pots, gamma);
        (Coefficients, inverse, ResidualVariance, LogLikelihood) = (best.Coefficients, best.Inverse, best.Variance, best.LogLikelihood);
        PotVariance = gamma * ResidualVariance;
    }

    public double[] Coefficients { get; }

    public double ResidualVariance { get; }

    /// <summary>Variance of the pots' own levels.</summary>
    public double PotVariance { get; }

    /// <summary>Restricted, constants included.</summary>
    public double LogLikelihood { get; }

    public double Value(double[] l) => l.Zip(Coefficients, static (w, c) => w * c).Sum();

    public double StandardError(double[] l)
    {
        var sum = 0.0;
        for (var i = 0; i < l.Length; i++)
        {
            for (var j = 0; j < l.Length; j++)
            {
                sum += l[i] * inverse[i, j] * l[j];
            }
        }

        return Math.Sqrt(sum * ResidualVariance);
    }

    private static (double LogLikelihood, double[] Coefficients, double[,] Inverse, double Variance) Profile(IReadOnlyList<double[]> columns, double[] y, IReadOnlyList<int> pots, double gamma)
    {
        // V⁻¹ = I − γ/(1 + γ n) J for each pot, so that only sums over pots are needed.
        var (n, p, groups) = (y.Length, columns.Count, pots.Max() + 1);
        var sums = new double[groups, p + 1];
        var size = new int[groups];
        for (var i = 0; i < n; i++)
        {
            size[pots[i]]++;
            sums[pots[i], p] += y[i];
            for (var c = 0; c < p; c++)
            {
                sums[pots[i], c] += columns[c][i];
            }
        }

        var m = new double[p + 1, p + 1];
        for (var a = 0; a <= p; a++)
        {
            for (var b = 0; b <= a; b++)
            {
                var (x, z) = (a == p ? y : columns[a], b == p ? y : columns[b]);
                var sum = 0.0;
                for (var i = 0; i < n; i++)
                {
                    sum += x[i] * z[i];
                }

                for (var g = 0; g < groups; g++)
                {
                    sum -= gamma / (1 + (gamma * size[g])) * sums[g, a] * sums[g, b];
                }

                m[a, b] = m[b, a] = sum;
            }
        }

        var found = Inverse(m, p, out var logDeterminant);
        var coefficients = new double[p];
        var rest = m[p, p];
        for (var a = 0; a < p; a++)
        {
            for (var b = 0; b < p; b++)
            {
                coefficients[a] += found[a, b] * m[b, p];
            }

            rest -= coefficients[a] * m[a, p];
        }

        var df = n - p;
        var variance = rest / df;
        var logs = logDeterminant;
        for (var g = 0; g < groups; g++)
        {
            logs += Math.Log(1 + (gamma * size[g]));
        }

        return (-0.5 * ((df * (Math.Log(2 * Math.PI * variance) + 1)) + logs), coefficients, found, variance);
    }

    // Gauss-Jordan of a positive definite matrix, with its ln determinant.
    private static double[,] Inverse(double[,] m, int p, out double logDeterminant)
    {
        var a = new double[p, 2 * p];
        for (var i = 0; i < p; i++)
        {
            for (var j = 0; j < p; j++)
            {
                a[i, j] = m[i, j];
            }

            a[i, p + i] = 1;
        }

        logDeterminant = 0;
        for (var k = 0; k < p; k++)
        {
            var pivot = a[k, k];
            logDeterminant += Math.Log(pivot);
            for (var j = 0; j < 2 * p; j++)
            {
                a[k, j] /= pivot;
            }

            for (var i = 0; i < p; i++)
            {
                var factor = a[i, k];
                for (var j = 0; i != k && factor != 0 && j < 2 * p; j++)
                {
                    a[i, j] -= factor * a[k, j];
                }
            }
        }

        var found = new double[p, p];
        for (var i = 0; i < p; i++)
        {
            for (var j = 0; j < p; j++)
            {
                found[i, j] = a[i, p + j];
            }
        }

        return found;
    }
}
