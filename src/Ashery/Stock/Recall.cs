namespace Ashery.Stock;

/// <summary>Forward from bags or batches to every batch and pot they reached, with days and grams, and what of it is still there.</summary>
public sealed record Recall
{
    /// <summary>Bags it starts from; empty when it starts from a batch of one's own.</summary>
    public required IReadOnlyList<StockBag> Bags { get; init; }

    /// <summary>Batches that hold some of it.</summary>
    public required IReadOnlyList<RecalledBatch> Batches { get; init; }

    /// <summary>Feeds with some of it, oldest first.</summary>
    public required IReadOnlyList<RecalledUse> Uses { get; init; }

    /// <summary>g thrown away straight from the bags.</summary>
    public required double Discarded { get; init; }

    /// <summary>True when nothing is found under this number or key.</summary>
    public bool IsEmpty => Bags.Count == 0 && Batches.Count == 0;

    /// <summary>From one bag; null for the entry means what stood on the line before the book.</summary>
    public static Recall OfBag(StockLedger ledger, string lineId, Guid? bought) =>
        Of(ledger, ledger.Bag(lineId, bought) is { } bag ? [bag] : []);

    /// <summary>From a lot number: a maker's, on any bag, or a batch's own.</summary>
    public static Recall OfLot(StockLedger ledger, string lot)
    {
        var wanted = lot.Trim();
        var bags = Of(ledger, [.. ledger.Lines.SelectMany(static l => l.Bags).Where(b => string.Equals(b.Lot, wanted, StringComparison.OrdinalIgnoreCase))]);
        var own = ledger.Batches.OfLot(wanted).Select(b => OfBatch(ledger, b)).ToList();
        return new()
        {
            Bags = bags.Bags,
            Batches = [.. bags.Batches, .. own.SelectMany(static o => o.Batches).Where(b => !bags.Batches.Any(o => o.Batch.Id == b.Batch.Id))],
            Uses = [.. bags.Uses, .. own.SelectMany(static o => o.Uses).Where(u => !bags.Uses.Any(o => o.Use == u.Use))],
            Discarded = bags.Discarded,
        };
    }

    /// <summary>From a batch of one's own: grams are g of the feed.</summary>
    public static Recall OfBatch(StockLedger ledger, Batch batch) => new()
    {
        Bags = [],
        Batches = [new(batch, batch.Grams, Assumed: false)],
        Uses = [.. ledger.Batches.From(batch.Id).Select(static u => new RecalledUse(u, u.Grams, u.Assumed))],
        Discarded = 0,
    };

    private static Recall Of(StockLedger ledger, List<StockBag> bags)
    {
        var keys = bags.Select(static b => (b.LineId, b.Bought)).ToHashSet();
        List<RecalledBatch> batches = [];
        Dictionary<(Guid, string), (double Grams, bool Assumed)> straight = [];
        foreach (var batch in ledger.Batches.Batches)
        {
            var from = batch.Draws.Where(d => keys.Contains((d.LineId, d.Bag))).ToList();
            if (from.Count > 0)
            {
                batches.Add(new(batch, from.Sum(static d => d.Grams), from.Exists(static d => d.Assumed)));
            }
        }

        var discarded = 0.0;
        foreach (var move in ledger.Moves)
        {
            if (!keys.Contains((move.LineId, move.Bag)))
            {
                continue;
            }

            if (move is { Kind: StockMoveKind.Given, Pot: { } pot })
            {
                var old = straight.GetValueOrDefault((move.Entry, pot));
                straight[(move.Entry, pot)] = (old.Grams + move.Grams, old.Assumed || move.Assumed);
            }

            discarded += move.Kind == StockMoveKind.Discarded ? move.Grams : 0;
        }

        var shares = batches.ToDictionary(static b => b.Batch.Id);
        List<RecalledUse> uses = [];
        foreach (var use in ledger.Batches.Uses)
        {
            if (use.Batch is { } id && shares.TryGetValue(id, out var through))
            {
                uses.Add(new(use, through.Grams / through.Batch.Grams * use.Grams, use.Assumed || through.Assumed));
            }
            else if (use.Batch is null && straight.Remove((use.Entry, use.PotId), out var taken))
            {
                uses.Add(new(use, taken.Grams, taken.Assumed));
            }
        }

        return new() { Bags = bags, Batches = batches, Uses = uses, Discarded = discarded };
    }
}

/// <summary>A batch a recall reaches.</summary>
/// <param name="Batch">The batch.</param>
/// <param name="Grams">g of what is recalled that went into it.</param>
/// <param name="Assumed">True when nobody named the bag.</param>
public sealed record RecalledBatch(Batch Batch, double Grams, bool Assumed);

/// <summary>A feed a recall reaches.</summary>
/// <param name="Use">Which pots, when, how much feed.</param>
/// <param name="Grams">g of what is recalled in it, all its pots together.</param>
/// <param name="Assumed">True when nobody named the bag or the batch.</param>
public sealed record RecalledUse(FeedUse Use, double Grams, bool Assumed);
