using System.Diagnostics;
using Ashery.Blending;
using Ashery.Plain;

namespace Ashery.Bench;

/// <summary>Peak memory of a process that does the largest searches and nothing else.</summary>
internal static class MemoryBench
{
    public static void Run()
    {
        Table.Head("Peak memory of a whole process, runtime included", "searches", "MB");
        using var child = Process.Start(new ProcessStartInfo(Environment.ProcessPath!, "peak") { UseShellExecute = false, RedirectStandardOutput = true })!;
        foreach (var line in child.StandardOutput.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            Table.Row(line.Split(';'));
        }

        child.WaitForExit();
    }

    public static void Child()
    {
        foreach (var (nutrients, atMost, columns, priced) in new[] { (3, 4, 100, 1.0), (6, 5, 100, 1.0), (6, 6, 100, 0.0), (8, 6, 60, 1.0) })
        {
            var answer = BlendSearch.Find(RandomShelf.Make(1, nutrients, columns, atMost, priced: priced));
            using var process = Process.GetCurrentProcess();
            Table.Line($"{nutrients} nutrients, at most {atMost} of {columns}{(answer.Proved ? "" : " (ended by its work limit)")};{process.PeakWorkingSet64 / 1e6:0}");
        }
    }
}
