using Ashery.Trials;
using Ashery.Trials.Chances;
using Ashery.Trials.Designs;
using Ashery.Trials.Fits;
using Ashery.Trials.Results;
using CsCheck;

namespace Ashery.Tests.Trials;

/// <summary>Stated chances against trials simulated apart: System.Random draws, the general models, no code of the planner.</summary>
public class PowerTests
{
    private const double OnePoint = 0.01;

    [Theory]
    [InlineData(2, 8, 0.3, 0.25, false)]
    [InlineData(3, 6, 0.4, 0.3, true)]
    [InlineData(4, 5, 0.35, 0.25, false)]
    public void Power_of_growth_is_that_of_simulated_trials(int feeds, int blocks, double difference, double spread, bool control)
    {
        var trial = Sample(MeasureKind.Measurement, feeds, control) with { Wish = new() { Difference = difference, Spread = spread } };
        var stated = GrowthPower.Of(trial, blocks, 0.05);
        double df = (blocks - 1) * (feeds - 1);
        var limit = Criterion.Linear(0.05, [.. Enumerable.Repeat((double)blocks, feeds)], control ? 0 : null, df);
        var random = new Random(feeds);
        const int Draws = 40_000;
        var seen = 0;
        var y = new double[blocks, feeds];
        for (var d = 0; d < Draws; d++)
        {
            // Classical sums of squares of complete blocks.
            var (rows, columns) = (new double[blocks], new double[feeds]);
            for (var b = 0; b < blocks; b++)
            {
                for (var f = 0; f < feeds; f++)
                {
                    y[b, f] = (f == feeds - 1 ? 1 + difference : 1) + (0.4 * b) + (spread * Normal(random));
                    rows[b] += y[b, f] / feeds;
                    columns[f] += y[b, f] / blocks;
                }
            }

            var whole = rows.Average();
            var rss = 0.0;
            for (var b = 0; b < blocks; b++)
            {
                for (var f = 0; f < feeds; f++)
                {
                    rss += Math.Pow(y[b, f] - rows[b] - columns[f] + whole, 2);
                }
            }

            seen += Math.Abs(columns[^1] - columns[0]) > limit * Math.Sqrt(2 * rss / df / blocks) ? 1 : 0;
        }

        Assert.Equal(seen / (double)Draws, stated, OnePoint);
    }

    [Theory]
    [InlineData(2, 10, 20, 0.4, 0.2)]
    [InlineData(3, 8, 12, 0.6, 0.3)]
    public void Power_of_counts_is_that_of_simulated_trials(int feeds, int blocks, double mean, double difference, double spread)
    {
        var trial = Sample(MeasureKind.Count, feeds, control: true) with { Wish = new() { Mean = mean, Difference = difference, Spread = spread } };
        var stated = CountPower.Of(trial, blocks, 0.05, 40_000, 5);
        var random = new Random(blocks);
        var matrix = new ModelMatrix(blocks * feeds).Factor("blocks", [.. Enumerable.Range(0, blocks * feeds).Select(i => i / feeds)], blocks).Factor("feeds", [.. Enumerable.Range(0, blocks * feeds).Select(i => i % feeds)], feeds);
        var l = matrix.Difference(matrix.Term("feeds"), feeds - 1, 0);
        var limit = Laws.StudentBothSides(0.05 / (feeds - 1), (blocks - 1) * (feeds - 1));
        var law = Enumerable.Range(0, feeds).Select(f => mean * (f == feeds - 1 ? 1 + difference : 1)).ToArray();
        const int Draws = 4_000;
        var seen = 0;
        for (var d = 0; d < Draws; d++)
        {
            var y = Enumerable.Range(0, blocks * feeds).Select(i => (double)MathNet.Numerics.Distributions.Poisson.Sample(random, law[i % feeds] * MathNet.Numerics.Distributions.Gamma.Sample(random, 1 / (spread * spread), 1 / (spread * spread)))).ToArray();
            var fit = NegativeBinomial.Fit(matrix, y).Model;
            seen += Math.Abs(fit.Fit.Value(l)) > limit * fit.StandardError(l) * Math.Sqrt(fit.Scale(y)) ? 1 : 0;
        }

        // the general model is slow: 4,000 trials have a standard error of 0.7 points themselves, twice of which is allowed for.
        Assert.Equal(seen / (double)Draws, stated, OnePoint + (2 * Math.Sqrt(stated * (1 - stated) / Draws)));
    }

    /// <summary>The quick model of simulated trials is the general one.</summary>
    [Fact]
    public void The_quick_count_model_is_the_general_one() =>
        Gen.Select(Gen.Int[2, 12], Gen.Int[2, 4], Gen.Int[0, 100_000]).Sample(
            (blocks, feeds, seed) =>
            {
                var random = new Random(seed);
                var y = Enumerable.Range(0, blocks * feeds).Select(_ => 1 + random.Next(12) + (random.Next(4) == 0 ? random.Next(25) : 0)).ToArray();
                var matrix = new ModelMatrix(y.Length).Factor("blocks", [.. y.Select((_, i) => i / feeds)], blocks).Factor("feeds", [.. y.Select((_, i) => i % feeds)], feeds);
                var general = NegativeBinomial.Fit(matrix, [.. y.Select(static v => (double)v)]);
                var l = matrix.Difference(matrix.Term("feeds"), feeds - 1, 0);
                var quick = new BlockedCounts(blocks, feeds);
                var (estimate, error) = quick.Fit(y);
                Assert.Equal(general.Model.Fit.Value(l), estimate, 1e-3);
                Assert.Equal(general.Model.StandardError(l) * Math.Sqrt(general.Model.Scale([.. y.Select(static v => (double)v)])), error, 2e-3);
            },
            iter: 100);

    /// <summary>No difference: false alarms of the intervals stay within their 5 % and a point; where counts scatter by chance alone they are far fewer.</summary>
    [Theory]
    [InlineData(4, 20, 0.0)]
    [InlineData(8, 20, 0.25)]
    [InlineData(12, 5, 0.4)]
    [InlineData(3, 30, 0.3)]
    [InlineData(20, 20, 0.25)]
    [InlineData(6, 3, 0.6)]
    public void Counts_of_equal_feeds_raise_few_false_alarms(int blocks, double mean, double spread)
    {
        var trial = Sample(MeasureKind.Count, 2, control: true) with { Wish = new() { Mean = mean, Difference = 1e-9, Spread = spread } };
        var alarms = CountPower.Of(trial, blocks, 0.05, 20_000, 9);
        Assert.True(alarms < 0.06, FormattableString.Invariant($"{alarms}"));
    }

    [Fact]
    public void Counts_are_drawn_by_their_law()
    {
        var law = new CountLaw(12, 0.3);
        var random = new Ashery.Climate.Generation.WeatherStream(1, 1);
        const int Draws = 200_000;
        double sum = 0, squares = 0;
        for (var i = 0; i < Draws; i++)
        {
            double k = law.Draw(ref random);
            sum += k;
            squares += k * k;
        }

        var mean = sum / Draws;
        Assert.Equal(12, mean, 0.06);
        Assert.Equal(12 + (0.09 * 144), (squares / Draws) - (mean * mean), 0.35);
    }

    internal static Trial Sample(MeasureKind kind, int feeds, bool control) => new()
    {
        Name = "sample",
        Measure = new(kind, "flowers"),
        Treatments = [.. Enumerable.Range(0, feeds).Select(i => new Treatment(FormattableString.Invariant($"f{i}"), FormattableString.Invariant($"feed {i}"), control && i == 0))],
    };

    private static double Normal(Random random)
    {
        double u, s;
        do
        {
            u = (2 * random.NextDouble()) - 1;
            var v = (2 * random.NextDouble()) - 1;
            s = (u * u) + (v * v);
        }
        while (s is >= 1 or 0);

        return u * Math.Sqrt(-2 * Math.Log(s) / s);
    }
}
