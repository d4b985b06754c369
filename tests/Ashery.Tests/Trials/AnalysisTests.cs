using Ashery.Trials;
using Ashery.Trials.Results;
using CsCheck;

namespace Ashery.Tests.Trials;

/// <summary>What the analysis says of small trials, and when it says that it cannot.</summary>
public class AnalysisTests
{
    [Fact]
    public void One_pot_a_feed_proves_nothing() => Assert.Contains(Of(MeasureKind.Count, [[3], [30]]).Warnings, static w => w is { Id: "one-pot", Stops: true });

    [Fact]
    public void A_trial_that_bore_nothing_is_not_judged() => Assert.Contains(Of(MeasureKind.Count, [[0, 0, 0], [0, 0, 0]]).Warnings, static w => w is { Id: "all-zero", Stops: true });

    [Fact]
    public void A_feed_that_bore_nothing_has_no_ratio_but_a_permutation_p()
    {
        var report = Of(MeasureKind.Count, [[0, 0, 0, 0, 0, 0], [8, 9, 4, 7, 12, 5]]);
        Assert.Contains(report.Warnings, static w => w is { Id: "separation", Stops: false });
        var only = Assert.Single(report.Comparisons);
        Assert.Null(only.Estimate);
        Assert.Equal(2 / 64.0, only.PermutationP!.Value, 1e-12);
    }

    [Fact]
    public void Figures_without_scatter_are_not_judged() => Assert.Contains(Of(MeasureKind.Measurement, [[5, 5, 5], [7, 7, 7]]).Warnings, static w => w is { Id: "no-scatter", Stops: true });

    [Fact]
    public void A_lost_feed_is_said() => Assert.Contains(Of(MeasureKind.Measurement, [[5, 6, 5.5], [7, 8, 7.1], []]).Warnings, static w => w is { Id: "empty-feed", Stops: false });

    [Fact]
    public void Two_blocks_cannot_pass_a_permutation_test() => Assert.Contains(Of(MeasureKind.Measurement, [[5, 6], [7, 9]]).Warnings, static w => w.Id == "few-arrangements");

    /// <summary>Paired t test by hand: differences 2, 3, 1, 2, so mean 2, standard error 0.4082, t 4.899, 3 degrees of freedom; p 0.0163 by tables, and 2 of 16 sign changes.</summary>
    [Fact]
    public void Blocks_of_two_are_pairs()
    {
        var report = Of(MeasureKind.Measurement, [[5, 7, 4, 6], [7, 10, 5, 8]]);
        var only = Assert.Single(report.Comparisons);
        Assert.Equal(2, only.Estimate!.Value, 1e-9);
        Assert.Equal(0.4082, only.StandardError!.Value, 5e-5);
        Assert.Equal(0.0163, only.P!.Value, 5e-5);
        Assert.Equal(2 / 16.0, only.PermutationP!.Value, 1e-12);
    }

    [Fact]
    public void An_early_look_asks_for_more()
    {
        var request = Request(MeasureKind.Measurement, [[5, 7, 4, 6], [7, 10, 5, 8]]);
        var twice = request with { Trial = request.Trial with { Looks = 2 } };
        var (early, last) = (TrialAnalysis.Of(twice with { Look = 1 }).Value!, TrialAnalysis.Of(twice).Value!);
        Assert.True(early.Comparisons[0].High - early.Comparisons[0].Low > last.Comparisons[0].High - last.Comparisons[0].Low);
        Assert.Contains(early.Warnings, static w => w.Id == "early-look");
        Assert.Equal(0.00305, early.Limit.Level, 1e-5);
    }

    [Theory]
    [InlineData(2.5)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void A_count_is_a_whole_number(double value) => Assert.False(TrialAnalysis.Of(Request(MeasureKind.Count, [[1, value], [2, 3]])).Ok);

    [Fact]
    public void Repeated_measurements_have_a_model_of_their_own()
    {
        var request = Request(MeasureKind.Measurement, [[5, 7, 4, 6], [7, 10, 5, 8]]);
        var twice = request with
        {
            Readings = [.. request.Readings.SelectMany(static (r, i) => new[] { r with { Date = new(2026, 5, 1) }, r with { Date = new(2026, 6, 1), Value = r.Value + 1 + (i % 3 * 0.1) } })],
        };
        var report = TrialAnalysis.Of(twice).Value!;
        Assert.NotNull(report.Repeated);

        // Every pot on both days: the model of all readings and the one of means say the same of the feeds.
        Assert.Equal(report.Comparisons[0].Estimate!.Value, report.Repeated.Comparisons[0].Estimate!.Value, 1e-9);
        Assert.Equal(report.Comparisons[0].StandardError!.Value, report.Repeated.Comparisons[0].StandardError!.Value, 1e-5);
    }

    /// <summary>Under no effect a permutation p below any α comes up at most α often; exact enumeration and draws alike.</summary>
    [Fact]
    public void Permutation_p_is_never_too_small()
    {
        // Exact: over all layouts of the same figures, p ≤ α in at most α of them, whatever the figures.
        Gen.Select(Gen.Int[1, 3], Gen.Int[2, 3], Gen.Double[0, 100].Array[9]).Sample(
            (blocks, feeds, figures) =>
            {
                var values = figures.Take(blocks * feeds).Select(static v => Math.Round(v)).ToArray();
                var orders = Orders(feeds);
                var ps = new List<double>();
                foreach (var layout in Product(orders, blocks))
                {
                    var pots = values.Select((v, i) => new PotResult(FormattableString.Invariant($"p{i}"), i / feeds, FormattableString.Invariant($"f{layout[i / feeds][i % feeds]}"), v, 1)).ToList();
                    ps.Add(Permutation.Test(pots, [.. Enumerable.Range(0, feeds).Select(static f => FormattableString.Invariant($"f{f}"))], 1).P);
                }

                Assert.All(ps.Distinct(), p => Assert.True(ps.Count(x => x <= p + 1e-12) <= (ps.Count * p) + 1e-9));
            },
            iter: 30);
    }

    [Fact]
    public void Drawn_permutation_p_is_not_too_small_either()
    {
        var random = new Random(3);
        const int Trials = 300;
        var below = 0;
        for (var t = 0; t < Trials; t++)
        {
            // Eighteen blocks of two have 262144 arrangements, so they are drawn.
            var pots = Enumerable.Range(0, 36).Select(i => new PotResult(FormattableString.Invariant($"p{i}"), i / 2, i % 2 == 0 ? "a" : "b", Math.Floor(-20 * Math.Log(1 - random.NextDouble())), 1)).ToList();
            var test = Permutation.Test(pots, ["a", "b"], t);
            Assert.False(test.Exact);
            below += test.P <= 0.1 ? 1 : 0;
        }

        // 30 expected; 47 is passed by chance once in a thousand such tests.
        Assert.InRange(below, 12, 47);
    }

    private static TrialReport Of(MeasureKind kind, double[][] values) => TrialAnalysis.Of(Request(kind, values)).Value!;

    /// <summary>Feeds by blocks.</summary>
    private static AnalysisRequest Request(MeasureKind kind, double[][] values)
    {
        var places = values.SelectMany(static (of, f) => of.Select((v, b) => (Place: new TrialPlace(FormattableString.Invariant($"p{f}-{b}"), b + 1, FormattableString.Invariant($"f{f}")), Value: v))).ToList();
        return new(
            new() { Name = "t", Measure = new(kind, "figure"), Treatments = [.. values.Select(static (_, f) => new Treatment(FormattableString.Invariant($"f{f}"), FormattableString.Invariant($"feed {f}")))], Layout = [.. places.Select(static p => p.Place)] },
            [.. places.Select(static p => new TrialReading(p.Place.Pot, p.Value))]);
    }

    private static List<int[]> Orders(int n) => n == 2 ? [[0, 1], [1, 0]] : [[0, 1, 2], [0, 2, 1], [1, 0, 2], [1, 2, 0], [2, 0, 1], [2, 1, 0]];

    private static IEnumerable<int[][]> Product(List<int[]> orders, int blocks) =>
        Enumerable.Range(0, (int)Math.Pow(orders.Count, blocks)).Select(n => Enumerable.Range(0, blocks).Select(b => orders[n / (int)Math.Pow(orders.Count, b) % orders.Count]).ToArray());
}
