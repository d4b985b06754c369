namespace Ashery.Clinic.Cases;

/// <summary>An answer made ready: which choices it may be.</summary>
/// <param name="Question">Place of the question.</param>
/// <param name="Weights">How well each choice fits.</param>
/// <param name="Given">What was said.</param>
/// <param name="Trust">1 for what was seen or measured, less for what a model says.</param>
internal sealed record CaseAnswer(int Question, double[] Weights, string Given, double Trust = 1)
{
    // Below this a choice is taken for shut out by one of the answers.
    private const double Allowed = 0.05;

    /// <summary>Several answers to one question: what all allow; where that is nothing, any. Their order cannot matter, in figures or in words.</summary>
    public static CaseAnswer Together(IReadOnlyList<CaseAnswer> answers)
    {
        if (answers.Count == 1)
        {
            return answers[0];
        }

        var sorted = answers.OrderBy(static a => a.Given, StringComparer.Ordinal).ThenBy(static a => string.Join(' ', a.Weights), StringComparer.Ordinal).ToList();
        var all = (double[])sorted[0].Weights.Clone();
        var any = (double[])sorted[0].Weights.Clone();
        foreach (var answer in sorted.Skip(1))
        {
            for (var i = 0; i < all.Length; i++)
            {
                all[i] *= answer.Weights[i];
                any[i] = Math.Max(any[i], answer.Weights[i]);
            }
        }

        return new(
            answers[0].Question, Array.Exists(all, static w => w > Allowed) ? all : any,
            string.Join("; ", sorted.Select(static a => a.Given).Distinct(StringComparer.Ordinal)), sorted.Max(static a => a.Trust));
    }
}
