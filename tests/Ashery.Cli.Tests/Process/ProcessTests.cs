using Ashery.Cli.Tests.Frame;

namespace Ashery.Cli.Tests.Process;

/// <summary>The program as a process: exit codes, streams, the machine's language.</summary>
public class ProcessTests
{
    private static readonly string[] Mix = ["mix", "--ratio", "3:1:2.5", "--from", "urea,mkp,potassium-nitrate", "--batch", "62.5g", "--step", "0.5g", "--best", "3"];

    /// <summary>System.CommandLine reads 62.5 as 625 under a German locale when the culture is not set first.</summary>
    [Theory]
    [InlineData("de_DE.UTF-8")]
    [InlineData("bn_IN.UTF-8")]
    [InlineData("C")]
    public void The_language_of_the_machine_changes_nothing(string locale)
    {
        var here = Command.Run(Mix);
        var there = Programs.Ashery(Mix, ("LC_ALL", locale), ("LANG", locale));
        Assert.Equal((0, here.Output, string.Empty), (there.Code, there.Output, there.Errors));
    }

    /// <summary>The program asks for no ICU at all, so a culture of the system can never be its own.</summary>
    [Fact]
    public void No_libicu_is_wanted()
    {
        var config = File.ReadAllText(Path.ChangeExtension(typeof(Application).Assembly.Location, ".runtimeconfig.json"));
        Assert.Contains("\"System.Globalization.Invariant\": true", config, StringComparison.Ordinal);
        var run = Programs.Ashery(["crops", "fuchsia"], ("DOTNET_SYSTEM_GLOBALIZATION_INVARIANT", "0"));
        Assert.Equal(0, run.Code);
    }

    [Theory]
    [InlineData(0, "crops", "fuchsia")]
    [InlineData(1, "mix", "--grade", "40-20-20", "--from", "gypsum,mkp")]
    [InlineData(2, "mix", "--ratio", "0:0:0", "--from", "urea")]
    public void The_exit_code_reaches_the_shell(int code, params string[] args) => Assert.Equal(code, Programs.Ashery(args).Code);

    [Fact]
    public void A_reader_that_goes_away_is_no_accident()
    {
        var run = Programs.Run("bash", ["-c", $"set -o pipefail; dotnet '{typeof(Application).Assembly.Location}' materials --json | head -1"]);
        Assert.Equal("{\n", run.Output);
        Assert.Empty(run.Errors);
    }

    [Fact]
    public void What_is_wrong_goes_to_the_error_output_only()
    {
        var run = Programs.Ashery(["mix", "--ratio", "0:0:0", "--from", "urea"]);
        Assert.Empty(run.Output);
        Assert.StartsWith("ashery mix: ratio:", run.Errors, StringComparison.Ordinal);
    }
}
