using Ashery.Cli.Tests.Frame;

namespace Ashery.Cli.Tests.Process;

/// <summary>
/// What the script <c>run</c> does around the build, with a dotnet of the test's own that only notes how it was called:
/// when it builds and when not, from where it may be called, and that two at once do not get into each other's way.
/// </summary>
public sealed class RunScriptTests : IDisposable
{
    private readonly TemporaryFolder folder = new();
    private readonly string house;
    private readonly string tools;

    public RunScriptTests()
    {
        house = Directory.CreateDirectory(folder.File("my garden")).FullName;
        tools = Directory.CreateDirectory(folder.File("tools")).FullName;
        File.Copy(Path.Combine(Repository.Root(), "run"), Path.Combine(house, "run"));
        foreach (var file in new[] { "src/Ashery.Cli/Program.cs", "src/Ashery.Web/Program.cs", "data/a.json", "eng/a.props", "global.json", "Directory.Build.props", "Directory.Build.targets", "Directory.Packages.props" })
        {
            Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(house, file))!);
            Write(Path.Combine(house, file), "x");
        }

        Stub("""
            #!/usr/bin/env bash
            echo "$*" >>"$CALLS"
            if [ "$1" = publish ]; then
                [ -z "${SLOW:-}" ] || sleep "$SLOW"
                if [ -n "${BROKEN:-}" ]; then echo "Program.cs(1,1): error CS1002: ; expected"; exit 1; fi
                if [ -n "${NO_COMPILER:-}" ] && [[ $* == *AsheryReadyToRun* ]]; then echo "error NU1101: Unable to find package"; exit 1; fi
                while [ $# -gt 0 ]; do if [ "$1" = --output ]; then mkdir -p "$2"; touch "$2/Ashery.Cli.dll"; fi; shift; done
                exit 0
            fi
            shift
            echo "program:$*"
            [ -z "${WAIT:-}" ] || sleep "$WAIT"
            exit "${ENDS:-0}"
            """);
    }

    [Fact]
    public void It_builds_once_and_passes_words_and_exit_code_on()
    {
        var first = Run(["mix", "--name", "two words", "*"], ("ENDS", "7"));
        Assert.Equal(7, first.Code);
        Assert.Equal("program:mix --name two words *\n", first.Output);
        Assert.Contains("building", first.Errors, StringComparison.Ordinal);
        Assert.Equal(2, Builds());
        var second = Run(["--version"]);
        Assert.Equal((0, "program:--version\n", string.Empty), (second.Code, second.Output, second.Errors));
        Assert.Equal(2, Builds());
    }

    [Fact]
    public void Without_words_it_serves()
    {
        Assert.Equal("program:serve\n", Run([]).Output);
        Assert.Equal("program:serve --port 8123\n", Run(["serve", "--port", "8123"]).Output);
    }

    [Theory]
    [InlineData("src/Ashery.Cli/Program.cs")]
    [InlineData("src/Ashery.Web/New.razor")]
    [InlineData("data/a.json")]
    [InlineData("eng/a.props")]
    [InlineData("Directory.Packages.props")]
    public void Whatever_goes_into_a_build_and_is_newer_makes_a_new_one(string file)
    {
        Run(["--version"]);
        Write(Path.Combine(house, file), "changed", DateTime.UtcNow.AddSeconds(5));
        Run(["--version"]);
        Assert.Equal(4, Builds());
    }

    [Fact]
    public void A_file_taken_away_makes_a_new_build_and_what_builds_leave_behind_does_not()
    {
        Run(["--version"]);
        Directory.CreateDirectory(Path.Combine(house, "src", "Ashery.Cli", "obj"));
        Directory.SetLastWriteTimeUtc(Path.Combine(house, "src", "Ashery.Cli"), DateTime.UtcNow.AddMinutes(-5));
        Write(Path.Combine(house, "src", "Ashery.Cli", "obj", "x.cs"), "x", DateTime.UtcNow.AddSeconds(5));
        Directory.SetLastWriteTimeUtc(Path.Combine(house, "src", "Ashery.Cli"), DateTime.UtcNow.AddMinutes(-5));
        Run(["--version"]);
        Assert.Equal(2, Builds());
        File.Delete(Path.Combine(house, "data", "a.json"));
        Directory.SetLastWriteTimeUtc(Path.Combine(house, "data"), DateTime.UtcNow.AddSeconds(5));
        Run(["--version"]);
        Assert.Equal(4, Builds());
    }

    [Fact]
    public void It_may_be_called_from_anywhere_and_through_links()
    {
        var elsewhere = Directory.CreateDirectory(folder.File("else where")).FullName;
        File.CreateSymbolicLink(Path.Combine(elsewhere, "ashery"), Path.Combine("..", "my garden", "run"));
        File.CreateSymbolicLink(folder.File("second"), Path.Combine(elsewhere, "ashery"));
        foreach (var (program, from) in new[] { (Path.Combine(elsewhere, "ashery"), elsewhere), (folder.File("second"), "/"), (Path.Combine("..", "my garden", "run"), elsewhere) })
        {
            var run = Programs.Run("bash", [program, "crops"], from, 60, Environment());
            Assert.Equal((0, "program:crops\n"), (run.Code, run.Output));
        }

        Assert.Equal(2, Builds());
    }

    [Fact]
    public async Task Two_at_once_build_once()
    {
        var both = await Task.WhenAll(Task.Run(() => Run(["one"], ("SLOW", "1"))), Task.Run(() => Run(["two"], ("SLOW", "1"))));
        Assert.All(both, static run => Assert.Equal(0, run.Code));
        Assert.Equal(["program:one\n", "program:two\n"], both.Select(static r => r.Output));
        Assert.Equal(2, Builds());
    }

    [Fact]
    public void Without_the_ahead_compiler_it_builds_all_the_same_and_says_so()
    {
        var run = Run(["crops"], ("NO_COMPILER", "1"));
        Assert.Equal((0, "program:crops\n"), (run.Code, run.Output));
        Assert.Contains("could not compile ahead", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_program_that_does_not_compile_is_told_and_the_last_build_stays()
    {
        Run(["--version"]);
        var built = new DirectoryInfo(Path.Combine(house, "out", "current")).LinkTarget;
        Write(Path.Combine(house, "src", "Ashery.Cli", "Program.cs"), "broken", DateTime.UtcNow.AddSeconds(5));
        var run = Run(["--version"], ("BROKEN", "1"));
        Assert.Equal(70, run.Code);
        Assert.Contains("error CS1002", run.Errors, StringComparison.Ordinal);
        Assert.Contains("build.log", run.Errors, StringComparison.Ordinal);
        Assert.Equal(built, new DirectoryInfo(Path.Combine(house, "out", "current")).LinkTarget);
        Assert.Single(Directory.GetDirectories(Path.Combine(house, "out"), "app-*"));
    }

    [Fact]
    public async Task A_served_program_keeps_its_build_while_newer_ones_come_and_go()
    {
        var served = Task.Run(() => Run([], ("WAIT", "4")));
        await WaitFor(() => Directory.Exists(Path.Combine(house, "out", "current")) && File.ReadAllText(Calls).Contains("serve", StringComparison.Ordinal));
        var its = Path.Combine(house, "out", new DirectoryInfo(Path.Combine(house, "out", "current")).LinkTarget!);
        for (var i = 1; i <= 3; i++)
        {
            Write(Path.Combine(house, "data", "a.json"), "changed", DateTime.UtcNow.AddSeconds(5 * i));
            Run(["--version"]);
        }

        Assert.True(Directory.Exists(its));
        await served;
        Write(Path.Combine(house, "data", "a.json"), "changed", DateTime.UtcNow.AddSeconds(30));
        Run(["--version"]);
        Assert.False(Directory.Exists(its));
    }

    [Fact]
    public void Without_dotnet_it_says_what_is_missing()
    {
        File.Delete(Path.Combine(tools, "dotnet"));
        var path = string.Join(':', System.Environment.GetEnvironmentVariable("PATH")!.Split(':').Where(static p => !File.Exists(Path.Combine(p, "dotnet"))));
        var run = Programs.Run("/bin/bash", [Path.Combine(house, "run"), "crops"], null, 60, ("PATH", path));
        Assert.Equal(69, run.Code);
        Assert.Contains(".NET 10 SDK", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Another_folder_may_take_what_is_built()
    {
        var run = Programs.Run("bash", [Path.Combine(house, "run"), "crops"], null, 60, [.. Environment(), ("ASHERY_OUT", folder.File("built here"))]);
        Assert.Equal(0, run.Code);
        Assert.True(Directory.Exists(folder.File("built here")));
        Assert.False(Directory.Exists(Path.Combine(house, "out")));
    }

    public void Dispose() => folder.Dispose();

    private string Calls => folder.File("calls");

    private int Builds() => File.ReadLines(Calls).Count(static l => l.StartsWith("publish", StringComparison.Ordinal) && !l.Contains("broken", StringComparison.Ordinal));

    private Printed Run(string[] args, params (string, string)[] more) => Programs.Run("bash", [Path.Combine(house, "run"), .. args], null, 60, [.. Environment(), .. more]);

    private (string, string)[] Environment() => [("PATH", tools + ":" + System.Environment.GetEnvironmentVariable("PATH")), ("CALLS", Calls), ("ASHERY_READYTORUN", "1")];

    private void Stub(string script)
    {
        var file = Path.Combine(tools, "dotnet");
        File.WriteAllText(file, script);
        File.SetUnixFileMode(file, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
    }

    private static void Write(string file, string text, DateTime? at = null)
    {
        File.WriteAllText(file, text);
        File.SetLastWriteTimeUtc(file, at ?? DateTime.UtcNow.AddMinutes(-5));
    }

    private static async Task WaitFor(Func<bool> ready)
    {
        for (var i = 0; i < 200 && !ready(); i++)
        {
            await Task.Delay(50);
        }
    }
}
