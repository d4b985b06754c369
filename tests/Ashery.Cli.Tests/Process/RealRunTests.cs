using System.Diagnostics;
using System.Net.Http;
using Ashery.Cli.Tests.Frame;

namespace Ashery.Cli.Tests.Process;

/// <summary>Alone, since these measure time.</summary>
[CollectionDefinition("alone", DisableParallelization = true)]
public sealed class Alone;

/// <summary>
/// The real <c>./run</c> of this repository: it builds, serves and stops, and starts quickly. Of several runs the fastest counts,
/// since what else a machine does at the time only adds.
/// </summary>
[Collection("alone")]
public class RealRunTests
{
    private const int Minutes = 10;

    private static readonly string[] Mix = ["mix", "--ratio", "3:1:2", "--from", "urea=46-0-0,mkp=0-52-34,potassium-nitrate=13-0-46"];

    [Fact]
    public void A_command_through_run_starts_within_300_ms_and_mix_takes_less_than_150_ms()
    {
        var run = Path.Combine(Repository.Root(), "run");
        var first = Programs.Run("bash", [run, "--version"], null, 60 * Minutes);
        Assert.True(first.Code == 0, first.Errors);
        Assert.StartsWith("ashery ", first.Output, StringComparison.Ordinal);
        Assert.True(Fastest("bash", [run, "--version"]) < 300);
        Assert.True(Fastest("bash", [run, "crops", "fuchsia"]) < 300);

        var program = Path.Combine(Repository.Root(), "out", "current", "cli", "Ashery.Cli.dll");
        var mix = Fastest("dotnet", [program, .. Mix]);
        Assert.True(mix < 150, FormattableString.Invariant($"ashery mix took {mix:0} ms"));
    }

    [Fact]
    public void With_the_stored_garden_mix_takes_less_than_a_second()
    {
        var run = Path.Combine(Repository.Root(), "run");
        using var folder = new TemporaryFolder();
        (string, string)[] home = [("ASHERY_HOME", folder.Path)];
        var garden = folder.Write("garden.json", Exchange.Gardens.DemoGarden.Text());
        Assert.Equal(0, Programs.Run("bash", [run, "shelf", "--import", garden], null, 60 * Minutes, home).Code);
        Assert.True(Fastest("bash", [run, "mix", "--crop", "fuchsia"], home) < 1000);
    }

    /// <summary>Serves on loopback only, steps over a taken port, makes the demo garden, ends at once on SIGTERM and leaves nothing running.</summary>
    [Fact]
    public async Task It_serves_and_stops_when_told()
    {
        using var folder = new TemporaryFolder();
        (string, string)[] home = [("ASHERY_HOME", folder.Path)];
        Assert.Equal(0, Programs.Run("bash", [Path.Combine(Repository.Root(), "run"), "--version"], null, 60 * Minutes).Code);
        using var one = Serve(folder.Path, out var first);
        using var two = Serve(folder.File("second"), out var second);
        Assert.StartsWith("http://127.0.0.1:", first, StringComparison.Ordinal);
        Assert.NotEqual(first, second);
        using var http = new HttpClient();
        Assert.Contains("demo", await http.GetStringAsync(new Uri(first)), StringComparison.OrdinalIgnoreCase);
        Assert.True(File.Exists(folder.File("garden.db")));
        foreach (var served in new[] { one, two })
        {
            Programs.Run("kill", ["-TERM", served.Id.ToString(System.Globalization.CultureInfo.InvariantCulture)]);
            Assert.True(served.WaitForExit(TimeSpan.FromSeconds(10)));
            Assert.Equal(0, served.ExitCode);
        }

        await Assert.ThrowsAsync<HttpRequestException>(() => http.GetStringAsync(new Uri(first)));
    }

    private static System.Diagnostics.Process Serve(string home, out string address)
    {
        var start = new ProcessStartInfo("bash", [Path.Combine(Repository.Root(), "run")]) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment["ASHERY_HOME"] = home;
        start.Environment["ASPNETCORE_URLS"] = "http://0.0.0.0:9999";
        var process = System.Diagnostics.Process.Start(start)!;
        var line = process.StandardOutput.ReadLine() ?? string.Empty;
        address = line.Split(' ').FirstOrDefault(static w => w.StartsWith("http://", StringComparison.Ordinal)) ?? string.Empty;
        return process;
    }

    private static double Fastest(string program, string[] args, params (string, string)[] environment)
    {
        var best = double.MaxValue;
        for (var i = 0; i < 12; i++)
        {
            var watch = Stopwatch.StartNew();
            Assert.Equal(0, Programs.Run(program, args, environment).Code);
            best = Math.Min(best, watch.Elapsed.TotalMilliseconds);
        }

        return best;
    }
}
