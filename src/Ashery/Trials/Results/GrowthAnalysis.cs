using Ashery.Trials.Chances;
using Ashery.Trials.Designs;
using Ashery.Trials.Fits;

namespace Ashery.Trials.Results;

/// <summary>Measurements: a linear model with blocks; families by Tukey or Dunnett; a random level of each pot beside it when pots were measured often.</summary>
internal static class GrowthAnalysis
{
    public static TrialReport Of(TrialReport report, IReadOnlyList<(string Feed, string Against)> pairs, IReadOnlyList<string> present, IReadOnlyList<TrialReading> readings, List<TrialWarning> warnings)
    {
        var rows = new Rows([.. report.Pots.Where(p => present.Contains(p.Treatment))], present);
        var matrix = rows.WithFeeds();
        var model = new LinearModel(matrix, rows.Y);
        var kind = new FittedModel { Kind = "linear", Blocks = rows.BlockCount > 1, ResidualDf = model.Df };
        if (model.Df < 1)
        {
            ResultWarnings.NoResiduals(warnings);
            return report with { Model = kind };
        }

        var scale = rows.Y.Max(Math.Abs);
        if (!(model.Fit.Rss > 1e-18 * rows.Y.Length * scale * scale))
        {
            warnings.Add(new("no-scatter", "Pots that were fed alike do not differ at all, beyond what feed and block explain: figures like these are copied or rounded away, and no interval can be had from them.", Stops: true));
            return report with { Model = kind };
        }

        var family = Family(pairs.Count, report.Trial);
        var control = report.Trial.Control is { } c && present.Contains(c.Id) ? rows.Index(c.Id) : (int?)null;
        var level = report.Limit.Level;
        var comparisons = Compare(rows, matrix, pairs, control, level, model.Df, model.Fit.Value, model.StandardError, l => l.Where((w, i) => w != 0 && model.Fit.Aliased[i]).Any());
        var anova = report.Trial.Treatments[0].Factors.Count > 0 ? FactorAnalysis.Anova(report.Trial, rows) : model.Anova();
        var feeds = model.Anova().FirstOrDefault(static r => r.Term == "feeds");
        return report with
        {
            Comparisons = comparisons,
            Overall = feeds is { F: { } f, P: { } p } ? new(f, feeds.Df, model.Df, p, double.NaN, 0, false) : null,
            Model = kind with { Family = family, ResidualDeviation = Math.Sqrt(model.Variance), Anova = anova },
            Factors = FactorAnalysis.Effects(report.Trial, rows, level),
            Repeated = RepeatedAnalysis.Of(report, rows, pairs, control, readings),
        };
    }

    public static string Family(int pairs, Trial trial) => pairs < 2 ? "none" : trial.Control is null ? "tukey" : "dunnett";

    /// <summary>Each pair with its interval and p, held together.</summary>
    public static IReadOnlyList<Comparison> Compare(
        Rows rows, ModelMatrix matrix, IReadOnlyList<(string Feed, string Against)> pairs, int? control, double level, double df, Func<double[], double> value, Func<double[], double> error, Func<double[], bool> cannot)
    {
        var counts = rows.Counts();
        var limit = Criterion.Linear(level, counts, control, df);
        var term = matrix.Term("feeds");
        return [.. pairs.Select(pair =>
        {
            var l = matrix.Difference(term, rows.Index(pair.Feed), rows.Index(pair.Against));
            if (cannot(l))
            {
                return new Comparison(pair.Feed, pair.Against, null, null, null, null, null, null, null);
            }

            var (estimate, se) = (value(l), error(l));
            var t = Math.Abs(estimate / se);
            var alone = Laws.StudentBothTails(t, df);
            var p = counts.Length == 2 ? alone
                : control is { } c ? 1 - Families.AgainstControl(t, counts[c], [.. counts.Where((_, i) => i != c)], df)
                : 1 - Families.AllPairs(t, counts.Length, df);
            return new Comparison(pair.Feed, pair.Against, estimate, estimate - (limit * se), estimate + (limit * se), Math.Max(p, alone), alone, se, null);
        })];
    }
}
