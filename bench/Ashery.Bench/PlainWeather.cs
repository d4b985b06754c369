using Ashery.Climate;
using Ashery.Climate.Evapotranspiration;
using Ashery.Climate.Generation;

namespace Ashery.Bench;

/// <summary>
/// The same generator as one would first write it: an object a day, a matrix product by arrays, parameters of the month and the sun's course worked out
/// every day, the general library's random numbers.
/// </summary>
internal static class PlainWeather
{
    public sealed record Day(DateOnly Date, double Max, double Min, double Rain, double Radiation, double Vapour, double Et);

    public static List<Day> Run(Place place, DateOnly from, int days, int seed)
    {
        var random = new Random(seed);
        var list = new List<Day>();
        var elevation = place.ElevationMetres ?? 0;
        var a = GeneratorData.Of("residualA");
        var b = GeneratorData.Of("residualB");
        double[] z = [0, 0, 0];
        var wet = false;
        for (var i = 0; i < days; i++)
        {
            var date = from.AddDays(i);
            var normal = place.Normals![date.Month - 1];
            var share = MonthModel.WetDays(normal, date.Month) / DateTime.DaysInMonth(date.Year, date.Month);
            wet = random.NextDouble() < (wet ? 0.25 + (0.75 * share) : 0.75 * share);
            var mean = share > 0 ? normal.RainMm / (share * DateTime.DaysInMonth(date.Year, date.Month)) : 0;
            var rain = wet ? -mean * Math.Log(1 - random.NextDouble()) : 0;
            double[] noise = [Normal(random), Normal(random), Normal(random)];
            z = [.. Enumerable.Range(0, 3).Select(r => Enumerable.Range(0, 3).Sum(c => (a[(3 * r) + c] * z[c]) + (b[(3 * r) + c] * noise[c])))];
            var range = normal.MeanMax - normal.MeanMin;
            var kind = wet ? "Wet" : "Dry";
            var maxMean = normal.MeanMax + ((share - (wet ? 1 : 0)) * 0.5 * range);
            var max = maxMean + (GeneratorData.Spread("maximumSpread" + kind, maxMean) * z[0]);
            var min = Math.Min(max - 0.5, normal.MeanMin + (GeneratorData.Spread("minimumSpread" + kind, normal.MeanMin) * z[1]));
            var ra = SolarGeometry.Extraterrestrial(place.Latitude, date.DayOfYear);
            var dry = SolarRadiation.FromRange(normal.MeanMax, normal.MeanMin, ra, SolarRadiation.Inland, elevation) / (1 - (share / 2));
            var clear = SolarRadiation.ClearSky(elevation, ra);
            var rs = Math.Clamp((wet ? dry / 2 : dry) + (0.25 * (clear - (wet ? dry / 2 : dry)) * z[2]), 0.05 * clear, clear);
            var ea = VapourPressure.FromMinimum(min);
            var gamma = Air.Psychrometric(Air.Pressure(elevation));
            var rn = NetRadiation.ShortWave(rs) - NetRadiation.LongWave(max, min, ea, rs / clear);
            var t = Air.MeanTemperature(max, min);
            list.Add(new(date, max, min, rain, rs, ea, Math.Max(0, ReferenceEt.PenmanMonteith(t, VapourPressure.Slope(t), gamma, rn, 2, VapourPressure.MeanSaturation(max, min) - ea))));
        }

        return list;
    }

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
