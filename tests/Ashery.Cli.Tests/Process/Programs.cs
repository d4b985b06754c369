using System.Diagnostics;
using System.Text;
using Ashery.Cli.Tests.Frame;

namespace Ashery.Cli.Tests.Process;

/// <summary>Runs programs as a shell would.</summary>
internal static class Programs
{
    public static string? Find(string name) =>
        (Environment.GetEnvironmentVariable("PATH") ?? string.Empty).Split(':').Select(folder => Path.Combine(folder, name)).FirstOrDefault(File.Exists);

    public static Printed Run(string program, IReadOnlyList<string> args, params (string Name, string Value)[] environment) =>
        Run(program, args, folder: null, seconds: 120, environment);

    public static Printed Run(string program, IReadOnlyList<string> args, string? folder, int seconds, params (string Name, string Value)[] environment)
    {
        var start = new ProcessStartInfo(program, args)
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
            StandardErrorEncoding = Encoding.UTF8,
            WorkingDirectory = folder ?? Path.GetTempPath(),
        };
        start.Environment.Remove("MSBUILDDISABLENODEREUSE");
        foreach (var (name, value) in environment)
        {
            start.Environment[name] = value;
        }

        using var process = System.Diagnostics.Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync();
        var errors = process.StandardError.ReadToEndAsync();
        if (!process.WaitForExit(TimeSpan.FromSeconds(seconds)))
        {
            process.Kill(entireProcessTree: true);
            Assert.Fail($"{program} {string.Join(' ', args)} did not end within {seconds.ToString(System.Globalization.CultureInfo.InvariantCulture)} s");
        }

        return new Printed(process.ExitCode, output.GetAwaiter().GetResult(), errors.GetAwaiter().GetResult());
    }

    /// <summary>The command line as a process of its own.</summary>
    public static Printed Ashery(IReadOnlyList<string> args, params (string Name, string Value)[] environment) =>
        Run("dotnet", [typeof(Application).Assembly.Location, .. args], environment);
}
