using System.Globalization;
using Ashery.Cli.Frame;
using Ashery.Climate;
using Ashery.Exchange.Weather;
using Ashery.Gardens;
using Ashery.Planning.Fit;
using Ashery.Problems;

namespace Ashery.Cli.Verbs;

/// <summary>The words of <c>year --fit</c>, read into a request and run.</summary>
internal sealed class FitOptions
{
    private readonly ValueOption draws, seed, today, missed, weather;

    public FitOptions(Func<ValueOption, ValueOption> add)
    {
        draws = add(new ValueOption("--draws", "N", "With --fit: made years the plan is judged on, 20 to 5000 (200)"));
        seed = add(new ValueOption("--seed", "N", "With --fit: another seed makes other years (1)"));
        today = add(new ValueOption("--today", "DATE", "With --fit: fit again from this day, what was done stays"));
        missed = add(new ValueOption("--missed", "DATE", "With --today: a planned day on which nothing was given; may be repeated") { Repeatable = true });
        weather = add(new ValueOption("--weather", "FILE", "With --today: the weather as it was, a file as ashery weather reads it"));
    }

    /// <summary>True when words are given that only a fit understands; each is told.</summary>
    public bool Stray(Given given)
    {
        foreach (var option in new[] { draws, seed, today, missed, weather })
        {
            if (given.Has(option))
            {
                given.Add(new Problem(Given.Field(option), $"{option.Name} belongs to --fit.", "Give --fit too, or leave it out."));
            }
        }

        return given.Wrong;
    }

    public bool IsReplan(Given given) => given.Has(today);

    /// <summary>The fitted year; null with problems kept.</summary>
    public FittedYear? Run(Given given, Terminal terminal, Garden garden, DateOnly from)
    {
        var request = new FitRequest(garden, from)
        {
            Draws = given.Whole(draws, FitRequest.UsualDraws, FitRequest.LeastDraws, FitRequest.MostDraws),
            Seed = given.Whole(seed, 1, 0, int.MaxValue),
        };
        var day = Dates.Read(given, today);
        var days = Missed(given, day);
        var series = Observed(given, garden);
        if (given.Wrong)
        {
            return null;
        }

        var progress = new ProgressLine(terminal);
        var year = given.Take(YearFit.Plan(request, progress));
        if (year is not null && day is { } now)
        {
            year = given.Take(YearFit.Plan(request with { Replan = new(year, now) { Missed = days, Observed = series } }, progress));
        }

        progress.Clear();
        return year;
    }

    private List<DateOnly> Missed(Given given, DateOnly? day)
    {
        List<DateOnly> days = [];
        foreach (var text in given.Texts(missed))
        {
            if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var one))
            {
                days.Add(one);
            }
            else
            {
                given.Add(new Problem("missed", $"{SafeText.Quoted(text)} is not a day.", "Write year-month-day, as in --missed 2026-05-20."));
            }
        }

        if (day is null && (given.Has(missed) || given.Has(weather)))
        {
            given.Add(new Problem("today", "What happened is told, but not from which day to plan again.", "Give --today with the first day that may still change."));
        }

        return days;
    }

    private WeatherSeries? Observed(Given given, Garden garden)
    {
        if (given.Text(weather) is not { } path || given.Wrong)
        {
            return null;
        }

        try
        {
            using var stream = File.OpenRead(path);
            return given.Take(WeatherFile.Read(stream, path, garden.Place));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            given.Add(new Problem("weather", $"{SafeText.Quoted(path)} cannot be read.", "Give a weather file that is there and may be read."));
            return null;
        }
    }
}
