using System.Globalization;
using Ashery.RootZone.Calibration;
using Ashery.RootZone.Draws;
using Ashery.Tests.RootZone.Draws;

namespace Ashery.Tests.RootZone.Calibration;

/// <summary>
/// Made pots, said so: each a draw of all unknowns in weather of its own. Six seeds in every run; more by
/// <c>ASHERY_SEEDS=20 dotnet test --project tests/Ashery.Tests --filter-class "*CalibrationTests"</c>, which prints the errors by day.
/// </summary>
public class CalibrationTests(ITestOutputHelper output)
{
    private static readonly int[] Taken = [20, 34, 48, 62, 76, 90];

    // Held back: between those taken, and in the four weeks after the last.
    private static readonly int[] Held = [27, 41, 55, 69, 83, 97, 104, 111, 118];

    // Beyond the promise; only with more seeds, to tell how far ahead readings help.
    private static readonly int[] Later = [132, 146, 160];

    private static int Seeds => int.TryParse(Environment.GetEnvironmentVariable("ASHERY_SEEDS"), NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? n : 6;

    /// <summary>Acceptance of the issue: made data from other rates and weather than the filter's own model; pooled over seeds, none picked.</summary>
    [Fact]
    public void Six_leachate_readings_halve_the_error_on_those_held_back()
    {
        var days = Seeds > 6 ? [.. Held, .. Later] : Held;
        var ec = new Errors();
        var acid = new Errors();
        var better = 0;
        for (var seed = 1; seed <= Seeds; seed++)
        {
            var (report, _) = Calibrated(seed, days, otherModel: true);
            foreach (var fit in report.Held)
            {
                (fit.Reading.Kind == ReadingKind.LeachateEc ? ec : acid).Add(DayOf(fit), fit);
            }

            var near = report.Held.Where(static f => DayOf(f) <= Held[^1]).ToList();
            var (before, after) = CalibrationReport.Error(near, ReadingKind.LeachateEc);
            var (beforePh, afterPh) = CalibrationReport.Error(near, ReadingKind.LeachatePh);
            better += after < before ? 1 : 0;
            output.WriteLine(FormattableString.Invariant($"seed {seed}: EC {before:0.00} to {after:0.00} ({after / before:0.00}), pH {beforePh:0.00} to {afterPh:0.00} ({afterPh / beforePh:0.00}); moved most {report.Shifts[0].Figure.Id} {report.Shifts[0].Moved:+0.0;-0.0}, {report.Shifts[1].Figure.Id} {report.Shifts[1].Moved:+0.0;-0.0}"));
        }

        foreach (var day in days)
        {
            output.WriteLine(FormattableString.Invariant($"day {day}: EC {ec.Of(day, day)}, pH {acid.Of(day, day)}"));
        }

        output.WriteLine(FormattableString.Invariant($"pooled: EC {ec.Of(0, Held[^1])}, pH {acid.Of(0, Held[^1])}; EC better in {better} of {Seeds}"));
        Assert.True(ec.Ratio(0, Held[^1]) <= 0.5, "EC");
        Assert.True(acid.Ratio(0, Held[^1]) <= 0.6, "pH");
    }

    /// <summary>With truths from the model's own unknowns, and unknown weather, nine tenths of them belong inside the band from 5 to 95 %.</summary>
    [Fact]
    public void Bands_cover_what_they_say_before_and_after()
    {
        var (before, after, all) = (0, 0, 0);
        for (var seed = 1; seed <= Seeds + 2; seed++)
        {
            var (report, exact) = Calibrated(100 + seed, Held, otherModel: false);
            foreach (var fit in report.Held)
            {
                var truth = exact[(fit.Reading.Date, fit.Reading.Kind)];
                before += truth >= fit.Before.P5 && truth <= fit.Before.P95 ? 1 : 0;
                after += truth >= fit.After.P5 && truth <= fit.After.P95 ? 1 : 0;
                all++;
            }
        }

        output.WriteLine(FormattableString.Invariant($"of {all} made truths {(double)before / all:P0} lie inside the band before, {(double)after / all:P0} after"));
        Assert.InRange((double)before / all, 0.75, 1);
        Assert.InRange((double)after / all, 0.75, 0.99);
    }

    [Fact]
    public void Figures_stay_within_their_bounds_and_balances_closed_by_running_anew()
    {
        var (report, _) = Calibrated(3, Held, otherModel: true);
        foreach (var shift in report.Shifts)
        {
            Assert.True(shift.After.P5 >= shift.Figure.Low - 1e-6 && shift.After.P95 <= shift.Figure.High + 1e-6 * Math.Abs(shift.Figure.High), shift.Figure.Id);
        }

        Assert.True(report.Shifts.Max(static s => Math.Abs(s.Moved)) > 0.3);
        Assert.Equal(12, report.Taken.Count);
        Assert.Equal(18, report.Held.Count);
        Assert.True(report.After[PotFigure.PH].Days.Average(static d => d.P95 - d.P5) < report.Before[PotFigure.PH].Days.Average(static d => d.P95 - d.P5));
    }

    [Fact]
    public void The_answer_is_the_same_on_any_number_of_threads()
    {
        var one = Calibrated(2, Held, otherModel: true, threads: 1, draws: 60).Report;
        var three = Calibrated(2, Held, otherModel: true, threads: 3, draws: 60).Report;
        Assert.Equal(one.After[PotFigure.ExtractEc].Days, three.After[PotFigure.ExtractEc].Days);
        Assert.Equal(one.Held, three.Held);
    }

    [Fact]
    public void A_weight_tells_how_dry_the_pot_gets()
    {
        // Weighed 1.6 kg below full where the forecast says less: the pot must be drier afterwards on such a day.
        var forecast = Terrace.Request(200, 60);
        var before = PotForecast.Run(forecast).Value!;
        var day = Enumerable.Range(20, 30).MinBy(d => before[PotFigure.WaterShare].Days[d].P95 - before[PotFigure.WaterShare].Days[d].P5);
        var readings = Enumerable.Range(20, 12).Select(d => new PotReading(Terrace.Start.AddDays(d), ReadingKind.WeightBelowFull, 2.3, 0.2)).ToList();
        var report = PotCalibration.Run(new() { Forecast = forecast, Readings = readings }).Value!;
        var (was, now) = CalibrationReport.Error(report.Taken, ReadingKind.WeightBelowFull);
        output.WriteLine(FormattableString.Invariant($"kg below full, error {was:0.00} to {now:0.00} (day {day})"));
        Assert.True(now < 0.8 * was);
    }

    [Fact]
    public void Readings_that_cannot_be_are_answered()
    {
        var forecast = Terrace.Request();
        Assert.Equal("readings", Field(new() { Forecast = forecast, Readings = [] }));
        Assert.Equal("draws", Field(new() { Forecast = forecast with { Draws = 10 }, Readings = [Ec(1)] }));
        Assert.StartsWith("reading of", Field(new() { Forecast = forecast, Readings = [Ec(500)] }), StringComparison.Ordinal);
        Assert.StartsWith("reading of", Field(new() { Forecast = forecast, Readings = [Ec(1) with { Value = double.NaN }] }), StringComparison.Ordinal);
        Assert.StartsWith("reading of", Field(new() { Forecast = forecast, Readings = [Ec(1) with { Error = -1 }] }), StringComparison.Ordinal);

        static PotReading Ec(int day) => new(Terrace.Start.AddDays(day), ReadingKind.LeachateEc, 2);

        static string Field(CalibrationRequest request) => Assert.Single(PotCalibration.Run(request).Problems).Field;
    }

    private static int DayOf(ReadingFit fit) => fit.Reading.Date.DayNumber - Terrace.Start.DayNumber;

    private static (CalibrationReport Report, Dictionary<(DateOnly, ReadingKind), double> Exact) Calibrated(int seed, int[] held, bool otherModel, int threads = 0, int draws = 300)
    {
        var scenario = Terrace.Scenario();
        var made = MadeTruth.Of(scenario, seed, [.. Taken.Concat(held).Order()], otherModel);
        var report = PotCalibration.Run(new()
        {
            Forecast = new() { Scenario = scenario, Weather = Terrace.Weather(), From = Terrace.Start, Days = held.Max() + 2, Draws = draws, Seed = seed, Threads = threads },
            Readings = [.. made.Where(m => Taken.Contains(Day(m.Reading))).Select(static m => m.Reading)],
            Held = [.. made.Where(m => held.Contains(Day(m.Reading))).Select(static m => m.Reading)],
        }).Value!;
        return (report, made.ToDictionary(static m => (m.Reading.Date, m.Reading.Kind), static m => m.Exact));

        static int Day(PotReading r) => r.Date.DayNumber - Terrace.Start.DayNumber;
    }

    // Sums of squares by day.
    private sealed class Errors
    {
        private readonly List<(int Day, double Before, double After)> all = [];

        public void Add(int day, ReadingFit fit) => all.Add((day, Math.Pow(fit.Before.P50 - fit.Reading.Value, 2), Math.Pow(fit.After.P50 - fit.Reading.Value, 2)));

        public double Ratio(int from, int to) => Math.Sqrt(Between(from, to).Sum(static e => e.After) / Between(from, to).Sum(static e => e.Before));

        public string Of(int from, int to) => FormattableString.Invariant(
            $"{Math.Sqrt(Between(from, to).Average(static e => e.Before)):0.00} to {Math.Sqrt(Between(from, to).Average(static e => e.After)):0.00} ({Ratio(from, to):0.00})");

        private List<(int Day, double Before, double After)> Between(int from, int to) => [.. all.Where(e => e.Day >= from && e.Day <= to)];
    }
}
