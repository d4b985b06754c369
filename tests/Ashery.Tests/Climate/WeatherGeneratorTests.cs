using Ashery.Climate;
using Ashery.Climate.Generation;
using CsCheck;

namespace Ashery.Tests.Climate;

/// <summary>Made weather keeps the normals it was made from, and its published habits.</summary>
public class WeatherGeneratorTests
{
    private const int Years = 400;

    // Invented climates: a mild wet coast, a monsoon, a cold inland, a dry place with one rainless month, and the mild coast upside down.
    public static TheoryData<string> Climates => new(Named.Keys);

    private static readonly Dictionary<string, Place> Named = new(StringComparer.Ordinal)
    {
        ["coast"] = Place(47, 20, m => new(14 - (7 * Cos(m)), 7 - (6 * Cos(m)), 80 + (30 * Cos(m))) { WetDays = 13 + (3 * Cos(m)) }),
        ["monsoon"] = Place(18, 50, m => new(31 - (2 * Cos(m)), 23 - (3 * Cos(m)), m is >= 5 and <= 8 ? 420 : m is 4 or 9 ? 90 : 6)),
        ["inland"] = Place(55, 300, m => new(4 - (16 * Cos(m)), -5 - (14 * Cos(m)), 40 - (25 * Cos(m)))),
        ["dry"] = Place(-30, 700, m => new(26 + (8 * Cos(m)), 11 + (8 * Cos(m)), m == 6 ? 0 : 12) { Humidity = 40, WindMs = 3 }),
        ["south"] = Place(-47, 20, m => new(14 + (7 * Cos(m)), 7 + (6 * Cos(m)), 80 - (30 * Cos(m))) { WetDays = 13 - (3 * Cos(m)), RadiationMj = 12 + (9 * Cos(m)) }),
    };

    [Theory]
    [MemberData(nameof(Climates))]
    public void Many_years_bring_back_the_normals(string name)
    {
        var place = Named[name];
        var days = Days(place, Years, 11);
        for (var month = 1; month <= 12; month++)
        {
            var label = FormattableString.Invariant($"{name} {month}");
            var normal = place.Normals![month - 1];
            var years = days.Where(d => d.Date.Month == month).GroupBy(static d => d.Date.Year).ToList();

            // Years are independent of each other, so the error of their mean follows from their own spread; four and a half of it is passed by chance once in 150,000.
            Near($"{label} max", normal.MeanMax, years.Select(static y => y.Average(static d => d.MaxCelsius)), 0.02);
            Near($"{label} min", normal.MeanMin, years.Select(static y => y.Average(static d => d.MinCelsius)), 0.02);
            Near($"{label} rain", normal.RainMm, years.Select(static y => y.Sum(static d => d.RainMm)), 0.02);
            Near($"{label} wet days", MonthModel.WetDays(normal, month), years.Select(static y => (double)y.Count(static d => d.RainMm > 0)), 0.01);
            if (normal.RadiationMj is { } radiation)
            {
                Near($"{label} sun", radiation, years.Select(static y => y.Average(static d => d.RadiationMj)), 0.03);
            }
        }
    }

    // The share of wet days is what was asked where it was asked.
    [Fact]
    public void Given_wet_days_are_kept() => Assert.All(Enumerable.Range(1, 12), static m =>
        Assert.Equal(Named["coast"].Normals![m - 1].WetDays!.Value, MonthModel.WetDays(Named["coast"].Normals![m - 1], m), 9));

    // Inside a month rain follows Geng's line: P(wet after wet) = 0.25 + 0.75 f, P(wet after dry) = 0.75 f; a later world-wide fit
    // (Sommer and Kaplan 2017, seen) has 0.246 + 0.754 f and 0.726 f.
    [Fact]
    public void Wet_days_cling_together_as_published()
    {
        var flat = Place(45, 0, _ => new(20, 10, 60) { WetDays = 9 });
        var days = Days(flat, Years, 5);
        var f = days.Count(static d => d.RainMm > 0) / (double)days.Length;
        var pairs = days.Zip(days.Skip(1)).ToList();
        var afterWet = pairs.Where(static p => p.First.RainMm > 0).Average(static p => p.Second.RainMm > 0 ? 1.0 : 0);
        var afterDry = pairs.Where(static p => p.First.RainMm == 0).Average(static p => p.Second.RainMm > 0 ? 1.0 : 0);
        Assert.Equal(0.25 + (0.75 * f), afterWet, 0.01);
        Assert.Equal(0.75 * f, afterDry, 0.01);
        Assert.Equal(0.246 + (0.754 * f), afterWet, 0.02);
        Assert.Equal(0.726 * f, afterDry, 0.02);
    }

    // Temperatures remember: with no rain to move the means, day-to-day correlations are those of the printed matrices.
    [Fact]
    public void Correlations_are_those_of_the_matrices()
    {
        // So wide a range that the least difference of the extremes is never reached.
        var rainless = Place(45, 0, static _ => new(35, 5, 0) { RadiationMj = 14 });
        var days = Days(rainless, Years, 7);
        double[][] z =
        [
            Standard(days.Select(static d => d.MaxCelsius)),
            Standard(days.Select(static d => d.MinCelsius)),
        ];
        var model = ResidualModel.Default;
        for (var i = 0; i < 2; i++)
        {
            for (var j = 0; j < 2; j++)
            {
                Assert.Equal(model.Correlation[(i * 3) + j], Together(z[i], z[j], 0), 0.02);
                Assert.Equal(model.Lag1[(i * 3) + j], Together(z[i], z[j], 1), 0.02);
            }
        }

        // Richardson's own mean lag-1 correlation of the maximum is 0.62 (from memory).
        Assert.Equal(0.62, model.Lag1[0], 0.02);
    }

    [Fact]
    public void Rainy_days_are_cooler_and_darker()
    {
        var days = Days(Named["coast"], 50, 3).Where(static d => d.Date.Month == 7).ToList();
        var (wet, dry) = (days.Where(static d => d.RainMm > 0).ToList(), days.Where(static d => d.RainMm == 0).ToList());
        Assert.True(wet.Average(static d => d.MaxCelsius) < dry.Average(static d => d.MaxCelsius) - 2);
        Assert.Equal(0.5, wet.Average(static d => d.RadiationMj) / dry.Average(static d => d.RadiationMj), 0.03);
        Assert.True(wet.Average(static d => d.ReferenceEtMm) < dry.Average(static d => d.ReferenceEtMm));
    }

    // Held exactly, so that any change of the generator or of a machine's arithmetic shows.
    [Fact]
    public void The_same_seed_gives_the_same_days()
    {
        var first = WeatherGenerator.Run(Named["coast"], new(2027, 2, 27), 4, 42).Value!.Days;
        var again = WeatherGenerator.Run(Named["coast"], new(2027, 2, 27), 4, 42).Value!.Days;
        Assert.Equal(first, again);
        Assert.NotEqual(first, WeatherGenerator.Run(Named["coast"], new(2027, 2, 27), 4, 43).Value!.Days);
        Assert.Equal(SeedFortyTwo, string.Join("; ", first.Select(static d => FormattableString.Invariant(
            $"{d.Date:MM-dd} {d.MinCelsius} {d.MaxCelsius} {d.RainMm} {d.RadiationMj} {d.VapourKpa} {d.ReferenceEtMm}"))));
    }

    private const string SeedFortyTwo =
        "02-27 5.26 7.46 20.16 0.72 0.888 0.166; 02-28 5.48 8.41 14.45 1.76 0.902 0.352; 03-01 1.99 4.31 0 9.79 0.705 0.712; 03-02 -1.78 4.37 0 10.24 0.536 0.916";

    [Fact]
    public void Draws_of_one_seed_are_unlike_and_the_first_is_the_series()
    {
        var generator = WeatherGenerator.For(Named["coast"]).Value!;
        DailyWeather[] zero = new DailyWeather[365], one = new DailyWeather[365];
        generator.Fill(zero, new(2027, 1, 1), 9);
        generator.Fill(one, new(2027, 1, 1), 9, 1);
        Assert.Equal(generator.Series(new(2027, 1, 1), 365, 9).Days, zero);
        var common = Together(Standard(zero.Select(static d => d.MaxCelsius)), Standard(one.Select(static d => d.MaxCelsius)), 0);
        Assert.True(common < 0.9, "Only the season is shared.");
        Assert.InRange(Together(Standard(zero.Select(static d => d.RainMm)), Standard(one.Select(static d => d.RainMm)), 0), -0.2, 0.2);
    }

    [Fact]
    public void Days_follow_each_other_over_leap_days_and_years()
    {
        var days = WeatherGenerator.Run(Named["inland"], new(2027, 12, 30), 800, 1).Value!.Days;
        Assert.All(days.Select((d, i) => (d, i)), static x => Assert.Equal(new DateOnly(2027, 12, 30).AddDays(x.i), x.d.Date));
        Assert.Contains(days, static d => d.Date == new DateOnly(2028, 2, 29));
    }

    // Any normals the garden file lets through, at any latitude: nothing impossible comes out.
    [Fact]
    public void Whatever_the_normals_the_days_can_be() => Gen.Select(Gen.Double[-90, 90], Gen.Double[-55, 45], Gen.Double[0.5, 25], Gen.Double[0, 900], Gen.Int[0, 10000]).Sample((latitude, min, range, rain, seed) =>
    {
        var place = Place(latitude, 100, m => new(Math.Min(60, min + range), min, m % 5 == 0 ? 0 : rain * (m + 1) / 12));
        var sun = new Ashery.Climate.Evapotranspiration.DayEt(latitude, 100);
        foreach (var d in WeatherGenerator.Run(place, new(2028, 1, 1), 366, seed).Value!.Days)
        {
            var top = sun.Clear * sun.Extraterrestrial(d.Date.DayOfYear);
            Assert.True(d.MaxCelsius > d.MinCelsius && d.RainMm is 0 or >= 0.1 && d.RadiationMj >= 0 && d.RadiationMj <= top + 0.006, d.ToString());
            Assert.True(d.ReferenceEtMm is >= 0 and < 25 && d.VapourKpa >= 0 && double.IsFinite(d.MaxCelsius + d.MinCelsius + d.RainMm), d.ToString());
        }
    }, iter: 100);

    [Fact]
    public void Normals_that_cannot_be_are_refused_by_name()
    {
        Assert.Contains("twelve", WeatherGenerator.For(new() { Name = "x", Latitude = 10 }).Problems[0].WayOut, StringComparison.Ordinal);
        var wrong = WeatherGenerator.For(Place(95, 9000, m => m switch
        {
            0 => new(5, 9, 10),
            1 => new(20, 10, -3),
            2 => new(20, 10, 30) { WetDays = 0 },
            3 => new(double.NaN, 10, 30),
            4 => new(20, 10, 30) { Humidity = 120, WindMs = -1, RadiationMj = 70 },
            _ => new(20, 10, 30),
        }));
        Assert.False(wrong.Ok);
        Assert.Equal(
            ["latitude", "elevation", "January", "February, rain", "March, wet days", "April, mean maximum", "April", "May, wind", "May, humidity", "May, radiation"],
            wrong.Problems.Select(static p => p.Field));
    }

    [Fact]
    public void What_was_assumed_is_said()
    {
        Assert.Equal(["wet days", "radiation", "humidity", "wind"], WeatherGenerator.For(Named["inland"]).Value!.Notes.Select(static n => n.Field));
        Assert.DoesNotContain("wet days", WeatherGenerator.For(Named["coast"]).Value!.Notes.Select(static n => n.Field));
    }

    // The bend of a normal held between bounds, against a plain sum over its density.
    [Fact]
    public void Held_normals_have_the_mean_they_say() => Gen.Select(Gen.Double[-3, 3], Gen.Double[0.1, 3], Gen.Double[-2, 0], Gen.Double[0, 2]).Sample((mean, deviation, low, high) =>
    {
        var (sum, step) = (0.0, 0.001);
        for (var z = -8 + (step / 2); z < 8; z += step)
        {
            sum += Math.Clamp(mean + (deviation * z), low, high) * Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI) * step;
        }

        Assert.Equal(sum, ClampedNormal.Mean(mean, deviation, low, high), 1e-5);
        var wanted = low + ((high - low) * 0.3);
        Assert.Equal(wanted, ClampedNormal.Mean(ClampedNormal.MeanFor(wanted, deviation, low, high), deviation, low, high), 1e-6);
    }, iter: 200);

    // Monthly means of the daily course are the normals, leap February within a hair.
    [Fact]
    public void The_smooth_year_keeps_monthly_means() => Gen.Double[-30, 40].Array[12].Sample(normals =>
    {
        var smooth = new SmoothYear(normals);
        for (var month = 1; month <= 12; month++)
        {
            var length = DateTime.DaysInMonth(2027, month);
            Assert.Equal(normals[month - 1], Enumerable.Range(1, length).Average(d => smooth.Of(month, d, length)), 1e-9);
        }
    });

    [Fact]
    public void Every_figure_has_a_known_source() => Assert.All(GeneratorData.All, static row =>
        Assert.NotNull(Ashery.Sources.SourceIndex.Default.Find(row.Source)));

    private static double Cos(int m) => Math.Cos((m + 0.0) * Math.PI / 6);

    private static Place Place(double latitude, double elevation, Func<int, MonthlyNormal> month) =>
        new() { Name = "invented", Latitude = latitude, ElevationMetres = elevation, Normals = [.. Enumerable.Range(0, 12).Select(month)] };

    private static DailyWeather[] Days(Place place, int years, int seed)
    {
        var days = new DailyWeather[(years * 365) + (years / 4)];
        WeatherGenerator.For(place).Value!.Fill(days, new(2001, 1, 1), seed);
        return days;
    }

    private static void Near(string what, double wanted, IEnumerable<double> years, double slack)
    {
        var values = years.Take(Years - 1).ToArray();
        var mean = values.Average();
        var error = Math.Sqrt(values.Sum(v => (v - mean) * (v - mean)) / (values.Length - 1) / values.Length);
        Assert.True(Math.Abs(mean - wanted) <= (4.5 * error) + slack, FormattableString.Invariant($"{what}: wanted {wanted:0.###}, made {mean:0.###}, error of the mean {error:0.###}"));
    }

    private static double[] Standard(IEnumerable<double> values)
    {
        var all = values.ToArray();
        var mean = all.Average();
        var deviation = Math.Sqrt(all.Average(v => (v - mean) * (v - mean)));
        return [.. all.Select(v => (v - mean) / deviation)];
    }

    private static double Together(double[] today, double[] other, int lag)
    {
        var sum = 0.0;
        for (var i = lag; i < today.Length; i++)
        {
            sum += today[i] * other[i - lag];
        }

        return sum / (today.Length - lag);
    }
}
