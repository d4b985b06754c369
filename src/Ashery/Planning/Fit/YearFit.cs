using Ashery.Problems;
using Ashery.RootZone.Draws;

namespace Ashery.Planning.Fit;

/// <summary>
/// Fits the year of feeds to what the roots will live in: dates and doses within the season rules, caps and gates. The same request gives the same answer on any number of
/// threads. docs/science/fitted-year.md says what is proven and what is not.
/// </summary>
public static class YearFit
{
    /// <summary>Fits a year; may take seconds.</summary>
    /// <param name="request">The garden and the day.</param>
    /// <param name="progress">Told from this and other threads; with the first plan once there is one.</param>
    /// <param name="cancellation">Stops between two rounds.</param>
    public static Result<FittedYear> Plan(FitRequest request, IProgress<FitProgress>? progress = null, CancellationToken cancellation = default)
    {
        var problems = FitRequestCheck.Of(request);
        if (problems.Count > 0)
        {
            return Result.Fail<FittedYear>(problems);
        }

        var made = Weather(request);
        return made.Ok
            ? Result.Of(new FitRun(request, made.Value, progress, cancellation).Find())
            : Result.Fail<FittedYear>(made.Problems);
    }

    /// <summary>Made weather of the place; days that were measured stand as they were.</summary>
    private static Result<DrawnWeather> Weather(FitRequest request)
    {
        var generator = Climate.WeatherGenerator.For(request.Garden.Place);
        return !generator.Ok ? Result.Fail<DrawnWeather>(generator.Problems)
            : Result.Of(request.Replan?.Observed is { Days.Count: > 0 } observed
                ? DrawnWeather.KnownThenMade(observed, generator.Value, request.Seed).With(request.Replan.Told)
                : DrawnWeather.Of(generator.Value, request.Seed).With(request.Replan?.Told ?? []));
    }
}
