using Ashery.Climate;

namespace Ashery.Bench;

/// <summary>Days of made weather with evapotranspiration, many draws over one buffer, against an object a day.</summary>
internal static class WeatherBench
{
    private const int Days = 36_525;

    public static void Run()
    {
        Table.Head("Made weather with evapotranspiration, days a second on one thread", "climate", "library", "plain, an object a day", "ratio", "bytes a day, library", "plain", "ET0 of a year, mm: library", "plain");
        foreach (var (name, place) in new[] { ("mild, wet", Somewhere(47, 14, 7, 80)), ("hot, dry", Somewhere(30, 30, 15, 15)) })
        {
            var generator = WeatherGenerator.For(place).Value!;
            var buffer = new DailyWeather[Days];
            var draw = 0;
            var from = new DateOnly(2001, 1, 1);
            var ours = Timing.Median(() => generator.Fill(buffer, from, 1, draw++));
            var plain = Timing.Median(() => PlainWeather.Run(place, from, Days, 1));
            var ourBytes = Bytes(() => generator.Fill(buffer, from, 1, 2));
            var plainBytes = Bytes(() => PlainWeather.Run(place, from, Days, 1));
            Table.Row(
                name,
                Table.Figure(Days / ours * 1000),
                Table.Figure(Days / plain * 1000),
                Table.Times(plain / ours),
                Table.Figure(ourBytes / Days),
                Table.Figure(plainBytes / Days),
                Table.Figure(buffer.Sum(static d => d.ReferenceEtMm) / 100),
                Table.Figure(PlainWeather.Run(place, from, Days, 1).Sum(static d => d.Et) / 100));
        }
    }

    private static double Bytes(Action call)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        call();
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }

    private static Place Somewhere(double latitude, double max, double min, double rain) => new()
    {
        Name = "invented",
        Latitude = latitude,
        ElevationMetres = 50,
        Normals = [.. Enumerable.Range(0, 12).Select(m => new MonthlyNormal(max - (7 * Math.Cos(m * Math.PI / 6)), min - (6 * Math.Cos(m * Math.PI / 6)), rain))],
    };
}
