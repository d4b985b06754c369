using System.Diagnostics;
using Ashery.Climate;
using Ashery.RootZone;
using Ashery.RootZone.Draws;

namespace Ashery.Bench;

/// <summary>A thousand pots through a year in a hundred draws each, everything uncertain drawn, bands and odds worked out.</summary>
internal static class PotDrawsBench
{
    private const int Draws = 100, Days = 365;

    public static void Run()
    {
        var pots = RootZoneBench.Scenarios(1000);
        Table.Head(
            $"Forecasts of pots: {Draws} draws of {Days} days, all unknowns and the weather drawn, bands kept",
            ["pots", "threads", "s", "million pot-days a second", "processor s", "million pot-days a processor second", "most memory in use, MB"]);
        Forecasts(pots[..100], 1);
        Forecasts(pots[..100], Environment.ProcessorCount);
        Forecasts(pots, Environment.ProcessorCount);
    }

    private static void Forecasts(PotScenario[] pots, int threads)
    {
        var weather = DrawnWeather.Of(RootZoneBench.Place, 1).Value!;
        PotForecast.Run(Request(pots[0], weather));
        GC.Collect();
        using var process = Process.GetCurrentProcess();
        var busy = process.TotalProcessorTime;
        var clock = Stopwatch.StartNew();
        var most = 0L;
        var over = new double[threads];

        // Pots side by side, the draws of one pot on one thread.
        Parallel.For(0, threads, thread =>
        {
            for (var i = thread; i < pots.Length; i += threads)
            {
                over[thread] += PotForecast.Run(Request(pots[i], weather)).Value!.DaysOverLimit;
                InterlockedMax(ref most, GC.GetTotalMemory(forceFullCollection: false));
            }
        });
        var seconds = clock.Elapsed.TotalSeconds;
        process.Refresh();
        var processor = (process.TotalProcessorTime - busy).TotalSeconds;
        var potDays = (double)pots.Length * Draws * Days;
        Table.Row(
            Table.Whole(pots.Length), Table.Whole(threads), Table.Figure(seconds), Table.Figure(potDays / seconds / 1e6), Table.Figure(processor), Table.Figure(potDays / processor / 1e6),
            Table.Whole((int)(most >> 20)));
    }

    private static PotForecastRequest Request(PotScenario pot, DrawnWeather weather) => new() { Scenario = pot, Weather = weather, From = RootZoneBench.Start, Days = Days, Draws = Draws, Threads = 1 };

    private static void InterlockedMax(ref long most, long now)
    {
        for (var seen = Volatile.Read(ref most); now > seen; seen = Volatile.Read(ref most))
        {
            Interlocked.CompareExchange(ref most, now, seen);
        }
    }
}
