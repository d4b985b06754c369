namespace Ashery.Stock;

/// <summary>Back from a batch or a feed given to the bags and the makers' lots it came from.</summary>
public sealed record Trace
{
    /// <summary>Feeds given it starts from; empty when it starts from a batch.</summary>
    public required IReadOnlyList<FeedUse> Uses { get; init; }

    /// <summary>Batches on the way.</summary>
    public required IReadOnlyList<Batch> Batches { get; init; }

    /// <summary>Bags at the end, with the grams that came from each.</summary>
    public required IReadOnlyList<TracedBag> Bags { get; init; }

    /// <summary>Everything that went into a batch.</summary>
    public static Trace OfBatch(StockLedger ledger, Batch batch) => new()
    {
        Uses = [],
        Batches = [batch],
        Bags = [.. batch.Draws.Select(d => Of(ledger, d, batch.Id, d.Grams))],
    };

    /// <summary>Everything that a feed given (all pots of the entry, or one) came from; null when the entry gave none.</summary>
    public static Trace? OfFeed(StockLedger ledger, Guid entry, string? pot = null)
    {
        var uses = ledger.Batches.Uses.Where(u => u.Entry == entry && (pot is null || u.PotId == pot)).ToList();
        if (uses.Count == 0)
        {
            return null;
        }

        List<Batch> batches = [];
        List<TracedBag> bags = [];
        foreach (var group in uses.Where(static u => u.Batch is not null).GroupBy(static u => u.Batch!.Value))
        {
            if (ledger.Batches.Find(group.Key) is { } batch)
            {
                batches.Add(batch);
                var share = batch.Grams > 0 ? group.Sum(static u => u.Grams) / batch.Grams : 0;
                bags.AddRange(batch.Draws.Select(d => Of(ledger, d, batch.Id, d.Grams * share)));
            }
        }

        foreach (var move in ledger.Moves.Where(m => m.Entry == entry && m.Kind == StockMoveKind.Given && (pot is null || m.Pot == pot)))
        {
            bags.Add(Of(ledger, move, null, move.Grams));
        }

        return new() { Uses = uses, Batches = batches, Bags = bags };
    }

    private static TracedBag Of(StockLedger ledger, StockMove move, Guid? batch, double grams)
    {
        var line = ledger.Line(move.LineId)!;
        return new(line, line.Bags.First(b => b.Bought == move.Bag), batch, grams, move.Assumed);
    }
}

/// <summary>A bag at the end of a trace.</summary>
/// <param name="Line">Its line of the shelf.</param>
/// <param name="Bag">The bag.</param>
/// <param name="Batch">Through which batch; null when it was given without one.</param>
/// <param name="Grams">g of it in what the trace started from.</param>
/// <param name="Assumed">True when nobody named the bag.</param>
public sealed record TracedBag(StockLine Line, StockBag Bag, Guid? Batch, double Grams, bool Assumed);
