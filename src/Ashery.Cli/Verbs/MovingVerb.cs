using System.CommandLine;
using Ashery.Cli.Frame;
using Ashery.Cli.Text;
using Ashery.Problems;

namespace Ashery.Cli.Verbs;

/// <summary>What the verbs that move all records share: one name of a file or folder, and how the outcome is printed.</summary>
internal abstract class MovingVerb : Verb
{
    private readonly Argument<string[]> names = new("file") { Arity = ArgumentArity.ZeroOrMore };

    protected MovingVerb(string name, string summary, string hint, string description)
        : base(name, summary)
    {
        names.HelpName = hint;
        names.Description = description;
        Command.Arguments.Add(names);
    }

    public override int Run(Given given, Terminal terminal)
    {
        var moved = given.Texts(names) switch
        {
            [var only] => given.Take(Move(terminal, only)),
            [] => null,
            _ => null,
        };
        if (moved is null && !given.Wrong)
        {
            given.Add(new Problem("file", given.Texts(names).Count == 0 ? "No name is given." : "More than one name is given.", $"Write {names.HelpName}; --help shows examples."));
        }

        return Print(this, given, terminal, moved);
    }

    public static int Print(Verb verb, Given given, Terminal terminal, MovedJson? moved)
    {
        if (moved is null || given.Wrong)
        {
            return Faults.WrongUse(terminal, verb, given);
        }

        if (given.Has(verb.Json))
        {
            terminal.Output.Write(CliJson.Write(moved));
            return ExitCode.Done;
        }

        terminal.Output.WriteLine(SafeText.Of(moved.Done));
        terminal.Output.WriteLine(SafeText.Of(moved.File));
        if (moved.KeptIn is { } kept)
        {
            Paragraph.Write(terminal.Output, $"What was there is kept in {SafeText.Of(kept)}", terminal.Width, hanging: 4);
        }

        if (moved.ContentHash is { } hash)
        {
            terminal.Output.WriteLine($"content {hash}");
        }

        return ExitCode.Done;
    }

    protected abstract Result<MovedJson> Move(Terminal terminal, string name);
}

/// <summary>Everything into one file, while the application runs.</summary>
internal sealed class BackupVerb() : MovingVerb("backup", "Back everything up into one file: gardens, journal, photographs", "FILE.zip", "The backup to write; a file of this name is replaced")
{
    public override string Details => "It may run while the web application serves. The file says what is in it and carries a hash of each part.";

    public override IReadOnlyList<(string Words, string Line)> Examples => [("Into a file of this folder:", "ashery backup terrace.zip")];

    protected override Result<MovedJson> Move(Terminal terminal, string name) => StoredRecords.Backup(terminal, name);
}

/// <summary>A backup back into the stored records.</summary>
internal sealed class RestoreVerb() : MovingVerb("restore", "Bring a backup back, after checking every byte of it; what was there is backed up first", "FILE.zip", "The backup to bring back")
{
    public override string Details => "A damaged backup changes nothing. What was there goes into the folder backups beside the garden.";

    public override IReadOnlyList<(string Words, string Line)> Examples => [("The backup of this folder:", "ashery restore terrace.zip")];

    protected override Result<MovedJson> Move(Terminal terminal, string name) => StoredRecords.Restore(terminal, name);
}

/// <summary>Everything as JSON and CSV.</summary>
internal sealed class ExportVerb() : MovingVerb("export", "Write everything as JSON and CSV that other programs read", "FOLDER|FILE.zip", "A folder that is empty or not there yet, or a file that ends in .zip")
{
    public override string Details => "All states of all gardens, all revisions of all entries, the photographs. The shapes are in docs/records.md.";

    public override IReadOnlyList<(string Words, string Line)> Examples => [("Into a folder:", "ashery export terrace"), ("Into one file:", "ashery export terrace.zip")];

    protected override Result<MovedJson> Move(Terminal terminal, string name) => StoredRecords.Export(terminal, name);
}

/// <summary>What export wrote, back in.</summary>
internal sealed class ImportVerb() : MovingVerb("import", "Bring in what export wrote, without loss, where nothing is stored yet", "FOLDER|FILE.zip", "What ashery export wrote")
{
    public override string Details => "A line with a mistake in it is named, and nothing is brought in.";

    public override IReadOnlyList<(string Words, string Line)> Examples => [("From a folder:", "ashery import terrace")];

    protected override Result<MovedJson> Move(Terminal terminal, string name) => StoredRecords.Import(terminal, name);
}
