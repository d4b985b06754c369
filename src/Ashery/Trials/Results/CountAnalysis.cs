using Ashery.Trials.Chances;
using Ashery.Trials.Designs;
using Ashery.Trials.Fits;

namespace Ashery.Trials.Results;

/// <summary>
/// Counts: the negative binomial model with blocks, which is the Poisson model where counts scatter no more than chance. Intervals and p by Student's t with the
/// residual degrees of freedom, since the spread is known from few pots only, and for the same reason squared errors are scaled up (<see cref="CountModel.Scale"/>); several comparisons by Holm's steps, their intervals by Bonferroni's share.
/// </summary>
internal static class CountAnalysis
{
    public static TrialReport Of(TrialReport report, IReadOnlyList<(string Feed, string Against)> pairs, IReadOnlyList<string> present, List<TrialWarning> warnings)
    {
        // Feeds and blocks that bore nothing at all have no logarithm: they are judged by permutation alone, and blocks say nothing.
        var bare = present.Where(f => report.Pots.Where(p => p.Treatment == f).All(static p => p.Value == 0)).ToList();
        var full = present.Except(bare).ToList();
        var empty = report.Pots.GroupBy(static p => p.Block).Where(static g => g.All(static p => p.Value == 0)).Select(static g => g.Key).ToHashSet();
        ResultWarnings.Bare(report.Trial, bare, warnings);
        var rows = new Rows([.. report.Pots.Where(p => full.Contains(p.Treatment) && !empty.Contains(p.Block))], full);
        if (full.Count < 2)
        {
            return report with { Comparisons = [.. pairs.Select(static p => Without(p.Feed, p.Against))] };
        }

        var matrix = rows.WithFeeds();
        var poisson = CountModel.Poisson(matrix, rows.Y);
        var kind = new FittedModel { Kind = "poisson", Blocks = rows.BlockCount > 1, ResidualDf = poisson.Df };
        if (poisson.Df < 1)
        {
            ResultWarnings.NoResiduals(warnings);
            return report with { Model = kind };
        }

        var spread = NegativeBinomial.Fit(matrix, rows.Y);
        var level = report.Limit.Level;
        var dispersion = poisson.Pearson(rows.Y) / poisson.Df;
        var df = poisson.Df;
        var (wald, feedDf) = Wald(spread.Model, matrix.Term("feeds"));
        var f = wald / Math.Max(1, feedDf) / spread.Model.Scale(rows.Y);
        return report with
        {
            Comparisons = Compare(rows, matrix, spread.Model, pairs, level, df),
            Overall = feedDf > 0 ? new(f, feedDf, df, Laws.FTail(f, feedDf, df), double.NaN, 0, false) : null,
            Model = kind with
            {
                Kind = double.IsPositiveInfinity(spread.Model.Theta) ? "poisson" : "negativeBinomial",
                Family = pairs.Count > 1 ? "holm" : "none",
                Theta = double.IsPositiveInfinity(spread.Model.Theta) ? null : spread.Model.Theta,
                ThetaError = spread.ThetaError,
                PoissonDeviance = poisson.Deviance,
                PoissonDispersion = dispersion,
                Scale = spread.Model.Scale(rows.Y),
            },
            Factors = FactorAnalysis.Effects(report.Trial, rows, level),
        };
    }

    // βᵀ V⁻¹ β of the feeds after the blocks: what the last weighted step put along their columns.
    private static (double Statistic, int Df) Wald(CountModel model, ModelTerm feeds)
    {
        var (sum, df) = (0.0, 0);
        for (var c = feeds.From; c < feeds.From + feeds.Count; c++)
        {
            sum += model.Fit.Effects[c] * model.Fit.Effects[c];
            df += model.Fit.Aliased[c] ? 0 : 1;
        }

        return (sum, df);
    }

    private static IReadOnlyList<Comparison> Compare(Rows rows, ModelMatrix matrix, CountModel model, IReadOnlyList<(string Feed, string Against)> pairs, double level, double df)
    {
        var limit = Criterion.Counts(level, pairs.Count, df);
        var term = matrix.Term("feeds");
        var raw = pairs.Select(pair =>
        {
            var (a, b) = (rows.Index(pair.Feed), rows.Index(pair.Against));
            if (a < 0 || b < 0)
            {
                return Without(pair.Feed, pair.Against);
            }

            var l = matrix.Difference(term, a, b);
            if (l.Where((w, i) => w != 0 && model.Fit.Aliased[i]).Any())
            {
                return Without(pair.Feed, pair.Against);
            }

            var (log, se) = (model.Fit.Value(l), model.StandardError(l) * Math.Sqrt(model.Scale(rows.Y)));
            return new Comparison(pair.Feed, pair.Against, Math.Exp(log), Math.Exp(log - (limit * se)), Math.Exp(log + (limit * se)), null, Laws.StudentBothTails(log / se, df), se, null);
        }).ToList();
        var adjusted = Holm.Adjust([.. raw.Select(static c => c.PAlone ?? double.NaN)]);
        return [.. raw.Select((c, i) => c with { P = c.PAlone is null ? null : adjusted[i] })];
    }

    private static Comparison Without(string feed, string against) => new(feed, against, null, null, null, null, null, null, null);
}
