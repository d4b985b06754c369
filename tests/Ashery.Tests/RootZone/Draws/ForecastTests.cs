using Ashery.RootZone.Draws;

namespace Ashery.Tests.RootZone.Draws;

public class ForecastTests
{
    [Fact]
    public void The_same_seed_gives_the_same_bands_on_any_number_of_threads()
    {
        var one = PotForecast.Run(Terrace.Request() with { Threads = 1 }).Value!;
        var four = PotForecast.Run(Terrace.Request() with { Threads = 4 }).Value!;
        foreach (var figure in Enum.GetValues<PotFigure>())
        {
            Assert.Equal(one[figure].Days, four[figure].Days);
        }

        Assert.Equal(one.OverLimit, four.OverLimit);
        Assert.NotEqual(one[PotFigure.ExtractEc].Days, PotForecast.Run(Terrace.Request() with { Seed = 2 }).Value![PotFigure.ExtractEc].Days);
    }

    [Fact]
    public void Bands_rise_and_odds_are_those_of_the_draws()
    {
        var report = PotForecast.Run(Terrace.Request()).Value!;
        for (var day = 0; day < 120; day++)
        {
            var band = report[PotFigure.ExtractEc].Days[day];
            Assert.True(band.P5 <= band.P25 && band.P25 <= band.P50 && band.P50 <= band.P75 && band.P75 <= band.P95);
            var over = report.Draws.Of(PotFigure.ExtractEc, day).ToArray().Count(v => v > report.EcLimit) / 60.0;
            Assert.Equal(over, report.OverLimit[day]);
        }

        Assert.True(report.OverLimitEver >= report.OverLimit.Max());
        Assert.Equal(report.OverLimit.Sum(), report.DaysOverLimit, 9);
        Assert.True(report.Space.Count > 40);
    }

    [Fact]
    public void Without_unknowns_every_draw_is_the_usual_run()
    {
        var request = Terrace.Request(3) with { Space = DrawSpace.OfFigures([]), Weather = DrawnWeather.Known(new(Terrace.Place, Days(), "made")) };
        var report = PotForecast.Run(request).Value!;
        for (var day = 0; day < 120; day++)
        {
            var band = report[PotFigure.PoreEc].Days[day];
            Assert.Equal(band.P5, band.P95);
            Assert.Equal(report.Usual.Days[day].PoreEc, band.P50, 1e-5);
            Assert.Equal(report.Usual.Days[day].ExtractEc, report[PotFigure.ExtractEc].Days[day].P50, 1e-5);
            Assert.Equal(report.Usual.Days[day].LeachedN, report[PotFigure.LeachedN].Days[day].P50, 1e-5);
        }
    }

    [Fact]
    public void A_draw_at_the_usual_figures_is_the_usual_run()
    {
        // Shares at which each triangle gives its top: nothing must be changed by the way through the draws.
        var scenario = Terrace.Scenario();
        var space = DrawSpace.Of(scenario);
        var shares = space.Figures.Select(static f => (f.Usual - f.Low) / (f.High - f.Low)).ToArray();
        var weather = DrawnWeather.Known(new(Terrace.Place, Days(), "made"));
        var runner = new DrawRunner(scenario, weather, Terrace.Start, 120, space);
        var table = new DrawTable(1, 120);
        var sink = new DrawSink(table, 0);
        runner.Run(runner.NewDesk(), shares, 0, ref sink);
        var usual = Ashery.RootZone.RootZoneModel.Run(scenario, new(Terrace.Place, Days(), "made")).Value!;
        for (var day = 0; day < 120; day++)
        {
            Assert.Equal(usual.Days[day].ExtractEc, table[PotFigure.ExtractEc, day, 0], 1e-4);
            Assert.Equal(usual.Days[day].PH, table[PotFigure.PH, day, 0], 1e-4);
            Assert.Equal(usual.Days[day].UptakeN, table[PotFigure.UptakeN, day, 0], 1e-4);
        }
    }

    [Fact]
    public void Wishes_that_cannot_be_are_answered()
    {
        Assert.Equal("draws", Problem(Terrace.Request() with { Draws = 0 }));
        Assert.Equal("draws", Problem(Terrace.Request() with { Draws = 20_000, Days = 3000 }));
        Assert.Equal("days", Problem(Terrace.Request() with { Days = 0 }));
        Assert.Equal("limit", Problem(Terrace.Request() with { EcLimit = double.NaN }));
        Assert.Equal("weather", Problem(Terrace.Request() with { Weather = DrawnWeather.Known(new(Terrace.Place, Days()[..30], "made")) }));

        static string Problem(PotForecastRequest request) => Assert.Single(PotForecast.Run(request).Problems, static p => p.Severity == Ashery.Problems.Severity.Error).Field;
    }

    [Fact]
    public void It_stops_when_told_and_says_how_far_it_is()
    {
        var shares = new List<double>();
        PotForecast.Run(Terrace.Request(10) with { Threads = 1 }, new Heard(shares), TestContext.Current.CancellationToken);
        Assert.Equal(10, shares.Count);
        Assert.Equal(1, shares[^1]);
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => PotForecast.Run(Terrace.Request(), null, stop.Token));
    }

    private static Ashery.Climate.DailyWeather[] Days()
    {
        var days = new Ashery.Climate.DailyWeather[120];
        Terrace.Weather().Fill(days, Terrace.Start, 3);
        return days;
    }

    private sealed class Heard(List<double> shares) : IProgress<double>
    {
        public void Report(double value) => shares.Add(value);
    }
}
