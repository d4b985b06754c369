using Ashery.RootZone.Draws;

namespace Ashery.Tests.RootZone.Draws;

public class VarianceTests(ITestOutputHelper output)
{
    /// <summary>
    /// Ishigami function sin x1 + 7 sin² x2 + 0.1 x3⁴ sin x1 on (-π, π)³: first-order indices 0.3139, 0.4424, 0 and total 0.5576, 0.4424, 0.2437 (Ishigami and Homma 1990; Saltelli and
    /// others 2008, Global sensitivity analysis; digits from memory, and they follow from the function by hand: V = a²/8 + bπ⁴/5 + b²π⁸/18 + 1/2).
    /// </summary>
    [Fact]
    public void Shares_of_the_Ishigami_function_are_the_published_ones()
    {
        const int N = 1 << 15;
        string[] ids = ["x1", "x2", "x3"];
        var (a, b) = (LatinHypercube.Of(ids, N, 1, 1), LatinHypercube.Of(ids, N, 1, 2));
        var (first, total) = (new[] { 0.3139, 0.4424, 0 }, new[] { 0.5576, 0.4424, 0.2437 });
        var (fa, fb) = (At(a, a, -1), At(b, b, -1));
        var v = (49 / 8.0) + (0.1 * Math.Pow(Math.PI, 4) / 5) + (0.01 * Math.Pow(Math.PI, 8) / 18) + 0.5;
        Assert.Equal(v, SobolShares.Moments(fa, fb).Variance, 0.01 * v);
        for (var i = 0; i < 3; i++)
        {
            var share = SobolShares.Of(fa, fb, At(a, b, i));
            output.WriteLine(FormattableString.Invariant($"x{i + 1}: first {share.First:0.0000} (published {first[i]}, standard error {share.Error:0.0000}), total {share.Total:0.0000} (published {total[i]})"));
            Assert.Equal(first[i], share.First, 0.015);
            Assert.Equal(total[i], share.Total, 0.015);
            Assert.InRange(share.Error, 0, 0.02);
        }

        double[] At(double[] from, double[] other, int column)
        {
            var f = new double[N];
            for (var k = 0; k < N; k++)
            {
                var (x1, x2, x3) = (X(0), X(1), X(2));
                f[k] = Math.Sin(x1) + (7 * Math.Pow(Math.Sin(x2), 2)) + (0.1 * Math.Pow(x3, 4) * Math.Sin(x1));

                double X(int j) => Math.PI * ((2 * (j == column ? other : from)[(k * 3) + j]) - 1);
            }

            return f;
        }
    }

    [Fact]
    public void A_sum_of_two_shares_out_by_their_variances()
    {
        // f = 3 u + 4 v: 9/25 and 16/25, no interaction.
        const int N = 1 << 14;
        var (a, b) = (LatinHypercube.Of(["u", "v"], N, 2, 1), LatinHypercube.Of(["u", "v"], N, 2, 2));
        var u = SobolShares.Of(F(a, a), F(b, b), F(b, a));
        var w = SobolShares.Of(F(a, a), F(b, b), F(a, b));
        Assert.Equal(0.36, u.First, 0.015);
        Assert.Equal(0.36, u.Total, 0.015);
        Assert.Equal(0.64, w.First, 0.015);
        Assert.Equal(0.64, w.Total, 0.015);

        static double[] F(double[] us, double[] vs) => [.. Enumerable.Range(0, N).Select(i => (3 * us[2 * i]) + (4 * vs[(2 * i) + 1]))];
    }

    [Fact]
    public void Shares_of_a_pot_add_up_and_are_the_same_on_any_number_of_threads()
    {
        var request = Terrace.Request(days: 100);
        var shares = VarianceShares.Run(request with { Threads = 1 }, 128).Value!;
        foreach (var target in shares)
        {
            output.WriteLine(FormattableString.Invariant($"{target.Target} {target.Mean:0.###} ± {target.Deviation:0.###}"));
            foreach (var group in target.Groups)
            {
                output.WriteLine(FormattableString.Invariant($"   {group.Group,-15} {group.Share.First:0.00} ± {group.Share.Error:0.00}   {group.Share.Total:0.00}"));
            }

            // First orders sum to at most 1, totals to at least 1, but for the error of the estimate.
            Assert.InRange(target.Groups.Sum(static g => g.Share.First), 0.5, 1.25);
            Assert.InRange(target.Groups.Sum(static g => g.Share.Total), 0.85, 2);
            Assert.All(target.Groups, static g => Assert.True(g.Share.Total >= 0));
        }

        var again = VarianceShares.Run(request with { Threads = 3 }, 128).Value!;
        Assert.Equal(shares[0].Groups, again[0].Groups);
    }

    [Fact]
    public void With_one_unknown_it_has_all_the_variance()
    {
        var scenario = Terrace.Scenario();
        var space = DrawSpace.Of(scenario).Without(static f => f.Id != "start-strength");
        var weather = new Ashery.Climate.DailyWeather[60];
        Terrace.Weather().Fill(weather, Terrace.Start, 0);
        var request = Terrace.Request(days: 60) with { Space = space, Weather = DrawnWeather.Known(new(Terrace.Place, weather, "made")) };
        var share = Assert.Single(VarianceShares.Run(request, 256).Value![0].Groups);
        Assert.Equal(UncertainGroup.Start, share.Group);
        Assert.Equal(1, share.Share.First, 0.2);
        Assert.Equal(1, share.Share.Total, 0.2);
    }

    [Fact]
    public void A_measurement_of_the_one_unknown_leaves_nothing_and_of_another_all()
    {
        var space = DrawSpace.Of(Terrace.Scenario()).Without(static f => f.Id is not ("scoop-habit" or "water-strength"));
        var weather = new Ashery.Climate.DailyWeather[120];
        Terrace.Weather().Fill(weather, Terrace.Start, 0);
        var request = Terrace.Request(300) with { Space = space, Weather = DrawnWeather.Known(new(Terrace.Place, weather, "made")) };
        var worth = MeasurementWorth.Of(PotForecast.Run(request).Value!, 30, PotTarget.ExtractEc);

        // Pure water has no strength to be wrong about: its report is worth nothing, the scoop nearly all.
        Assert.True(worth.Single(static w => w.Kind == MeasurementKind.ScoopWeighed).Known > 0.9);
        Assert.True(worth.Single(static w => w.Kind == MeasurementKind.WaterReport).Known < 0.1);
        Assert.DoesNotContain(worth, static w => w.Kind == MeasurementKind.FeedAnalysed);
        Assert.All(worth, static w => Assert.Equal(w.Before * Math.Sqrt(1 - w.Known), w.After, 1e-12));
    }

    [Fact]
    public void What_narrows_a_whole_forecast_most()
    {
        var report = PotForecast.Run(Terrace.Request(400, 150)).Value!;
        foreach (var target in Enum.GetValues<PotTarget>())
        {
            foreach (var worth in MeasurementWorth.Of(report, 40, target))
            {
                output.WriteLine(FormattableString.Invariant($"{target} {worth.Name}: {worth.Before:0.###} to {worth.After:0.###} ({worth.Known:P0})"));
            }
        }

        Assert.Equal(MeasurementKind.LeachatePh, MeasurementWorth.Of(report, 40, PotTarget.PH)[0].Kind);
    }

    /// <summary>R² of a line through x with noise of its own variance is 1/2 (definition).</summary>
    [Fact]
    public void Regression_explains_what_it_should()
    {
        var n = 4000;
        var (x, e) = (LatinHypercube.Of(["x"], n, 1, 0), LatinHypercube.Of(["e"], n, 1, 0));
        double[] y = [.. x.Select((v, i) => v + e[i])];
        Assert.Equal(0.5, Regression.Explained(y, x), 0.02);
        Assert.Equal(1, Regression.Explained(y, x, e), 1e-9);
        Assert.Equal(0.5, Regression.Explained(y, x, [.. x.Select(static v => 2 * v)]), 0.02);
        Assert.Equal(0, Regression.Explained(x.AsSpan(0, 50), e[..50]), 0.1);
    }
}
