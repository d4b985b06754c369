using Ashery.Problems;
using Ashery.RootZone.Draws;

namespace Ashery.RootZone.Calibration;

/// <summary>
/// Pulls the draws of a pot to what was measured at it. Every unknown moves on the standard normal scale of its own distribution and so keeps within its bounds; the run
/// begins anew with the moved unknowns, so that its balances stay closed. Weather nobody measured is noise, drawn anew each round; at the end each member gets
/// a past that fits.
/// </summary>
public static class PotCalibration
{
    /// <summary>Runs the forecast as it was and as the readings make it.</summary>
    public static Result<CalibrationReport> Run(CalibrationRequest request, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        var problems = CalibrationCheck.Of(request);
        if (problems.Count > 0)
        {
            return Result.Fail<CalibrationReport>(problems);
        }

        var part = new Part(progress, request.Rounds + 3);
        var plain = PotForecast.Run(request.Forecast, part.Next(), cancellation);
        if (!plain.Ok)
        {
            return Result.Fail<CalibrationReport>(plain.Problems);
        }

        var space = plain.Value.Space;
        var forecast = request.Forecast;
        var taken = new ReadingSet(request.Readings, forecast.From);
        var members = new Members(forecast, space, taken);
        var before = plain.Value.Shares;
        var z = Array.ConvertAll(before, NormalQuantile.Of);
        EnsembleSmoother.Run(z, space.Count, taken.Values, taken.Errors, members.Noise, round => members.Predict(z, round, part.Next(), cancellation), request.Rounds, forecast.Seed);
        var weather = members.ChooseWeather(z, request.Rounds, part.Next(), cancellation);
        var after = Array.ConvertAll(z, NormalQuantile.Share);

        // The last pass keeps the bands and, beside the readings taken in, those held back.
        var all = new ReadingSet(request.Readings.Concat(request.Held), forecast.From);
        var (table, predicted) = Last(forecast, space, after, weather, all, part.Next(), cancellation);
        var first = Last(forecast, space, before, null, all, null, cancellation).Predicted;
        var report = PotForecast.Report(forecast, space, table, plain.Value.Usual, plain.Value.Notes) with { Shares = after };
        var fits = Enumerable.Range(0, all.Count).Select(i => new ReadingFit(all.All[i], Band(all, first, i), Band(all, predicted, i))).ToList();
        return Result.Of(new CalibrationReport
        {
            Request = request,
            Before = plain.Value,
            After = report,
            Taken = [.. fits.Where(f => request.Readings.Contains(f.Reading))],
            Held = [.. fits.Where(f => !request.Readings.Contains(f.Reading))],
            Shifts = FigureShifts.Of(space, before, after, forecast.Draws),
            Notes = plain.Value.Notes,
        });
    }

    private static (DrawTable Table, double[] Predicted) Last(
        PotForecastRequest forecast, DrawSpace space, double[] shares, int[]? weather, ReadingSet readings, IProgress<double>? progress, CancellationToken cancellation)
    {
        var table = new DrawTable(forecast.Draws, forecast.Days);
        var predicted = new double[forecast.Draws * readings.Count];
        var runner = new DrawRunner(forecast.Scenario, forecast.Weather, forecast.From, forecast.Days, space);
        runner.Each(forecast.Draws, forecast.Threads, (desk, i) =>
        {
            var sink = new PairSink<DrawSink, ReadingSink>(new(table, i), new(readings, predicted, i * readings.Count));
            runner.Run(desk, shares.AsSpan(i * space.Count, space.Count), weather?[i] ?? i, ref sink);
        }, progress, cancellation);
        return (table, predicted);
    }

    private static DayBand Band(ReadingSet set, double[] predicted, int reading)
    {
        var values = new float[predicted.Length / set.Count];
        for (var i = 0; i < values.Length; i++)
        {
            values[i] = (float)ReadingSet.Unscale(set.Kind(reading), predicted[(i * set.Count) + reading]);
        }

        Array.Sort(values);
        return Quantiles.Band(values);
    }

    // Progress of the passes one after another.
    private sealed class Part(IProgress<double>? whole, int parts)
    {
        private int begun = -1;

        public IProgress<double>? Next()
        {
            begun++;
            return whole is null ? null : new Share(whole, begun, parts);
        }

        private sealed class Share(IProgress<double> whole, int at, int parts) : IProgress<double>
        {
            public void Report(double value) => whole.Report(Math.Min(1, (at + value) / parts));
        }
    }
}
