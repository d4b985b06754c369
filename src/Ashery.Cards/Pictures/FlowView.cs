using Ashery.Gardens;
using Ashery.Stock;

namespace Ashery.Cards.Pictures;

/// <summary>What a picture of a trace or recall shows: bags at the left, batches in the middle, pots at the right, and the grams between them.</summary>
/// <param name="Title">What it is.</param>
/// <param name="Bags">Left column.</param>
/// <param name="Batches">Middle column.</param>
/// <param name="Pots">Right column.</param>
/// <param name="Links">From left to right.</param>
public sealed record FlowView(string Title, IReadOnlyList<FlowBox> Bags, IReadOnlyList<FlowBox> Batches, IReadOnlyList<FlowBox> Pots, IReadOnlyList<FlowLink> Links)
{
    /// <summary>Pots drawn one by one; the others go into one box.</summary>
    private const int MostPots = 14;

    /// <summary>Back from a batch or a feed given, and on to the pots that got the batch.</summary>
    public static FlowView Of(Trace trace, StockLedger ledger, Garden garden)
    {
        var flow = new FlowWriter(garden);
        foreach (var bag in trace.Bags)
        {
            flow.Bag(bag.Line.Name, bag.Bag);
        }

        foreach (var batch in trace.Batches)
        {
            flow.Batch(batch);
        }

        foreach (var bag in trace.Bags)
        {
            flow.Link(FlowWriter.Key(bag.Bag), bag.Batch is { } id ? FlowWriter.Key(id) : null, bag.Grams, bag.Assumed);
        }

        IEnumerable<FeedUse> uses = trace.Uses.Count > 0 ? trace.Uses : trace.Batches.SelectMany(b => ledger.Batches.From(b.Id));
        foreach (var use in uses)
        {
            flow.Use(use, use.Grams, use.Batch is { } id ? [FlowWriter.Key(id)] : [.. trace.Bags.Where(static b => b.Batch is null).Select(static b => FlowWriter.Key(b.Bag))], use.Assumed);
        }

        return flow.Write("From the bags to the pots", MostPots);
    }

    /// <summary>Forward from bags or batches.</summary>
    public static FlowView Of(Recall recall, StockLedger ledger, Garden garden)
    {
        var flow = new FlowWriter(garden);
        foreach (var bag in recall.Bags)
        {
            flow.Bag(ledger.Line(bag.LineId)?.Name ?? bag.LineId, bag);
        }

        foreach (var through in recall.Batches)
        {
            flow.Batch(through.Batch);
            foreach (var bag in recall.Bags)
            {
                var grams = through.Batch.Draws.Where(d => d.LineId == bag.LineId && d.Bag == bag.Bought).Sum(static d => d.Grams);
                flow.Link(FlowWriter.Key(bag), FlowWriter.Key(through.Batch.Id), grams, through.Assumed);
            }
        }

        foreach (var reached in recall.Uses)
        {
            flow.Use(reached.Use, reached.Grams, reached.Use.Batch is { } id ? [FlowWriter.Key(id)] : [.. recall.Bags.Select(FlowWriter.Key)], reached.Assumed);
        }

        return flow.Write("Everything it reached", MostPots);
    }
}

/// <summary>A box of the picture.</summary>
/// <param name="Key">For links.</param>
/// <param name="Name">First line.</param>
/// <param name="Words">Second line.</param>
public sealed record FlowBox(string Key, string Name, string Words);

/// <summary>A band between two boxes.</summary>
/// <param name="From">Key of the left box.</param>
/// <param name="To">Key of the right box.</param>
/// <param name="Grams">Its breadth.</param>
/// <param name="Assumed">Drawn dashed: nobody named the bag or batch.</param>
public sealed record FlowLink(string From, string To, double Grams, bool Assumed);
