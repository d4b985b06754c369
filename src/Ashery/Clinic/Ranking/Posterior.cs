using Ashery.Clinic.Knowledge;

namespace Ashery.Clinic.Ranking;

/// <summary>
/// Bayes' rule over all causes: ln P(c | answers) = ln P(c) + sum over groups of w(g) times the sum of ln P(answer | c) + constant.
/// Answers of one group say in part the same, so they are weighed as fewer: w = 1 / (1 + (n - 1) rho), the design effect of
/// correlated observations (Kish 1965), with n = (sum s)² / sum s² counting each answer by the spread s of what it says, so that an answer which
/// tells nothing takes no weight from the others. Answers are taken in the order of the questions: the order they were given in cannot matter.
/// </summary>
internal sealed class Posterior
{
    private readonly ClinicKnowledge knowledge;
    private readonly double[]?[] sums;
    private readonly double[] spreads;
    private readonly double[] squares;
    private readonly double[] log;

    private Posterior(ClinicKnowledge knowledge, double[] logPrior)
    {
        this.knowledge = knowledge;
        sums = new double[knowledge.Groups][];
        spreads = new double[knowledge.Groups];
        squares = new double[knowledge.Groups];
        log = (double[])logPrior.Clone();
        Odds = new double[log.Length];
    }

    /// <summary>P(cause | answers); sums to 1.</summary>
    public double[] Odds { get; }

    /// <summary>Doubt left, bits: the entropy of <see cref="Odds"/>.</summary>
    public double Doubt => Entropy(Odds);

    public static Posterior Of(ClinicKnowledge knowledge, double[] logPrior, IReadOnlyList<Evidence> evidence, int without = -1)
    {
        var posterior = new Posterior(knowledge, logPrior);
        for (var q = 0; q < evidence.Count; q++)
        {
            if (q != without)
            {
                posterior.Take(evidence[q]);
            }
        }

        posterior.Finish();
        return posterior;
    }

    /// <summary>Weight of the answers of a group when this one is taken too (spread 0 for what the group has now).</summary>
    public double Weight(int group, double spread)
    {
        var sum = spreads[group] + spread;
        var square = squares[group] + (spread * spread);
        return square <= 0 ? 1 : 1 / (1 + (((sum * sum / square) - 1) * knowledge.Data.Model.Correlation));
    }

    /// <summary>ln of the unscaled odds when one more answer of a group is taken.</summary>
    public void With(int group, double[] more, double spread, double[] into)
    {
        var (before, after) = (Weight(group, 0), Weight(group, spread));
        var sum = sums[group];
        for (var c = 0; c < into.Length; c++)
        {
            into[c] = log[c] + (after * more[c]) + (sum is null ? 0 : (after - before) * sum[c]);
        }
    }

    /// <summary>Scales ln odds to probabilities, in place.</summary>
    public static void Scale(double[] log)
    {
        var most = double.NegativeInfinity;
        foreach (var value in log)
        {
            most = Math.Max(most, value);
        }

        var sum = 0.0;
        for (var c = 0; c < log.Length; c++)
        {
            sum += log[c] = Math.Exp(log[c] - most);
        }

        for (var c = 0; c < log.Length; c++)
        {
            log[c] /= sum;
        }
    }

    public static double Entropy(double[] odds)
    {
        var bits = 0.0;
        foreach (var p in odds)
        {
            // Below this an answer's share is less than a millionth of a bit.
            if (p > 1e-8)
            {
                bits -= p * Math.Log2(p);
            }
        }

        return bits;
    }

    private void Take(Evidence one)
    {
        var group = knowledge.GroupOf[one.Question];
        var sum = sums[group] ??= new double[log.Length];
        spreads[group] += one.Spread;
        squares[group] += one.Spread * one.Spread;
        for (var c = 0; c < sum.Length; c++)
        {
            sum[c] += one.Log[c];
        }
    }

    private void Finish()
    {
        for (var g = 0; g < sums.Length; g++)
        {
            if (sums[g] is { } sum)
            {
                var weight = Weight(g, 0);
                for (var c = 0; c < sum.Length; c++)
                {
                    log[c] += weight * sum[c];
                }
            }
        }

        Array.Copy(log, Odds, log.Length);
        Scale(Odds);
    }
}
