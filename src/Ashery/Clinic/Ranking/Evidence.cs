using Ashery.Clinic.Knowledge;

namespace Ashery.Clinic.Ranking;

/// <summary>One answer made ready: the log-odds of having it under each cause, and how far those lie apart.</summary>
/// <param name="Question">Place of the question.</param>
/// <param name="Weights">For each choice, how well it fits what was said: 1 for "it may be this", 0 for "not this".</param>
/// <param name="Log">ln P(answer | cause) for each cause.</param>
/// <param name="Spread">Standard deviation of <paramref name="Log"/> over the causes, weighted with how common they are: 0 when all share it.</param>
internal sealed record Evidence(int Question, double[] Weights, double[] Log, double Spread)
{
    /// <param name="knowledge">The rows.</param>
    /// <param name="odds">Odds of the question's choices under each cause.</param>
    /// <param name="question">Place of the question.</param>
    /// <param name="weights">As in <see cref="Weights"/>; at least one above 0.</param>
    /// <param name="trust">1 for what was seen; less for what a model says, the rest is taken for any ailing plant.</param>
    public static Evidence Of(ClinicKnowledge knowledge, double[] odds, int question, double[] weights, double trust = 1)
    {
        var n = weights.Length;
        var causes = knowledge.Causes.Length;

        // The last cause, "something else", is the average ailing plant.
        var anyPlant = Fit(odds, (causes - 1) * n, weights);
        var log = new double[causes];
        for (var c = 0; c < causes; c++)
        {
            log[c] = Math.Log((trust * Fit(odds, c * n, weights)) + ((1 - trust) * anyPlant));
        }

        return new(question, weights, log, SpreadOf(log, knowledge.Prior));
    }

    public static double SpreadOf(double[] log, double[] prior)
    {
        double mean = 0, square = 0;
        for (var c = 0; c < log.Length; c++)
        {
            mean += prior[c] * log[c];
        }

        for (var c = 0; c < log.Length; c++)
        {
            square += prior[c] * (log[c] - mean) * (log[c] - mean);
        }

        return Math.Sqrt(square);
    }

    private static double Fit(double[] odds, int start, double[] weights)
    {
        var sum = 0.0;
        for (var a = 0; a < weights.Length; a++)
        {
            sum += weights[a] * odds[start + a];
        }

        return sum;
    }
}
