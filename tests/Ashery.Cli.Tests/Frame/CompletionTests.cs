namespace Ashery.Cli.Tests.Frame;

public class CompletionTests
{
    [Theory]
    [InlineData("ashery m", "mix", "materials")]
    [InlineData("ashery mix --at", "--at-most")]
    [InlineData("ashery mix --crop fuch", "fuchsia")]
    [InlineData("ashery mix --from pota", "potassium-nitrate", "potassium-sulfate")]
    [InlineData("ashery mix --from urea,pota", "urea,potassium-nitrate")]
    [InlineData("./run materials ure", "urea")]
    [InlineData("ashery compatible urea gyp", "gypsum")]
    [InlineData("ashery completion z", "zsh")]
    [InlineData("ashery crops ro", "rose")]
    [InlineData("ashery year --", "--ics", "--json", "--garden")]
    public void A_line_goes_on_with_what_is_known(string line, params string[] wanted)
    {
        var run = Command.Run($"[suggest:{line.Length.ToString(System.Globalization.CultureInfo.InvariantCulture)}]", line);
        Assert.Equal(0, run.Code);
        var offered = run.Output.Split('\n');
        Assert.All(wanted, word => Assert.Contains(word, offered));
        var typed = line[(line.LastIndexOf(' ') + 1)..];
        Assert.All(offered.Where(static o => o.Length > 0), word => Assert.StartsWith(typed, word, StringComparison.OrdinalIgnoreCase));
    }

    [Theory]
    [InlineData("[suggest:]", "ashery m")]
    [InlineData("[suggest:999999999999]", "ashery m")]
    [InlineData("[suggest:-1]", "ashery m")]
    public void A_position_that_is_none_is_refused(string directive, string line) => Assert.Equal(2, Command.Run(directive, line).Code);

    [Theory]
    [InlineData("bash", "-n")]
    [InlineData("zsh", "-n")]
    [InlineData("fish", "-n")]
    public void The_script_is_sound_to_its_shell(string shell, string check)
    {
        var script = Command.Run("completion", shell).Output;
        Assert.Contains("[suggest:", script, StringComparison.Ordinal);
        if (Process.Programs.Find(shell) is not { } program)
        {
            Assert.Skip($"{shell} is not on this machine");
            return;
        }

        using var folder = new TemporaryFolder();
        var run = Process.Programs.Run(program, [check, folder.Write("script", script)]);
        Assert.Equal((0, string.Empty), (run.Code, run.Errors));
    }

    /// <summary>What bash itself makes of a line, asked through its completion function.</summary>
    [Fact]
    public void Bash_completes_a_material_after_an_equals_sign_and_a_comma()
    {
        using var folder = new TemporaryFolder();
        var ashery = folder.Write("ashery", $"#!/bin/sh\nexec dotnet \"{typeof(Application).Assembly.Location}\" \"$@\"\n");
        File.SetUnixFileMode(ashery, UnixFileMode.UserRead | UnixFileMode.UserExecute | UnixFileMode.UserWrite);
        var script = folder.Write("complete.sh", Command.Run("completion", "bash").Output + """

            COMP_LINE='ashery mix --from urea=46-0-0,potassium-nit'
            COMP_POINT=${#COMP_LINE}
            COMP_WORDS=(ashery mix --from urea = 46-0-0,potassium-nit)
            COMP_CWORD=5
            _ashery "$ASHERY" 2>/dev/null
            printf '%s\n' "${COMPREPLY[@]}"
            """);
        var run = Process.Programs.Run("bash", [script], ("ASHERY", ashery));
        Assert.Equal("46-0-0,potassium-nitrate\n", run.Output);
    }
}
