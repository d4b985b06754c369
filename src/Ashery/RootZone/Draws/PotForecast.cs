using Ashery.Climate;
using Ashery.Problems;

namespace Ashery.RootZone.Draws;

/// <summary>A pot's likely year with its bands: many draws of everything uncertain through the daily model.</summary>
public static class PotForecast
{
    private static readonly PotFigure[] Figures = Enum.GetValues<PotFigure>();

    /// <summary>Runs the draws.</summary>
    /// <param name="request">The wish.</param>
    /// <param name="progress">Share done, 0 to 1; may come from any thread.</param>
    /// <param name="cancellation">Stops between two draws.</param>
    /// <returns>The forecast, or what stands in its way.</returns>
    public static Result<PotForecastReport> Run(PotForecastRequest request, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        var problems = ForecastCheck.Of(request);
        if (problems.Exists(static p => p.Severity == Severity.Error))
        {
            return Result.Fail<PotForecastReport>(problems);
        }

        var space = request.Space ?? DrawSpace.Of(request.Scenario);
        var open = new DailyWeather[request.Days];
        request.Weather.Fill(open, request.From, 0);
        var usual = RootZoneModel.Run(request.Scenario, new(new() { Name = "", Latitude = 0 }, open, ""));
        if (!usual.Ok)
        {
            return Result.Fail<PotForecastReport>(usual.Problems);
        }

        var shares = LatinHypercube.Of([.. space.Figures.Select(static f => f.Id)], request.Draws, request.Seed, 0);
        var runner = new DrawRunner(request.Scenario, request.Weather, request.From, request.Days, space);
        var table = new DrawTable(request.Draws, request.Days);
        runner.Each(request.Draws, request.Threads, (desk, i) =>
        {
            var sink = new DrawSink(table, i);
            runner.Run(desk, shares.AsSpan(i * space.Count, space.Count), i, ref sink);
        }, progress, cancellation);
        return Result.Of(Report(request, space, table, usual.Value, [.. problems, .. usual.Problems, .. request.Weather.Notes]) with { Shares = shares });
    }

    /// <summary>Bands and odds of a table of draws.</summary>
    internal static PotForecastReport Report(PotForecastRequest request, DrawSpace space, DrawTable table, PotRun usual, IReadOnlyList<Problem> notes)
    {
        var limit = request.EcLimit ?? request.Scenario.Plant.SaltThreshold;
        var over = new double[table.Days];
        var ever = new bool[table.Draws];
        for (var day = 0; day < table.Days; day++)
        {
            var values = table.Of(PotFigure.ExtractEc, day);
            var count = 0;
            for (var i = 0; i < values.Length; i++)
            {
                if (values[i] > limit)
                {
                    count++;
                    ever[i] = true;
                }
            }

            over[day] = count / (double)table.Draws;
        }

        return new()
        {
            Request = request,
            Space = space,
            Bands = Bands(table),
            EcLimit = limit,
            OverLimit = over,
            OverLimitEver = ever.AsSpan().Count(true) / (double)table.Draws,
            DaysOverLimit = over.Sum(),
            Draws = table,
            Usual = usual,
            Notes = notes,
        };
    }

    private static List<DayBands> Bands(DrawTable table)
    {
        var sorted = new float[table.Draws];
        var bands = new List<DayBands>(Figures.Length);
        foreach (var figure in Figures)
        {
            var days = new DayBand[table.Days];
            for (var day = 0; day < table.Days; day++)
            {
                table.Of(figure, day).CopyTo(sorted);
                Array.Sort(sorted);
                days[day] = Quantiles.Band(sorted);
            }

            bands.Add(new(figure, days));
        }

        return bands;
    }
}
