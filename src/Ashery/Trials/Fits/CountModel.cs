using Ashery.Trials.Chances;

namespace Ashery.Trials.Fits;

/// <summary>
/// Counts with the logarithm of their mean linear in the model, by iteratively reweighted least squares (Nelder and Wedderburn 1972). With a finite
/// <see cref="Theta"/> they vary more than chance, by mean²/θ (negative binomial); without one they are Poisson.
/// </summary>
internal sealed class CountModel
{
    private const int MostSteps = 100;

    private CountModel(ModelMatrix matrix, double[] y, double theta)
    {
        Matrix = matrix;
        Theta = theta;
        Means = [.. y.Select(v => double.IsPositiveInfinity(theta) ? v + 0.1 : v + (v == 0 ? 1.0 / 6 : 0))];
        Iterate(y);
    }

    public ModelMatrix Matrix { get; }

    /// <summary>Shape of the gamma spread between pots; infinite for Poisson.</summary>
    public double Theta { get; }

    public double[] Means { get; private set; }

    public LeastSquares Fit { get; private set; } = null!;

    public int Df => Means.Length - Fit.Rank;

    public double Deviance { get; private set; }

    /// <summary>False when the steps went on to the end, as they do when a mean runs off to nothing.</summary>
    public bool Settled { get; private set; }

    public double StandardError(double[] l) => Math.Sqrt(Fit.Covariance(l, l));

    public double Pearson(double[] y)
    {
        var sum = 0.0;
        for (var i = 0; i < y.Length; i++)
        {
            sum += (y[i] - Means[i]) * (y[i] - Means[i]) / (Means[i] * (1 + (Means[i] / Theta)));
        }

        return sum;
    }

    /// <summary>
    /// What the squared standard errors are multiplied by, since a spread found by maximum likelihood from few pots is too small: Pearson's X² over its
    /// degrees of freedom, never below 1 (McCullagh and Nelder 1989, section 4.5; Lund and others 2012 for the negative binomial; from memory).
    /// </summary>
    public double Scale(double[] y) => Df > 0 ? Math.Max(1, Pearson(y) / Df) : double.NaN;

    /// <summary>ln of the likelihood, constants included.</summary>
    public double LogLikelihood(double[] y)
    {
        var sum = 0.0;
        for (var i = 0; i < y.Length; i++)
        {
            var (v, m) = (y[i], Means[i]);
            sum += double.IsPositiveInfinity(Theta)
                ? (v * Math.Log(m)) - m - Laws.LogGamma(v + 1)
                : Laws.LogGamma(Theta + v) - Laws.LogGamma(Theta) - Laws.LogGamma(v + 1) - (Theta * Math.Log(1 + (m / Theta))) + (v == 0 ? 0 : v * Math.Log(m / (m + Theta)));
        }

        return sum;
    }

    public static CountModel Poisson(ModelMatrix matrix, double[] y) => new(matrix, y, double.PositiveInfinity);

    public static CountModel NegativeBinomial(ModelMatrix matrix, double[] y, double theta) => new(matrix, y, theta);

    private void Iterate(double[] y)
    {
        var n = y.Length;
        var (z, root, eta) = (new double[n], new double[n], new double[n]);
        for (var i = 0; i < n; i++)
        {
            eta[i] = Math.Log(Means[i]);
        }

        var before = double.PositiveInfinity;
        for (var step = 0; step < MostSteps; step++)
        {
            for (var i = 0; i < n; i++)
            {
                z[i] = eta[i] + ((y[i] - Means[i]) / Means[i]);
                root[i] = Math.Sqrt(Means[i] / (1 + (Means[i] / Theta)));
            }

            Fit = new(Matrix.Columns, z, root);
            for (var i = 0; i < n; i++)
            {
                var sum = 0.0;
                for (var c = 0; c < Fit.Coefficients.Length; c++)
                {
                    sum += Fit.Aliased[c] ? 0 : Fit.Coefficients[c] * Matrix.Columns[c][i];
                }

                // A mean of nothing at all is kept off zero: its logarithm has no end.
                eta[i] = Math.Clamp(sum, -20, 20);
                Means[i] = Math.Exp(eta[i]);
            }

            Deviance = DevianceOf(y);
            if (Math.Abs(Deviance - before) < 1e-11 * (Math.Abs(Deviance) + 0.1))
            {
                Settled = true;
                return;
            }

            before = Deviance;
        }
    }

    private double DevianceOf(double[] y)
    {
        var sum = 0.0;
        for (var i = 0; i < y.Length; i++)
        {
            var (v, m) = (y[i], Means[i]);
            var log = v == 0 ? 0 : v * Math.Log(v / m);
            sum += double.IsPositiveInfinity(Theta) ? log - (v - m) : log - ((v + Theta) * Math.Log((v + Theta) / (m + Theta)));
        }

        return 2 * sum;
    }
}
