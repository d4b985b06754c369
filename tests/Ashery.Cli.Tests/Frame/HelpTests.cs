using System.CommandLine;
using Ashery.Cli.Frame;

namespace Ashery.Cli.Tests.Frame;

public class HelpTests
{
    public static TheoryData<string> Verbs => [.. Application.Verbs().Select(static v => v.Name)];

    [Fact]
    public void Help_without_a_verb_lists_all_verbs() => Approved.Match("help", Command.Run("--help").Output);

    [Fact]
    public void No_words_at_all_give_the_same_help() => Assert.Equal(Command.Run("--help"), Command.Run());

    [Fact]
    public void The_issue_names_these_verbs_and_all_are_there() =>
        Assert.Equal(
            ["acid", "backup", "batch", "card", "clinic", "compatible", "completion", "copy", "crops", "dissolve", "dose", "export", "import", "materials", "mix", "pot", "restore", "serve", "shelf", "solution", "spray", "stock", "tanks", "trial", "water", "weather", "year"],
            Application.Verbs().Select(static v => v.Name).Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Verbs))]
    public void Each_verb_has_help_with_examples_and_json_in_80_columns(string verb)
    {
        var help = Command.Run(verb, "--help");
        Assert.Equal(0, help.Code);
        Assert.Contains($"Usage: ashery {verb}", help.Output, StringComparison.Ordinal);
        Assert.Contains("--json", help.Output, StringComparison.Ordinal);
        Assert.Contains("Examples:", help.Output, StringComparison.Ordinal);
        Assert.All(help.Output.Split('\n'), static line => Assert.True(line.Length <= 80, line));
        Approved.Match($"help-{verb}", help.Output);
    }

    /// <summary>Check values belong in tests; help uses figures of its own.</summary>
    [Theory]
    [MemberData(nameof(Verbs))]
    public void Help_uses_figures_of_its_own(string verb)
    {
        var help = Command.Run(verb, "--help").Output;
        foreach (var check in new[] { "17:5:24", "17-5-24", "8:1:6", "12-4-20", "15g" })
        {
            Assert.DoesNotContain(check, help, StringComparison.Ordinal);
        }
    }

    /// <summary>Every example of the help runs, with the words a shell would hand over.</summary>
    [Theory]
    [MemberData(nameof(Verbs))]
    public void Each_example_runs(string verb)
    {
        var examples = Application.Verbs().Single(v => v.Name == verb).Examples;
        Assert.NotEmpty(examples);
        foreach (var (_, line) in examples)
        {
            if (line.StartsWith("source", StringComparison.Ordinal) || verb is "serve" or "backup" or "restore" or "copy" or "export" or "import" || line.Contains("my-garden.json", StringComparison.Ordinal) || line.Contains("--import", StringComparison.Ordinal))
            {
                continue;
            }

            var words = Shell.Split(line);
            Assert.Equal("ashery", words[0]);
            using var folder = new TemporaryFolder();
            var run = Command.Run(folder.Into(words[1..]));
            Assert.True(run.Code is 0 or 1, $"{line}\n{run.Errors}");
            Assert.NotEmpty(run.Output);
        }
    }

    [Fact]
    public void The_version_is_printed() => Assert.Matches("^ashery \\d+\\.\\d+\\.\\d+\n$", Command.Run("--version").Output);
}
