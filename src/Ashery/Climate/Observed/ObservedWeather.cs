using System.Globalization;
using Ashery.Climate.Evapotranspiration;
using Ashery.Problems;

namespace Ashery.Climate.Observed;

/// <summary>
/// Turns days of a station into a series without gaps. Short gaps are filled by a rule that the notes tell; long ones from weather made of the place's
/// normals, or refused when it has none.
/// </summary>
public static class ObservedWeather
{
    /// <summary>Longest gap, days, that is bridged from its neighbours.</summary>
    public const int ShortGap = 5;

    /// <summary>Longest span of a series, days.</summary>
    public const int MostDays = 100_000;

    /// <summary>Seed of the weather that fills long gaps: always the same, so that a file gives one series.</summary>
    private const int FillSeed = 1;

    /// <summary>The series of a place.</summary>
    /// <param name="place">Where; its latitude and height govern the sun and the pressure.</param>
    /// <param name="observed">Days in any order, none twice.</param>
    /// <param name="origin">Where they come from, in words.</param>
    public static Result<WeatherSeries> Series(Place place, IReadOnlyList<ObservedDay> observed, string origin)
    {
        var (first, last) = Span(observed);
        if (first > last)
        {
            return Result.Fail<WeatherSeries>("temperature", "No day has both a maximum and a minimum.", "Give a file with daily extremes of temperature in °C.");
        }

        var count = last.DayNumber - first.DayNumber + 1;
        if (count > MostDays)
        {
            return Result.Fail<WeatherSeries>(
                "dates",
                string.Create(CultureInfo.InvariantCulture, $"They run from {first:yyyy-MM-dd} to {last:yyyy-MM-dd}, more than {MostDays} days."),
                "Look for a mistyped year, or take a part of the file.");
        }

        var days = new ObservedDay[count];
        for (var i = 0; i < count; i++)
        {
            days[i] = new(first.AddDays(i));
        }

        foreach (var day in observed)
        {
            if (day.Date >= first && day.Date <= last)
            {
                days[day.Date.DayNumber - first.DayNumber] = day;
            }
        }

        var problems = new List<Problem>();
        new Gaps(place, days, problems, Made(place, first, count)).Fill();
        if (problems.Exists(static p => p.Severity == Severity.Error))
        {
            return Result.Fail<WeatherSeries>(problems);
        }

        var finished = new DaySubstitutes(place, problems).Finish(days);
        return problems.Exists(static p => p.Severity == Severity.Error)
            ? Result.Fail<WeatherSeries>(problems)
            : Result.Of(new WeatherSeries(place, finished, origin) { Notes = problems });
    }

    // Made only when asked for: most files have no long gap.
    private static Lazy<DailyWeather[]?> Made(Place place, DateOnly first, int count) => new(() =>
    {
        if (WeatherGenerator.For(place) is not { Ok: true, Value: var generator })
        {
            return null;
        }

        var made = new DailyWeather[count];
        generator.Fill(made, first, FillSeed);
        return made;
    });

    private static (DateOnly First, DateOnly Last) Span(IReadOnlyList<ObservedDay> observed)
    {
        var (first, last) = (DateOnly.MaxValue, DateOnly.MinValue);
        foreach (var day in observed)
        {
            if (!double.IsNaN(day.Max) && !double.IsNaN(day.Min))
            {
                first = day.Date < first ? day.Date : first;
                last = day.Date > last ? day.Date : last;
            }
        }

        return (first, last);
    }
}
