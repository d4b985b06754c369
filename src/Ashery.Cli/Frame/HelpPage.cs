using System.CommandLine;
using Ashery.Cli.Text;

namespace Ashery.Cli.Frame;

/// <summary>Help in 80 columns: what it does, how it is called, each option, examples.</summary>
internal static class HelpPage
{
    private const int OptionColumn = 26;

    public static void WriteRoot(Terminal terminal, IReadOnlyList<Verb> verbs)
    {
        var output = terminal.Output;
        Paragraph.Write(
            output,
            "Ashery mixes feeds for flowering plants in pots from straight fertilisers and organic meals: recipes in grams "
            + "and scoops, what is safe to mix and store, a dose for every pot, a year of dates, and cards to print.",
            terminal.Width);
        output.WriteLine();
        output.WriteLine("Usage: ashery VERB [OPTION]...");
        output.WriteLine();
        output.WriteLine("Verbs:");
        foreach (var verb in verbs)
        {
            Entry(terminal, verb.Name, verb.Summary);
        }

        output.WriteLine();
        output.WriteLine("Options:");
        Entry(terminal, "--help", "Help; ashery VERB --help shows a verb's options and examples");
        Entry(terminal, "--version", "The version");
        output.WriteLine();
        Paragraph.Write(
            output,
            "Exit codes: 0 done, 1 a wish that cannot be met, 2 wrong use. The product's label and local rules come before "
            + "anything printed here.",
            terminal.Width);
    }

    public static void Write(Terminal terminal, Verb verb)
    {
        var output = terminal.Output;
        Paragraph.Write(output, verb.Summary + ".", terminal.Width);
        output.WriteLine();
        var words = string.Concat(verb.Command.Arguments.Select(static a => $" {a.HelpName}"));
        output.WriteLine($"Usage: ashery {verb.Name}{words} [OPTION]...");
        if (verb.Details.Length > 0)
        {
            output.WriteLine();
            foreach (var line in verb.Details.Split('\n'))
            {
                Paragraph.Write(output, line, terminal.Width, hanging: line.Length - line.TrimStart(' ').Length);
            }
        }

        output.WriteLine();
        output.WriteLine("Options:");
        foreach (var argument in verb.Command.Arguments)
        {
            Entry(terminal, argument.HelpName!, argument.Description!);
        }

        foreach (var option in verb.Command.Options.Where(static o => !o.Hidden))
        {
            Entry(terminal, option is ValueOption ? $"{option.Name} {option.HelpName}" : option.Name, option.Description!);
        }

        Entry(terminal, "--help", "This page");
        output.WriteLine();
        output.WriteLine("Examples:");
        foreach (var (explanation, line) in verb.Examples)
        {
            Paragraph.Write(output, "  " + explanation, terminal.Width, hanging: 2);
            Paragraph.Write(output, "    " + line, terminal.Width, hanging: 8);
        }
    }

    private static void Entry(Terminal terminal, string name, string words)
    {
        var lines = Paragraph.Lines(words, terminal.Width - OptionColumn);
        var head = "  " + name;
        if (head.Length > OptionColumn - 2)
        {
            terminal.Output.WriteLine(head);
            head = string.Empty;
        }

        foreach (var line in lines)
        {
            terminal.Output.WriteLine(head.PadRight(OptionColumn) + line);
            head = string.Empty;
        }
    }
}
