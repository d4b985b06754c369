using Ashery.Problems;
using Ashery.RootZone.Draws;

namespace Ashery.RootZone.Calibration;

/// <summary>All there is to say of a pot's year: the forecast, pulled to the readings where there are some, month by month, what matters most and what to measure next.</summary>
public sealed record PotOutlook
{
    // Days until the next measurement where none was made yet.
    private const int UsualWait = 28;

    /// <summary>With the readings taken in, where there are some.</summary>
    public required PotForecastReport Forecast { get; init; }

    /// <summary>Null without readings.</summary>
    public CalibrationReport? Calibration { get; init; }

    /// <summary>How well readings kept back are foretold from those before them; null with fewer than four days of readings.</summary>
    public CalibrationReport? Trial { get; init; }

    public required IReadOnlyList<PotMonth> Months { get; init; }

    /// <summary>Before any reading; one entry a target.</summary>
    public required IReadOnlyList<TargetShares> Shares { get; init; }

    /// <summary>Day of the next measurement.</summary>
    public required DateOnly MeasureOn { get; init; }

    /// <summary>What it would do to the mean EC, and to the mean mineral nitrogen, of the days after it; best first.</summary>
    public required IReadOnlyList<Worth> ForEc { get; init; }

    public required IReadOnlyList<Worth> ForNitrogen { get; init; }

    /// <summary>Of the run with every figure at its most likely value.</summary>
    public required PotBudget Budget { get; init; }

    /// <summary>Works it out.</summary>
    /// <param name="request">The forecast.</param>
    /// <param name="readings">What was measured; may be empty.</param>
    /// <param name="rows">Rows of the designs for the shares of variance.</param>
    /// <param name="progress">Share done, 0 to 1.</param>
    /// <param name="cancellation">Stops between two draws.</param>
    public static Result<PotOutlook> Run(
        PotForecastRequest request, IReadOnlyList<PotReading> readings, int rows = VarianceShares.UsualRows, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        CalibrationReport? calibration = null, trial = null;
        PotForecastReport forecast;
        if (readings.Count > 0)
        {
            var calibrated = PotCalibration.Run(new() { Forecast = request, Readings = readings }, Of(progress, 0, 0.4), cancellation);
            if (!calibrated.Ok)
            {
                return Result.Fail<PotOutlook>(calibrated.Problems);
            }

            calibration = calibrated.Value;
            forecast = calibration.After;
            trial = TrialOf(request, readings, Of(progress, 0.4, 0.6), cancellation);
        }
        else
        {
            var plain = PotForecast.Run(request, Of(progress, 0, 0.4), cancellation);
            if (!plain.Ok)
            {
                return Result.Fail<PotOutlook>(plain.Problems);
            }

            forecast = plain.Value;
        }

        var shares = VarianceShares.Run(request, rows, Of(progress, 0.6, 1), cancellation);
        if (!shares.Ok)
        {
            return Result.Fail<PotOutlook>(shares.Problems);
        }

        var day = MeasureDay(request, readings);
        return Result.Of(
            new PotOutlook
            {
                Forecast = forecast,
                Calibration = calibration,
                Trial = trial,
                Months = PotMonths.Of(forecast),
                Shares = shares.Value,
                MeasureOn = request.From.AddDays(day),
                ForEc = request.Days > 1 ? MeasurementWorth.Of(forecast, day, PotTarget.ExtractEc) : [],
                ForNitrogen = request.Days > 1 ? MeasurementWorth.Of(forecast, day, PotTarget.MineralN) : [],
                Budget = PotBudget.Of(forecast.Usual),
            },
            forecast.Notes);
    }

    // The last quarter of the days of reading is foretold from the rest.
    private static CalibrationReport? TrialOf(PotForecastRequest request, IReadOnlyList<PotReading> readings, IProgress<double>? progress, CancellationToken cancellation)
    {
        List<DateOnly> days = [.. readings.Select(static r => r.Date).Distinct().Order()];
        if (days.Count < 4)
        {
            return null;
        }

        var last = days[^Math.Max(1, days.Count / 4)];
        var until = Math.Min(request.Days, days[^1].DayNumber - request.From.DayNumber + 1);
        var run = PotCalibration.Run(
            new() { Forecast = request with { Days = until }, Readings = [.. readings.Where(r => r.Date < last)], Held = [.. readings.Where(r => r.Date >= last)] }, progress, cancellation);
        return run.Value;
    }

    private static int MeasureDay(PotForecastRequest request, IReadOnlyList<PotReading> readings)
    {
        var after = readings.Count > 0 ? readings.Max(static r => r.Date).DayNumber - request.From.DayNumber + UsualWait : Math.Min(UsualWait, request.Days / 3);
        return Math.Clamp(after, 0, Math.Max(0, request.Days - 2));
    }

    private static Portion? Of(IProgress<double>? whole, double from, double to) => whole is null ? null : new(whole, from, to);

    private sealed class Portion(IProgress<double> whole, double from, double to) : IProgress<double>
    {
        public void Report(double value) => whole.Report(from + (value * (to - from)));
    }
}
