namespace Ashery.Clinic.Cases;

/// <summary>An answer made ready: which choices it may be.</summary>
/// <param name="Question">Place of the question.</param>
/// <param name="Weights">How well each choice fits.</param>
/// <param name="Given">What was said.</param>
/// <param name="Trust">1 for what was seen or measured, less for what a model says.</param>
internal sealed record CaseAnswer(int Question, double[] Weights, string Given, double Trust = 1)
{
    /// <summary>Two answers to one question: what both allow; where that is nothing, either.</summary>
    public CaseAnswer And(CaseAnswer other)
    {
        var both = new double[Weights.Length];
        var either = new double[Weights.Length];
        for (var i = 0; i < both.Length; i++)
        {
            both[i] = Weights[i] * other.Weights[i];
            either[i] = Math.Max(Weights[i], other.Weights[i]);
        }

        // The words are put in order of the alphabet, so that the order of answers cannot show either.
        var (first, second) = string.CompareOrdinal(Given, other.Given) <= 0 ? (Given, other.Given) : (other.Given, Given);
        var weights = Array.Exists(both, static w => w > 0.05) ? both : either;
        return new(Question, weights, first == second ? first : $"{first}; {second}", Math.Max(Trust, other.Trust));
    }
}
