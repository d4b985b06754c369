using Ashery.Trials.Chances;
using Ashery.Trials.Fits;

namespace Ashery.Trials.Results;

/// <summary>Feeds that are combinations of factors: what each factor does, and what they do together.</summary>
internal static class FactorAnalysis
{
    /// <summary>Blocks, then each factor, then their products: sequential sums of squares of the full factorial.</summary>
    public static IReadOnlyList<AnovaRow> Anova(Trial trial, Rows rows)
    {
        var factors = trial.Treatments[0].Factors.Keys.ToList();
        var matrix = Main(trial, rows, factors);

        // A product after all smaller ones: N:P, N:K, P:K, N:P:K.
        for (var order = 2; order <= factors.Count; order++)
        {
            foreach (var set in Sets(factors.Count, order))
            {
                matrix.Together(string.Join(':', set[..^1].Select(i => factors[i])), factors[set[^1]]);
            }
        }

        return new LinearModel(matrix, rows.Y).Anova();
    }

    /// <summary>Each level against the factor's first, from the model of factors without their products.</summary>
    public static IReadOnlyList<FactorEffect> Effects(Trial trial, Rows rows, double level)
    {
        var factors = trial.Treatments[0].Factors.Keys.ToList();
        if (factors.Count == 0)
        {
            return [];
        }

        var matrix = Main(trial, rows, factors);
        var count = trial.Measure.Kind == MeasureKind.Count;
        Func<double[], double> value, error;
        bool[] aliased;
        int df;
        if (count)
        {
            var model = NegativeBinomial.Fit(matrix, rows.Y).Model;
            var scale = Math.Sqrt(model.Scale(rows.Y));
            (value, error, aliased, df) = (model.Fit.Value, l => scale * model.StandardError(l), model.Fit.Aliased, model.Df);
        }
        else
        {
            var model = new LinearModel(matrix, rows.Y);
            (value, error, aliased, df) = (model.Fit.Value, model.StandardError, model.Fit.Aliased, model.Df);
        }

        if (df < 1)
        {
            return [];
        }

        var limit = Laws.StudentBothSides(level, df);
        var effects = new List<FactorEffect>();
        foreach (var factor in factors)
        {
            var levels = Levels(trial, factor);
            for (var i = 1; i < levels.Count; i++)
            {
                var l = matrix.Difference(matrix.Term(factor), i, 0);
                if (l.Where((w, c) => w != 0 && aliased[c]).Any())
                {
                    continue;
                }

                var (e, se) = (value(l), error(l));
                var p = Laws.StudentBothTails(e / se, df);
                effects.Add(count
                    ? new(factor, levels[i], levels[0], Math.Exp(e), Math.Exp(e - (limit * se)), Math.Exp(e + (limit * se)), p)
                    : new(factor, levels[i], levels[0], e, e - (limit * se), e + (limit * se), p));
            }
        }

        return effects;
    }

    private static ModelMatrix Main(Trial trial, Rows rows, List<string> factors)
    {
        var matrix = rows.Base();
        foreach (var factor in factors)
        {
            var levels = Levels(trial, factor);
            matrix.Factor(factor, [.. rows.Feed.Select(f => levels.IndexOf(trial.Find(rows.Feeds[f])!.Factors[factor]))], levels.Count);
        }

        return matrix;
    }

    private static List<string> Levels(Trial trial, string factor) => [.. trial.Treatments.Select(t => t.Factors[factor]).Distinct(StringComparer.Ordinal)];

    private static IEnumerable<int[]> Sets(int n, int size)
    {
        var set = Enumerable.Range(0, size).ToArray();
        while (true)
        {
            yield return [.. set];
            var i = size - 1;
            while (i >= 0 && set[i] == n - size + i)
            {
                i--;
            }

            if (i < 0)
            {
                yield break;
            }

            set[i]++;
            for (var j = i + 1; j < size; j++)
            {
                set[j] = set[j - 1] + 1;
            }
        }
    }
}
