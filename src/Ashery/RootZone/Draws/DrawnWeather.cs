using Ashery.Climate;
using Ashery.Problems;

namespace Ashery.RootZone.Draws;

/// <summary>Weather of a draw: days that are known, then one of the likely continuations. Safe for several threads.</summary>
public sealed class DrawnWeather
{
    private readonly WeatherGenerator? generator;
    private readonly DailyWeather[] known;
    private readonly int seed;

    private readonly ToldDay[] told;

    private DrawnWeather(WeatherGenerator? generator, DailyWeather[] known, int seed, IReadOnlyList<Problem> notes, params ToldDay[] told)
    {
        this.told = told;
        this.generator = generator;
        this.known = known;
        this.seed = seed;
        Notes = notes;
    }

    /// <summary>False when every draw has the same weather.</summary>
    public bool Varies => generator is not null;

    /// <summary>False when all of these days are known.</summary>
    public bool VariesIn(DateOnly from, int days) =>
        generator is not null && !(known.Length > 0 && known[0].Date <= from && known[^1].Date.DayNumber >= from.DayNumber + days - 1);

    /// <summary>What was assumed in making it.</summary>
    public IReadOnlyList<Problem> Notes { get; }

    /// <summary>Last day it reaches; without end where it is made.</summary>
    internal DateOnly Last => generator is not null ? DateOnly.MaxValue : known[^1].Date;

    /// <summary>First day it reaches.</summary>
    internal DateOnly First => generator is not null ? DateOnly.MinValue : known[0].Date;

    /// <summary>Made from the normals of a place.</summary>
    public static Result<DrawnWeather> Of(Place place, int seed)
    {
        var made = WeatherGenerator.For(place);
        return made.Ok ? Result.Of(new DrawnWeather(made.Value, [], seed, made.Value.Notes)) : Result.Fail<DrawnWeather>(made.Problems);
    }

    /// <summary>Made by a generator that is ready.</summary>
    public static DrawnWeather Of(WeatherGenerator generator, int seed) => new(generator, [], seed, generator.Notes);

    /// <summary>One known series, the same in every draw.</summary>
    public static DrawnWeather Known(WeatherSeries series) => new(null, [.. series.Days], 0, series.Notes);

    /// <summary>What was measured as far as it goes, made weather on all other days.</summary>
    public static DrawnWeather KnownThenMade(WeatherSeries series, WeatherGenerator generator, int seed) => new(generator, [.. series.Days], seed, [.. series.Notes, .. generator.Notes]);

    /// <summary>The same with what was told of some days, in every draw; where days are made alone.</summary>
    public DrawnWeather With(IReadOnlyList<ToldDay> days) => new(generator, known, seed, Notes, [.. told, .. days]);

    /// <summary>Days of one draw.</summary>
    public void Fill(Span<DailyWeather> days, DateOnly from, int draw)
    {
        generator?.Fill(days, from, seed, draw);
        Tell(days, from);
        if (known.Length == 0)
        {
            return;
        }

        // Days both in the series and asked for.
        var shift = known[0].Date.DayNumber - from.DayNumber;
        var first = Math.Max(0, shift);
        var end = Math.Min(days.Length, shift + known.Length);
        if (end > first)
        {
            known.AsSpan(first - shift, end - first).CopyTo(days[first..]);
        }
    }

    // Before measured days are copied in: what an instrument says goes before what was told.
    private void Tell(Span<DailyWeather> days, DateOnly from)
    {
        foreach (var day in told)
        {
            var at = day.Date.DayNumber - from.DayNumber;
            if (generator is not null && at >= 0 && at < days.Length)
            {
                days[at] = generator.With(in days[at], day);
            }
        }
    }
}
