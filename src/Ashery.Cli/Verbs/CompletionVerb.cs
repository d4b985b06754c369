using System.CommandLine;
using Ashery.Cli.Frame;
using Ashery.Problems;

namespace Ashery.Cli.Verbs;

/// <summary>Prints the script that teaches a shell to complete verbs, options, materials and crops.</summary>
internal sealed class CompletionVerb : Verb
{
    private static readonly string[] Shells = ["bash", "zsh", "fish"];

    private readonly Argument<string[]> shell = new("shell")
    {
        HelpName = "bash|zsh|fish",
        Description = "The shell",
        Arity = ArgumentArity.ZeroOrMore,
    };

    public CompletionVerb()
        : base("completion", "Print the script that lets a shell complete verbs, options, materials and crops")
    {
        shell.CompletionSources.Add(Shells);
        Command.Arguments.Add(shell);
    }

    public override string Details =>
        """
        The script completes the command ashery and the script ./run. To have it in every shell:
          bash: ./run completion bash > ~/.local/share/bash-completion/completions/ashery
          zsh:  ./run completion zsh > a folder of $fpath, under the name _ashery
          fish: ./run completion fish > ~/.config/fish/completions/ashery.fish
        """;

    public override IReadOnlyList<(string Words, string Line)> Examples =>
        [("In this bash only:", "source <(ashery completion bash)")];

    public override int Run(Given given, Terminal terminal)
    {
        var names = given.Texts(shell);
        if (names.Count != 1 || !Shells.Contains(names[0]))
        {
            given.Add(new Problem(
                "shell",
                names.Count == 1 ? $"{SafeText.Quoted(names[0])} is not a shell known here." : "Name one shell.",
                "Write ashery completion bash, zsh or fish."));
            return Faults.WrongUse(terminal, this, given);
        }

        var script = CompletionScripts.For(names[0]);
        if (given.Has(Json))
        {
            terminal.Output.Write(CliJson.Write(new CompletionJson(names[0], script)));
        }
        else
        {
            terminal.Output.Write(script);
        }

        return ExitCode.Done;
    }
}
