using Ashery.RootZone.Calibration;
using Ashery.RootZone.Draws;
using Ashery.Tests.RootZone.Draws;

namespace Ashery.Tests.RootZone.Calibration;

public class CalibrationTests(ITestOutputHelper output)
{
    private static readonly int[] Taken = [20, 34, 48, 62, 76, 90];

    private static readonly int[] Held = [97, 104, 118, 132, 146, 160];

    private static int Seeds => int.TryParse(Environment.GetEnvironmentVariable("ASHERY_SEEDS"), System.Globalization.CultureInfo.InvariantCulture, out var n) ? n : 12;

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Six_leachate_readings_halve_the_error_on_those_held_back(bool otherModel)
    {
        var ratios = new List<double>();
        double squaresBefore = 0, squaresAfter = 0;
        var (inside, all) = (0, 0);
        for (var seed = 1; seed <= Seeds; seed++)
        {
            var scenario = Terrace.Scenario();
            var readings = MadeTruth.Of(scenario, seed, [.. Taken, .. Held], otherModel);
            var last = Terrace.Start.AddDays(Taken[^1]);
            var report = PotCalibration.Run(new()
            {
                Forecast = new() { Scenario = scenario, Weather = Terrace.Weather(), From = Terrace.Start, Days = 170, Draws = 300, Seed = seed },
                Readings = [.. readings.Where(r => r.Date <= last)],
                Held = [.. readings.Where(r => r.Date > last)],
            }).Value!;
            var (before, after) = CalibrationReport.Error(report.Held, ReadingKind.LeachateEc);
            var (beforePh, afterPh) = CalibrationReport.Error(report.Held, ReadingKind.LeachatePh);
            ratios.Add(after / before);
            squaresBefore += before * before;
            squaresAfter += after * after;
            inside += report.Held.Count(static f => f.Reading.Value >= f.After.P5 && f.Reading.Value <= f.After.P95);
            all += report.Held.Count;
            output.WriteLine(FormattableString.Invariant($"{seed}: EC {before:0.00} to {after:0.00} ({after / before:0.00}), pH {beforePh:0.00} to {afterPh:0.00}; {report.Shifts[0].Figure.Id} {report.Shifts[0].Moved:0.0}, {report.Shifts[1].Figure.Id} {report.Shifts[1].Moved:0.0}"));
        }

        output.WriteLine(FormattableString.Invariant($"mean ratio {ratios.Average():0.00}, ratio of pooled errors {Math.Sqrt(squaresAfter / squaresBefore):0.00}, halved in {ratios.Count(static r => r <= 0.5)} of {ratios.Count}; inside the band {inside}/{all}"));
    }
}
