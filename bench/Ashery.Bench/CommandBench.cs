using System.Diagnostics;

namespace Ashery.Bench;

/// <summary>The command line as a whole process, from start to exit.</summary>
internal static class CommandBench
{
    public static void Run()
    {
        var root = new DirectoryInfo(AppContext.BaseDirectory);
        while (root is not null && !File.Exists(Path.Combine(root.FullName, "Ashery.slnx")))
        {
            root = root.Parent;
        }

        if (root is null || !OperatingSystem.IsLinux())
        {
            return;
        }

        Table.Head("./run mix as a whole process, ms", "command", "median of 15", "least", "most");
        var folder = Directory.CreateTempSubdirectory("ashery-bench");
        try
        {
            Measure(root.FullName, folder.FullName, "three inline materials", "mix", "--ratio", "6:2:5", "--from", "ammonium-sulfate=20.5-0-0,map-technical,potassium-sulfate=0-0-51", "--json");
            StoreGarden(root.FullName, folder.FullName);
            Measure(root.FullName, folder.FullName, "with the stored garden", "mix", "--ratio", "6:2:5", "--json");
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    /// <summary>The first start of the web application stores the demo garden.</summary>
    private static void StoreGarden(string root, string home)
    {
        using var served = Process.Start(Run(root, home, "serve"))!;
        served.StandardOutput.ReadLine();
        served.Kill(entireProcessTree: true);
        served.WaitForExit();
    }

    private static ProcessStartInfo Run(string root, string home, params string[] words)
    {
        var start = new ProcessStartInfo(Path.Combine(root, "run"), words)
        {
            UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true, WorkingDirectory = root,
        };
        start.Environment["ASHERY_HOME"] = home;
        return start;
    }

    private static void Measure(string root, string home, string what, params string[] words)
    {
        var times = new List<double>();
        for (var run = 0; run < 18; run++)
        {
            var watch = Stopwatch.StartNew();
            using var process = Process.Start(Run(root, home, words))!;
            var output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            if (process.ExitCode != 0)
            {
                Table.Row(what, "exit " + Table.Whole(process.ExitCode) + ": " + output.Split('\n')[0], string.Empty, string.Empty);
                return;
            }

            // The first runs build and fill the file cache.
            if (run >= 3)
            {
                times.Add(watch.Elapsed.TotalMilliseconds);
            }
        }

        times.Sort();
        Table.Row(what, Table.Figure(times[times.Count / 2]), Table.Figure(times[0]), Table.Figure(times[^1]));
    }
}
