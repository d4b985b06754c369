using Ashery.Trials.Chances;

namespace Ashery.Trials.Designs;

/// <summary>How large |t| must be for a difference to count, when all comparisons of a trial are judged together.</summary>
internal static class Criterion
{
    /// <summary>How many comparisons there are: each feed with the control, or all pairs.</summary>
    public static int Comparisons(int treatments, bool control) => control ? treatments - 1 : treatments * (treatments - 1) / 2;

    /// <summary>Of a linear model: Dunnett's against a control, Tukey's of all pairs, Student's of one.</summary>
    public static double Linear(double alpha, IReadOnlyList<double> counts, int? control, double df)
    {
        if (counts.Count == 2)
        {
            return Laws.StudentBothSides(alpha, df);
        }

        return control is { } c
            ? Families.Quantile(t => Families.AgainstControl(t, counts[c], [.. counts.Where((_, i) => i != c)], df), 1 - alpha)
            : Families.Quantile(t => Families.AllPairs(t, counts.Count, df), 1 - alpha);
    }

    /// <summary>Of a count model: Bonferroni's share for each comparison, by Student's t with the residual degrees of freedom, since pots are few.</summary>
    public static double Counts(double alpha, int comparisons, double df) => Laws.StudentBothSides(alpha / comparisons, df);
}
