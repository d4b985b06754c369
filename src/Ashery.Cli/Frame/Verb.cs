using System.CommandLine;

namespace Ashery.Cli.Frame;

/// <summary>
/// One verb of the command line: what it reads, how its help shows it, and its run. A verb computes nothing: it reads
/// words, asks the library and prints the result value as text or as JSON.
/// </summary>
internal abstract class Verb
{
    protected Verb(string name, string summary)
    {
        Command = new Command(name, summary);
        Json = new Option<bool>("--json") { Description = "Print the same content as JSON" };
        Command.Options.Add(Json);
    }

    public Command Command { get; }

    public string Name => Command.Name;

    public string Summary => Command.Description!;

    public Option<bool> Json { get; }

    /// <summary>What stands above the options in the help, after the summary; may be empty.</summary>
    public virtual string Details => string.Empty;

    /// <summary>Examples with a line of words each; every one of them is run by a test.</summary>
    public abstract IReadOnlyList<(string Words, string Line)> Examples { get; }

    /// <summary>Does it; problems it met in the words are in <paramref name="given"/>.</summary>
    public abstract int Run(Given given, Terminal terminal);

    protected ValueOption Add(ValueOption option)
    {
        Command.Options.Add(option);
        return option;
    }

    protected Option<bool> Flag(string name, string description)
    {
        var option = new Option<bool>(name) { Description = description };
        Command.Options.Add(option);
        return option;
    }
}
