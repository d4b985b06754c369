using System.Globalization;
using System.Text;
using Ashery.Clinic.Knowledge;
using Ashery.Clinic.Ranking;

namespace Ashery.Tests.Clinic;

/// <summary>Are the probabilities honest on plants of a world that is not quite the clinic's?</summary>
public class CalibrationTests
{
    private const int Cases = 10_000;

    [Fact]
    public void Expected_calibration_error_is_below_five_hundredths_and_the_table_is_the_documented_one()
    {
        var (first, every) = Run(seed: 1);
        Assert.True(first.Error < 0.05, FormattableString.Invariant($"first cause {first.Error}"));
        Assert.True(every.Error < 0.05, FormattableString.Invariant($"every cause {every.Error}"));

        var table = new StringBuilder("| said | cases | mean said | came true |\n|---|---|---|---|\n");
        foreach (var (bin, count, said, happened) in first.Rows)
        {
            table.Append(CultureInfo.InvariantCulture, $"| {bin / 10.0:0.0} to {(bin + 1) / 10.0:0.0} | {count} | {said:0.000} | {happened:0.000} |\n");
        }

        Assert.Contains(table.ToString(), RepositoryFile.Read("docs/science/clinic.md"), StringComparison.Ordinal);
    }

    [Fact]
    public void Counting_every_answer_in_full_would_be_less_honest()
    {
        // The check of the check: without the weights of correlated answers and without noise the same cases come out overconfident, and the error shows it.
        var sure = ClinicData.Shipped with { Model = ClinicData.Shipped.Model with { Correlation = 0, Noise = 0.001, TestNoise = 0.001 } };
        var naive = new ClinicKnowledge(sure);
        var (honest, _) = Run(seed: 2, count: 3000);
        var (bold, _) = Run(seed: 2, count: 3000, judge: naive);
        Assert.True(bold.Error > 2 * honest.Error, FormattableString.Invariant($"{bold.Error} {honest.Error}"));
    }

    private static (Reliability First, Reliability Every) Run(int seed, int count = Cases, ClinicKnowledge? judge = null)
    {
        var knowledge = ClinicKnowledge.Default;
        judge ??= knowledge;
        var logPrior = Array.ConvertAll(judge.Prior, Math.Log);
        var (first, every) = (new Reliability(), new Reliability());
        foreach (var (cause, answers) in new DrawnCases(knowledge, seed).Draw(count))
        {
            var own = ReferenceEquals(judge, knowledge) ? answers : [.. answers.Select(a => Evidence.Of(judge, judge.Odds(a.Question), a.Question, a.Weights))];
            var odds = Posterior.Of(judge, logPrior, own).Odds;
            var best = Array.IndexOf(odds, odds.Max());
            first.Add(odds[best], best == cause);
            for (var c = 0; c < odds.Length; c++)
            {
                if (odds[c] >= 0.01)
                {
                    every.Add(odds[c], c == cause);
                }
            }
        }

        return (first, every);
    }
}
