using Ashery.Trials;
using Ashery.Trials.Fits;
using Ashery.Trials.Results;

namespace Ashery.Tests.Trials;

/// <summary>
/// Our fits beside R 4.2.2 (Debian) with MASS 7.3, nlme 3.1 and multcomp 1.4: every expected figure is one that eng/trials-in-r.R printed, held to half of
/// its last digit.
/// </summary>
public class RJudgesTests
{
    [Fact]
    public void InsectSprays_by_a_Poisson_model()
    {
        var (matrix, y) = Plain(OpenData.InsectSprays());
        var fit = CountModel.Poisson(matrix, y);
        Equal([2.67415, 0.05588, -1.94018, -1.08152, -1.42139, 0.13926], fit.Fit.Coefficients, 5);
        Equal([0.07581, 0.10574, 0.21389, 0.15065, 0.17192, 0.10367], Errors(matrix, fit.StandardError), 5);
        Equal([98.329], [fit.Deviance], 3);
        Equal([99.50903], [fit.Pearson(y)], 5);
        Equal([376.59], [(-2 * fit.LogLikelihood(y)) + 12], 2);
        Assert.Equal(66, fit.Df);
    }

    [Fact]
    public void InsectSprays_by_a_negative_binomial_model()
    {
        var (matrix, y) = Plain(OpenData.InsectSprays());
        var fit = NegativeBinomial.Fit(matrix, y);
        Equal([2.67415, 0.05588, -1.94018, -1.08152, -1.42139, 0.13926], fit.Model.Fit.Coefficients, 5);
        Equal([0.09334, 0.13082, 0.22733, 0.16920, 0.18838, 0.12914], Errors(matrix, fit.Model.StandardError), 5);
        Equal([28.0995], [fit.Model.Theta], 4);
        Equal([17.7], [fit.ThetaError!.Value], 1);
        Equal([74.145], [fit.Model.Deviance], 3);
        Equal([-360.218], [2 * fit.LogLikelihood], 3);
    }

    [Fact]
    public void Warpbreaks_by_both()
    {
        var request = OpenData.Warpbreaks(MeasureKind.Count);
        var y = request.Readings.Select(static r => r.Value).ToArray();
        var matrix = new ModelMatrix(54).Factor("wool", [.. y.Select((_, i) => i / 27)], 2).Factor("tension", [.. y.Select((_, i) => i / 9 % 3)], 3);
        var poisson = CountModel.Poisson(matrix, y);
        Equal([3.69196, -0.20599, -0.32132, -0.51849], poisson.Fit.Coefficients, 5);
        Equal([0.04541, 0.05157, 0.06027, 0.06396], Errors(matrix, poisson.StandardError), 5);
        Equal([210.39], [poisson.Deviance], 2);
        Equal([213.0761], [poisson.Pearson(y)], 4);
        var spread = NegativeBinomial.Fit(matrix, y);
        Equal([3.6734, -0.1862, -0.2992, -0.5114], spread.Model.Fit.Coefficients, 4);
        Equal([0.0979, 0.1010, 0.1217, 0.1237], Errors(matrix, spread.Model.StandardError), 4);
        Equal([9.9444], [spread.Model.Theta], 4);
        Equal([2.56], [spread.ThetaError!.Value], 2);
        Equal([-398.764], [2 * spread.LogLikelihood], 3);

        // The same through the whole analysis, as ratios of the factors.
        var report = TrialAnalysis.Of(request).Value!;
        Assert.Equal("negativeBinomial", report.Model.Kind);
        Equal([Math.Exp(-0.1862), Math.Exp(-0.2992), Math.Exp(-0.5114)], [.. report.Factors.Select(static f => f.Estimate)], 3);
        Assert.Contains(report.Warnings, static w => w.Id == "overdispersed");
    }

    [Fact]
    public void Warpbreaks_as_measurements_of_two_factors()
    {
        var anova = TrialAnalysis.Of(OpenData.Warpbreaks(MeasureKind.Measurement)).Value!.Model.Anova;
        Assert.Equal(["wool", "tension", "wool:tension", "residuals"], anova.Select(static r => r.Term));
        Assert.Equal([1, 2, 2, 48], anova.Select(static r => r.Df));
        Equal([451, 2034, 1003, 5745], [.. anova.Select(static r => r.SumOfSquares)], 0);
        Equal([3.765, 8.498, 4.189], [.. anova.Select(static r => r.F).OfType<double>()], 3);
        Equal([0.058213, 0.000693, 0.021044], [.. anova.Select(static r => r.P).OfType<double>()], 6);
    }

    [Fact]
    public void PlantGrowth_by_Tukey()
    {
        var report = TrialAnalysis.Of(OpenData.PlantGrowth(control: false)).Value!;
        Equal([4.846], [report.Overall!.F], 3);
        Equal([0.01591], [report.Overall.P], 5);
        Equal([0.6234], [report.Model.ResidualDeviation!.Value], 4);
        Assert.Equal("tukey", report.Model.Family);
        Equal([-0.371, 0.494, 0.865], [.. report.Comparisons.Select(static c => c.Estimate!.Value)], 7);
        Equal([-1.0622161, -0.1972161, 0.1737839], [.. report.Comparisons.Select(static c => c.Low!.Value)], 6);
        Equal([0.3202161, 1.1852161, 1.5562161], [.. report.Comparisons.Select(static c => c.High!.Value)], 6);
        Equal([0.3908711, 0.1979960, 0.0120064], [.. report.Comparisons.Select(static c => c.P!.Value)], 7);
        Equal([0.1944, 0.0877], [.. report.Comparisons.Take(2).Select(static c => c.PAlone!.Value)], 4);
    }

    [Fact]
    public void PlantGrowth_by_Dunnett()
    {
        var report = TrialAnalysis.Of(OpenData.PlantGrowth(control: true)).Value!;
        Assert.Equal("dunnett", report.Model.Family);
        Equal([0.323, 0.153], [.. report.Comparisons.Select(static c => c.P!.Value)], 3);
        Equal([-1.0215, -0.1565], [.. report.Comparisons.Select(static c => c.Low!.Value)], 4);
        Equal([0.2795, 1.1445], [.. report.Comparisons.Select(static c => c.High!.Value)], 4);
    }

    /// <summary>The product of all three is confounded with blocks: it must drop out, as it does in R.</summary>
    [Fact]
    public void Npk_with_its_blocks()
    {
        var report = TrialAnalysis.Of(OpenData.Npk()).Value!;
        var anova = report.Model.Anova;
        Assert.Equal(["blocks", "N", "P", "K", "N:P", "N:K", "P:K", "residuals"], anova.Select(static r => r.Term));
        Assert.Equal([5, 1, 1, 1, 1, 1, 1, 12], anova.Select(static r => r.Df));
        Equal([343.3, 189.3, 8.4, 95.2, 21.3, 33.1, 0.5, 185.3], [.. anova.Select(static r => r.SumOfSquares)], 1);
        Equal([4.447, 12.259, 0.544, 6.166, 1.378, 2.146, 0.031], [.. anova.Select(static r => r.F).OfType<double>()], 3);
        Equal([0.01594, 0.00437, 0.47490, 0.02880, 0.26317, 0.16865, 0.86275], [.. anova.Select(static r => r.P).OfType<double>()], 5);
        Equal([5.616667, -1.183333, -3.983333], [.. report.Factors.Select(static f => f.Estimate)], 6);
    }

    [Fact]
    public void Square_roots_of_InsectSprays_as_measurements()
    {
        var request = OpenData.InsectSprays();
        var roots = request with
        {
            Trial = request.Trial with { Measure = new(MeasureKind.Measurement, "root") },
            Readings = [.. request.Readings.Select(static r => r with { Value = Math.Sqrt(r.Value) })],
        };
        var report = TrialAnalysis.Of(roots).Value!;
        Equal([44.8], [report.Overall!.F], 1);
        Equal([88.44, 26.06], [.. report.Model.Anova.Select(static r => r.SumOfSquares)], 2);
    }

    [Fact]
    public void Orthodont_by_a_random_level_of_each_child()
    {
        var data = OpenData.Orthodont();
        var matrix = new ModelMatrix(data.Count).Figure("age", [.. data.Select(static d => (double)d.Age)]).Factor("sex", [.. data.Select(static d => d.Girl ? 1 : 0)], 2);
        var fit = new RandomIntercept(matrix.Columns, [.. data.Select(static d => d.Distance)], [.. data.Select(static d => d.Child)]);
        Equal([17.706713, 0.660185, -2.321023], fit.Coefficients, 6);
        Equal([0.8339225, 0.0616059, 0.7614168], Errors(matrix, fit.StandardError), 6);
        Equal([1.807425, 1.431592], [Math.Sqrt(fit.PotVariance), Math.Sqrt(fit.ResidualVariance)], 6);

        // Ages being the same for all, the answer has a closed form too, by mean squares.
        var children = data.GroupBy(static d => d.Child).Select(static g => (Girl: g.First().Girl, Mean: g.Average(static d => d.Distance))).ToList();
        var between = 4 * children.GroupBy(static c => c.Girl).Sum(static g => g.Sum(c => Math.Pow(c.Mean - g.Average(static x => x.Mean), 2))) / 25;
        Assert.Equal((between - fit.ResidualVariance) / 4, fit.PotVariance, 1e-6);
        Equal([-218.7563], [fit.LogLikelihood], 4);
    }

    private static (ModelMatrix Matrix, double[] Y) Plain(AnalysisRequest request)
    {
        var feeds = request.Trial.Treatments.Select(static t => t.Id).ToList();
        return (new ModelMatrix(request.Readings.Count).Factor("feeds", [.. request.Trial.Layout.Select(p => feeds.IndexOf(p.Treatment))], feeds.Count), [.. request.Readings.Select(static r => r.Value)]);
    }

    private static double[] Errors(ModelMatrix matrix, Func<double[], double> error) =>
        [.. matrix.Columns.Select((_, c) => error([.. matrix.Columns.Select((_, i) => i == c ? 1.0 : 0)]))];

    private static void Equal(IReadOnlyList<double> printed, IReadOnlyList<double> ours, int digits)
    {
        Assert.Equal(printed.Count, ours.Count);
        for (var i = 0; i < printed.Count; i++)
        {
            Assert.True(Math.Abs(printed[i] - ours[i]) <= 0.5000001 * Math.Pow(10, -digits), FormattableString.Invariant($"{i}: R prints {printed[i]}, ours is {ours[i]:R}"));
        }
    }
}
