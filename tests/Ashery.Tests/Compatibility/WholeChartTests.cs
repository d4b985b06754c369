using System.Globalization;
using Ashery.Compatibility;
using Ashery.Materials;

namespace Ashery.Tests.Compatibility;

/// <summary>What must hold for every pair of the catalogue.</summary>
public class WholeChartTests
{
    private static readonly IReadOnlyList<Material> Everything = MaterialCatalogue.Default.All;

    private static readonly Lazy<IReadOnlyList<PairVerdict>> Pairs = new(static () => CompatibilityChart.Default.JudgeAll(Everything));

    [Fact]
    public void Every_pair_has_a_reason_and_a_source_for_each_of_the_three_questions()
    {
        Assert.Equal(Everything.Count * (Everything.Count - 1) / 2, Pairs.Value.Count);
        Assert.All(Pairs.Value, pair => Assert.All(Answers(pair), answer =>
        {
            Assert.False(string.IsNullOrWhiteSpace(answer.Reason));
            Assert.False(string.IsNullOrWhiteSpace(answer.Source));
            Assert.DoesNotContain("not listed", answer.Source, StringComparison.Ordinal);
        }));
    }

    [Fact]
    public void A_limited_verdict_states_its_limit_and_no_other_does() =>
        Assert.All(Pairs.Value, pair => Assert.All(Answers(pair), answer =>
            Assert.True(answer.Verdict == Verdict.Limited == !string.IsNullOrEmpty(answer.Limit), $"{pair.A} {pair.B}: {answer}")));

    [Fact]
    public void Only_the_unknown_stand_on_nothing() =>
        Assert.All(Pairs.Value, pair => Assert.All(Answers(pair), answer =>
            Assert.True(answer.Verdict == Verdict.Unknown == (answer.Basis == VerdictBasis.None), $"{pair.A} {pair.B}: {answer}")));

    [Fact]
    public void The_order_of_the_two_never_matters() =>
        Assert.All(Pairs.Value, pair =>
        {
            var turned = CompatibilityChart.Default.Judge(Find(pair.B), Find(pair.A));
            Assert.Equal(Answers(pair), Answers(turned));
            Assert.Equal((pair.A, pair.B), (turned.B, turned.A));
        });

    [Fact]
    public void What_may_be_kept_may_be_mixed_today() =>
        Assert.All(Pairs.Value, pair => Assert.True(pair.DryStored.Verdict != Verdict.Fine || pair.DryToday.Verdict == Verdict.Fine, $"{pair.A} {pair.B}"));

    // The counts of docs/science/compatibility.md are those of the chart, so the page cannot fall behind.
    [Fact]
    public void The_counts_in_the_documentation_are_those_of_the_chart()
    {
        var page = RepositoryFile.Read("docs/science/compatibility.md");
        foreach (var (question, pick) in new (string, Func<PairVerdict, Judgement>)[]
            { ("dry today", p => p.DryToday), ("dry and stored", p => p.DryStored), ("in solution", p => p.InSolution) })
        {
            foreach (var basis in Enum.GetValues<VerdictBasis>())
            {
                var counts = Enum.GetValues<Verdict>().Select(v => Pairs.Value.Count(p => pick(p).Verdict == v && pick(p).Basis == basis)).ToArray();
                if (counts.Any(static c => c > 0))
                {
                    var row = string.Create(CultureInfo.InvariantCulture, $"| {question} | {basis.ToString().ToLowerInvariant()} | {counts[0]} | {counts[1]} | {counts[2]} | {counts[3]} |");
                    Assert.Contains(row, page, StringComparison.Ordinal);
                }
            }
        }
    }

    private static Judgement[] Answers(PairVerdict pair) => [pair.DryToday, pair.DryStored, pair.InSolution];

    private static Material Find(string id) => MaterialCatalogue.Default.Find(id)!;
}
