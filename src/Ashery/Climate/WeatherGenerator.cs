using Ashery.Climate.Evapotranspiration;
using Ashery.Climate.Generation;
using Ashery.Problems;

namespace Ashery.Climate;

/// <summary>
/// Makes repeatable daily weather from the monthly normals of a place, after Richardson (1981): rain by a first-order chain of wet and dry days with
/// gamma amounts, temperatures and radiation by an autoregression of their departures from means that depend on wet and dry.
/// docs/science/weather.md has the equations and what was assumed.
/// </summary>
public sealed class WeatherGenerator
{
    private readonly Place place;
    private readonly DayEt sun;
    private readonly MonthModel[] months = new MonthModel[12];
    private readonly SmoothYear max;
    private readonly SmoothYear min;
    private readonly double persistence = 1 - GeneratorData.Of("occurrence")[0];

    private WeatherGenerator(Place place)
    {
        this.place = place;
        var elevation = place.ElevationMetres ?? 0;
        sun = new(place.Latitude, elevation);
        Span<double> upper = stackalloc double[12], lower = stackalloc double[12];
        for (var m = 0; m < 12; m++)
        {
            var normal = place.Normals![m];
            (upper[m], lower[m]) = (normal.MeanMax, normal.MeanMin);
            var top = MonthModel.Mean(m + 1, sun);
            var estimate = SolarRadiation.FromRange(normal.MeanMax, normal.MeanMin, top, place.NearCoast ? SolarRadiation.Coast : SolarRadiation.Inland, elevation);
            months[m] = new(m + 1, normal, sun, estimate);
        }

        max = new(upper);
        min = new(lower);
        Notes = [.. Assumptions()];
    }

    /// <summary>What was assumed where the place does not say.</summary>
    public IReadOnlyList<Problem> Notes { get; }

    /// <summary>
    /// The generator of a place, ready to be run often; safe to use from several threads at once. Fails when the place has no twelve
    /// normals or they cannot be.
    /// </summary>
    public static Result<WeatherGenerator> For(Place place)
    {
        var problems = NormalsCheck.Of(place);
        return problems.Count > 0 ? Result.Fail<WeatherGenerator>(problems) : Result.Of(new WeatherGenerator(place));
    }

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
        return new(place, made, FormattableString.Invariant($"made from monthly normals, seed {seed}")) { Notes = Notes };
    }

    /// <summary>Fills consecutive days from <paramref name="from"/> on without allocating: for many draws over one buffer.</summary>
    /// <param name="days">Where the days go; its length is the number of days.</param>
    /// <param name="from">First day.</param>
    /// <param name="seed">Seed of the run.</param>
    /// <param name="draw">Which of many equally likely series of that seed; 0 is the one <see cref="Series"/> gives.</param>
    public void Fill(Span<DailyWeather> days, DateOnly from, int seed, int draw = 0)
    {
        if (days.IsEmpty)
        {
            return;
        }

        var random = new WeatherStream(seed, draw);
        var residuals = ResidualModel.Default;
        var yesterday = months[from.AddDays(from == DateOnly.MinValue ? 0 : -1).Month - 1].WetShare;
        var wet = random.Uniform() < yesterday;
        var z = residuals.First(ref random);
        var (year, month, day) = (from.Year, from.Month, from.Day);
        var (number, length) = (from.DayOfYear, DateTime.DaysInMonth(year, month));
        for (var i = 0; i < days.Length; i++)
        {
            var model = months[month - 1];
            wet = random.Uniform() < WetChance(model.WetShare, yesterday, wet);
            yesterday = model.WetShare;
            var rain = wet ? MonthModel.LeastRain + (model.RainScale * random.Gamma(model.RainShape)) : 0;
            z = residuals.Next(z, ref random);
            days[i] = Day(model, from.AddDays(i), number, max.Of(month, day, length), min.Of(month, day, length), wet, rain, z);

            number++;
            if (++day > length)
            {
                day = 1;
                if (++month > 12)
                {
                    (year, month, number) = (year + 1, 1, 1);
                }

                length = year > 9999 ? 31 : DateTime.DaysInMonth(year, month);
            }
        }
    }

    /// <summary>
    /// A day as made, with what was told of it. A told maximum moves the minimum by as much; the moisture of the air and the sun stay as made, and reference
    /// evapotranspiration is worked out anew.
    /// </summary>
    public DailyWeather With(in DailyWeather made, ToldDay told)
    {
        var rain = told.RainMm ?? made.RainMm;
        if (told.MaxCelsius is not { } upper)
        {
            return made with { RainMm = rain };
        }

        var lower = made.MinCelsius + upper - made.MaxCelsius;
        var vapour = Math.Min(made.VapourKpa, VapourPressure.Saturation(lower));
        var et = sun.Of(made.Date.DayOfYear, upper, lower, made.RadiationMj, made.WindMs, vapour);
        return made with { RainMm = rain, MaxCelsius = upper, MinCelsius = lower, VapourKpa = vapour, ReferenceEtMm = et };
    }

    // P(wet) from today's and yesterday's long-run shares of wet days, f and g, and yesterday: f + d (1 - g) after a wet day, f - d g after a dry one, with d the
    // day-to-day correlation. Within a month this is Geng's 0.25 + 0.75 f and 0.75 f; across months it keeps the share of every day exactly f.
    private double WetChance(double share, double shareYesterday, bool wetYesterday)
    {
        var d = persistence;
        if (share != shareYesterday)
        {
            d = shareYesterday > 0 ? Math.Min(d, share / shareYesterday) : d;
            d = shareYesterday < 1 ? Math.Min(d, (1 - share) / (1 - shareYesterday)) : d;
        }

        return wetYesterday ? share + (d * (1 - shareYesterday)) : share - (d * shareYesterday);
    }

    // Figures are rounded as a station would print them, so that the last bit of a machine's exponential does not show.
    private DailyWeather Day(MonthModel model, DateOnly date, int number, double maxMean, double minMean, bool wet, double rain, (double Max, double Min, double Sun) z)
    {
        var t = wet ? model.Wet : model.Dry;
        var upper = maxMean + t.MaxAbove + (t.MaxSpread * z.Max);
        var lower = minMean + t.MinAbove + (t.MinSpread * z.Min);
        if (upper - lower < model.LeastRange)
        {
            var middle = (upper + lower) / 2;
            (upper, lower) = (middle + (model.LeastRange / 2), middle - (model.LeastRange / 2));
        }

        (upper, lower) = (Hundredth(upper), Hundredth(lower));
        var s = wet ? model.WetSun : model.DrySun;
        var radiation = Hundredth(Math.Clamp(s.Mean + (s.Spread * z.Sun), s.Low, s.High) * sun.Extraterrestrial(number));
        var vapour = model.Humidity is { } humidity
            ? VapourPressure.FromMeanHumidity(upper, lower, humidity)
            : VapourPressure.FromMinimum(lower, model.DewBelow);
        vapour = Math.Round(vapour * 1000) / 1000;
        var et = Math.Round(sun.Of(number, upper, lower, radiation, model.Wind, vapour) * 1000) / 1000;
        return new(date, lower, upper, Hundredth(rain), radiation, model.Wind, vapour, et);
    }

    private static double Hundredth(double value) => Math.Round(value * 100) / 100;

    private IEnumerable<Problem> Assumptions()
    {
        var normals = place.Normals!;
        if (place.ElevationMetres is null)
        {
            yield return Note("elevation", "No height is given: sea level is taken.", "Give it in metres; a kilometre changes evapotranspiration by a few per cent.");
        }

        if (months.Any(static m => m.WetDaysEstimated))
        {
            yield return Note("wet days", "Days with rain are estimated from the month's rain.", "Give them with the normals if you know them.");
        }

        if (normals.Any(static n => n.RadiationMj is null))
        {
            yield return Note("radiation", place.NearCoast
                ? "Radiation is estimated from the temperature range, as near a coast."
                : "Radiation is estimated from the temperature range, as inland.", "Give MJ/m² a day with the normals if you know it.");
        }

        if (normals.Any(static n => n.Humidity is null))
        {
            yield return Note("humidity", "The dew point is taken to be the day's minimum, 2 °C lower in dry months.", "Give the mean relative humidity with the normals if you know it.");
        }

        if (normals.Any(static n => n.WindMs is null))
        {
            yield return Note("wind", "Wind is taken as 2 m/s.", "Give it in m/s at 2 m with the normals if you know it.");
        }
    }

    private static Problem Note(string field, string message, string wayOut) => new(field, message, wayOut, Severity.Note);
}
