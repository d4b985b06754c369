using System.Diagnostics;

namespace Ashery.Bench;

/// <summary>Times of calls, warm.</summary>
internal static class Timing
{
    /// <summary>Median of the calls that fit into the time given, after as long a warm-up, ms.</summary>
    public static double Median(Action call, int milliseconds = 300)
    {
        Spend(call, milliseconds, []);

        // The runtime compiles what was hot in the background: give it the moment it needs.
        Thread.Sleep(150);
        var times = new List<double>();
        Spend(call, milliseconds, times);
        times.Sort();
        return times[times.Count / 2];
    }

    private static void Spend(Action call, int milliseconds, List<double> times)
    {
        var all = Stopwatch.StartNew();
        do
        {
            var one = Stopwatch.GetTimestamp();
            call();
            times.Add(Stopwatch.GetElapsedTime(one).TotalMilliseconds);
        }
        while (all.ElapsedMilliseconds < milliseconds || times.Count < 3);
    }
}
