using Ashery.Cli.Frame;
using Ashery.Problems;

namespace Ashery.Cli.Verbs;

/// <summary>From one database to another, SQLite or PostgreSQL.</summary>
internal sealed class CopyVerb : Verb
{
    private readonly ValueOption from, to;

    public CopyVerb()
        : base("copy", "Copy all records from one database to an empty one, SQLite or PostgreSQL")
    {
        from = Add(new ValueOption("--from", "DATABASE", "File of a garden, or postgres://USER@HOST:PORT/NAME"));
        to = Add(new ValueOption("--to", "DATABASE", "The same; it must hold nothing yet"));
    }

    public override string Details => "All in one transaction, and compared by a hash of every row before it ends. A password can stand in PGPASSWORD.";

    public override IReadOnlyList<(string Words, string Line)> Examples =>
    [
        ("To PostgreSQL:", "ashery copy --from garden.db --to postgres://ash@localhost/ash"),
        ("And back:", "ashery copy --from postgres://ash@localhost/ash --to again.db"),
    ];

    public override int Run(Given given, Terminal terminal)
    {
        var (source, target) = (given.Text(from), given.Text(to));
        if (!given.Wrong && (source is null || target is null))
        {
            given.Add(new Problem(source is null ? "from" : "to", "Both --from and --to are needed.", "See the examples of --help."));
        }

        return MovingVerb.Print(this, given, terminal, given.Wrong ? null : given.Take(StoredRecords.Copy(source!, target!)));
    }
}
