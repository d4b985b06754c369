using Ashery.Cli.Frame;
using Ashery.Exchange.Stock;
using Ashery.Journal;
using Ashery.Problems;
using Ashery.Stock;
using Ashery.Today;

namespace Ashery.Cli.Verbs;

/// <summary>What every bag and batch holds, when it runs out under the planned year, what to buy and what feeding cost.</summary>
internal sealed class StockVerb : Verb
{
    internal static readonly IReadOnlyList<string> Kinds = [.. StockLedger.Kinds, EntryKind.TaskSkipped, EntryKind.TaskMoved];

    private readonly GardenSource garden;
    private readonly JournalSource journal;
    private readonly ValueOption from;
    private readonly ValueOption to;

    public StockVerb()
        : base("stock", "Show what each bag and batch holds, when it runs out, what to buy and what feeding cost")
    {
        from = Add(new ValueOption("--from", "DATE", "First day of the costs (the first of January)"));
        to = Add(new ValueOption("--to", "DATE", "Last day of the costs (today)"));
        garden = new GardenSource(Command);
        journal = new JournalSource(garden);
    }

    public override string Details =>
        """
        Bags bought, batches, feeds given and what was weighed or thrown away are read from the journal of the stored garden. What the shelf says is what was there before the first entry about that line.
        A weighing that names no bag is taken from the bag that expires first. A garden file has no journal: its shelf is shown as it stands.
        """;

    public override IReadOnlyList<(string Words, string Line)> Examples =>
    [
        ("The demo garden's stock:", "ashery stock --demo"),
        ("The same for another program:", "ashery stock --demo --json"),
        ("Costs of a season:", "ashery stock --demo --from 2026-03-01 --to 2026-10-31"),
    ];

    public override int Run(Given given, Terminal terminal)
    {
        var today = terminal.Today();
        var (first, last) = (Dates.Read(given, from) ?? new DateOnly(today.Year, 1, 1), Dates.Read(given, to) ?? today);
        if (!given.Wrong && last < first)
        {
            given.Add(new Problem("to", "It ends before it begins.", "Choose a day after --from."));
        }

        var loaded = garden.Load(given, terminal);
        var entries = given.Wrong || loaded is null ? null : journal.Load(given, terminal, Kinds);
        if (given.Wrong || loaded is null || entries is null)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        var ledger = StockLedger.Of(loaded, entries);
        var stock = StockJson.Of(loaded, ledger, StockOutlook.For(loaded, ledger, entries, today), StockCosts.Of(loaded, ledger, first, last));
        if (given.Has(Json))
        {
            terminal.Output.Write(StockJson.Write(stock));
        }
        else
        {
            StockText.Write(terminal, stock);
        }

        return ExitCode.Done;
    }
}
