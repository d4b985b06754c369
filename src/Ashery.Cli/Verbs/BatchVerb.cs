using System.CommandLine;
using Ashery.Cli.Frame;
using Ashery.Exchange.Stock;
using Ashery.Gardens;
using Ashery.Journal;
using Ashery.Problems;
using Ashery.Quantities;
using Ashery.Stock;

namespace Ashery.Cli.Verbs;

/// <summary>What to weigh for a batch and what became of it; where a lot came from and where it went.</summary>
internal sealed class BatchVerb : Verb
{
    private readonly Argument<string[]> feed;
    private readonly GardenSource garden;
    private readonly JournalSource journal;
    private readonly ValueOption grams;
    private readonly ValueOption weighed;
    private readonly ValueOption on;
    private readonly ValueOption trace;
    private readonly ValueOption recall;
    private readonly Option<bool> save;

    public BatchVerb()
        : base("batch", "Work out what to weigh for a batch, judge what was weighed, trace and recall lots")
    {
        feed = new Argument<string[]>("feed") { HelpName = "[FEED]", Description = "Key of a feed of the garden", Arity = new ArgumentArity(0, 100) };
        Command.Arguments.Add(feed);
        grams = Add(new ValueOption("--grams", "GRAMS", "How much to make, g"));
        weighed = Add(new ValueOption("--weighed", "BAG=GRAMS", "What the scale said, a bag each: urea=110.4, or urea@LOT=110.4 for the bag of that maker's lot") { Repeatable = true });
        save = Flag("--save", "Write the batch into the journal of the stored garden");
        on = Add(new ValueOption("--on", "DATE", "The day it is made (today)"));
        trace = Add(new ValueOption("--trace", "LOT", "Back from a batch to its bags and the makers' lots"));
        recall = Add(new ValueOption("--recall", "LOT", "Forward from a maker's lot or a batch to batches and pots"));
        garden = new GardenSource(Command);
        journal = new JournalSource(garden);
    }

    public override string Details =>
        """
        With --grams it says what to weigh from which bag, the one that expires first before the others. With --weighed it says what became of it: grade by the weighings, difference to the feed, tolerance, use-by. A batch gets the next lot number of its day.
        Exit code 1: the parts may never be mixed, or nothing has this lot.
        """;

    public override IReadOnlyList<(string Words, string Line)> Examples =>
    [
        ("What to weigh for half a kilogram:", "ashery batch terrace-blend --grams 500 --demo"),
        ("What became of it:", "ashery batch terrace-blend --demo --weighed ammonium-sulfate@AS-7731=274 --weighed potassium-nitrate=181 --weighed map-technical=44.5"),
        ("Every pot that got a maker's lot:", "ashery batch --recall N-26-02 --demo"),
    ];

    public override int Run(Given given, Terminal terminal)
    {
        var feeds = given.Texts(feed);
        var (back, forward) = (given.Text(trace), given.Text(recall));
        var parts = given.Texts(weighed);
        var day = Dates.Read(given, on) ?? terminal.Today();
        Check(given, feeds, parts, back, forward);
        var loaded = given.Wrong ? null : garden.Load(given, terminal);
        var entries = loaded is null ? null : journal.Load(given, terminal, StockVerb.Kinds);
        if (given.Wrong || loaded is null || entries is null)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        var ledger = StockLedger.Of(loaded, entries);
        return back is not null ? Trace(given, terminal, ledger, back)
            : forward is not null ? Recall(given, terminal, loaded, ledger, forward)
            : parts.Count > 0 ? Made(given, terminal, loaded, ledger, feeds[0], parts, day)
            : Propose(given, terminal, loaded, ledger, feeds[0], day);
    }

    private void Check(Given given, IReadOnlyList<string> feeds, IReadOnlyList<string> parts, string? back, string? forward)
    {
        var ways = (feeds.Count > 0 ? 1 : 0) + (given.Has(trace) ? 1 : 0) + (given.Has(recall) ? 1 : 0);
        if (ways != 1 || feeds.Count > 1)
        {
            given.Add(new Problem("feed", ways == 0 ? "No feed is named." : "One thing at a time.", "Name one feed with --grams or --weighed, or give --trace LOT or --recall LOT."));
        }
        else if (feeds.Count == 1 && parts.Count == 0 && !given.Has(grams) && !given.Has(weighed))
        {
            given.Add(new Problem("grams", "How much is to be made?", "Add --grams 500, or what was weighed with --weighed urea=110.4."));
        }
        else if (back is null && forward is null && given.Has(save) && parts.Count == 0)
        {
            given.Add(new Problem("save", "Nothing was weighed that could be saved.", "Add what the scale said: --weighed urea=110.4 for each bag."));
        }
    }

    private int Propose(Given given, Terminal terminal, Garden loaded, StockLedger ledger, string feedId, DateOnly day)
    {
        var amount = NumberReader.Positive(given.Text(grams) ?? "", "grams", BatchPlanner.MostGrams, "500");
        given.AddRange(amount.Ok ? [] : amount.Problems);
        if (given.Wrong || given.Take(BatchPlanner.For(loaded, ledger, feedId, amount.Value, day)) is not { } proposal)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        Print(given, terminal, BatchJson.Of(proposal));
        return proposal.IsForbidden ? ExitCode.OutOfReach : ExitCode.Done;
    }

    private int Made(Given given, Terminal terminal, Garden loaded, StockLedger ledger, string feedId, IReadOnlyList<string> parts, DateOnly day)
    {
        if (!loaded.Feeds.Any(f => f.Id == feedId))
        {
            given.AddRange(BatchPlanner.For(loaded, ledger, feedId, 1, day).Problems);
        }

        List<Weighing> weighings = [.. parts.Select(p => WeighedWords.Read(given, p, ledger)).OfType<Weighing>()];
        var order = new BatchOrder { Id = Guid.NewGuid(), Day = day, Time = TimeOnly.FromTimeSpan(terminal.Now().ToLocalTime().TimeOfDay), FeedId = feedId, Weighings = weighings };
        if (given.Wrong || given.Take(BatchMaker.Make(loaded, ledger, order)) is not { } entry || given.Take(BatchReport.Of(loaded, feedId, weighings)) is not { } report)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        if (given.Has(save) && !journal.Write(given, terminal, entry))
        {
            return Faults.WrongUse(terminal, this, given);
        }

        var useBy = UseBy.Of(day, report.AsMade.Storage, ledger, weighings);
        Print(given, terminal, BatchJson.Of((BatchMade)entry.Facts, entry, report, ledger, useBy, given.Has(save), []));
        return ExitCode.Done;
    }

    private void Print(Given given, Terminal terminal, BatchJson batch)
    {
        if (given.Has(Json))
        {
            terminal.Output.Write(BatchJson.Write(batch));
        }
        else
        {
            BatchText.Write(terminal, batch);
        }
    }

    private int Trace(Given given, Terminal terminal, StockLedger ledger, string lot)
    {
        var found = TraceJson.Of(lot.Trim(), [.. ledger.Batches.OfLot(lot).Select(b => Stock.Trace.OfBatch(ledger, b))]);
        if (given.Has(Json))
        {
            terminal.Output.Write(TraceJson.Write(found));
        }
        else
        {
            BatchText.Write(terminal, found);
        }

        return found.Batches.Count > 0 ? ExitCode.Done : ExitCode.OutOfReach;
    }

    private int Recall(Given given, Terminal terminal, Garden loaded, StockLedger ledger, string lot)
    {
        var found = Stock.Recall.OfLot(ledger, lot);
        var json = RecallJson.Of(lot.Trim(), found, ledger);
        if (given.Has(Json))
        {
            terminal.Output.Write(RecallJson.Write(json));
        }
        else
        {
            BatchText.Write(terminal, json, loaded);
        }

        return found.IsEmpty ? ExitCode.OutOfReach : ExitCode.Done;
    }
}
