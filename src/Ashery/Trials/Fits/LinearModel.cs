using Ashery.Trials.Chances;

namespace Ashery.Trials.Fits;

/// <summary>A row of an analysis of variance, each term after the ones above it.</summary>
/// <param name="Term">What it is of.</param>
/// <param name="Df">Degrees of freedom.</param>
/// <param name="SumOfSquares">Taken by the term.</param>
/// <param name="F">Its mean square over the residual one; null for the residuals.</param>
/// <param name="P">Chance of such an F or a larger one when the term does nothing.</param>
public sealed record AnovaRow(string Term, int Df, double SumOfSquares, double? F, double? P);

/// <summary>A linear model with equal, independent residuals.</summary>
internal sealed class LinearModel
{
    private readonly ModelMatrix matrix;

    public LinearModel(ModelMatrix matrix, double[] y)
    {
        this.matrix = matrix;
        Fit = new(matrix.Columns, y);
        Df = y.Length - Fit.Rank;
        Variance = Df > 0 ? Fit.Rss / Df : double.NaN;
    }

    public LeastSquares Fit { get; }

    public int Df { get; }

    public double Variance { get; }

    public double StandardError(double[] l) => Math.Sqrt(Variance * Fit.Covariance(l, l));

    /// <summary>Sequential sums of squares; terms that were left out whole have no row.</summary>
    public IReadOnlyList<AnovaRow> Anova()
    {
        var rows = new List<AnovaRow>();
        foreach (var term in matrix.Terms)
        {
            var df = 0;
            var squares = 0.0;
            for (var c = term.From; c < term.From + term.Count; c++)
            {
                df += Fit.Aliased[c] ? 0 : 1;
                squares += Fit.Effects[c] * Fit.Effects[c];
            }

            if (df > 0)
            {
                double? f = Df > 0 && Variance > 0 ? squares / df / Variance : null;
                rows.Add(new(term.Name, df, squares, f, f is { } value ? Laws.FTail(value, df, Df) : null));
            }
        }

        rows.Add(new("residuals", Df, Fit.Rss, null, null));
        return rows;
    }
}
