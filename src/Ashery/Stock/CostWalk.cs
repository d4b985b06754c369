using Ashery.Gardens;

namespace Ashery.Stock;

/// <summary>Adds up money along the movements of the book.</summary>
internal sealed class CostWalk
{
    private readonly Garden garden;
    private readonly StockLedger ledger;
    private readonly DateOnly from;
    private readonly DateOnly to;
    private readonly Dictionary<(string Line, Guid? Bag), double?> prices;
    private readonly Dictionary<Guid, BatchCost> batches;

    public CostWalk(Garden garden, StockLedger ledger, DateOnly from, DateOnly to)
    {
        (this.garden, this.ledger, this.from, this.to) = (garden, ledger, from, to);
        prices = ledger.Lines.SelectMany(static l => l.Bags).ToDictionary(static b => (b.LineId, b.Bought), static b => b.PricePerGram);
        batches = ledger.Batches.Batches.ToDictionary(static b => b.Id, b => new BatchCost(b, b.Draws.Aggregate(Cost.None, (sum, d) => sum + Of(d))));
    }

    public StockCosts Run()
    {
        var sums = new Dictionary<StockMoveKind, Cost>();
        Dictionary<(Guid, string), Cost> straight = [];
        foreach (var move in ledger.Moves)
        {
            if (move is { Kind: StockMoveKind.Given, Pot: { } pot })
            {
                straight[(move.Entry, pot)] = straight.GetValueOrDefault((move.Entry, pot), Cost.None) + Of(move);
            }

            if (move.Day >= from && move.Day <= to)
            {
                sums[move.Kind] = sums.GetValueOrDefault(move.Kind, Cost.None) + Of(move);
            }
        }

        var pots = Pots(straight);
        return new()
        {
            From = from,
            To = to,
            Pots = pots,
            Batches = [.. ledger.Batches.Batches.Select(b => batches[b.Id])],
            Given = pots.Aggregate(Cost.None, static (sum, p) => sum + p.Cost),
            Bought = sums.GetValueOrDefault(StockMoveKind.Bought, Cost.None),
            Discarded = sums.GetValueOrDefault(StockMoveKind.Discarded, Cost.None) + DiscardedBatches(),
            Missing = (sums.GetValueOrDefault(StockMoveKind.Counted, Cost.None) + sums.GetValueOrDefault(StockMoveKind.Found, Cost.None)) * -1,
            InBags = ledger.Lines.SelectMany(static l => l.Bags).Aggregate(Cost.None, (sum, b) => sum + Cost.Of(b.Left ?? 0, b.PricePerGram, b.LineId)),
            InBatches = batches.Values.Aggregate(Cost.None, static (sum, b) => sum + Share(b, b.Batch.Left)),
        };
    }

    private List<PotCost> Pots(Dictionary<(Guid, string), Cost> straight)
    {
        Dictionary<string, PotCost> pots = new(StringComparer.Ordinal);
        foreach (var use in ledger.Batches.Uses.Where(u => u.Day >= from && u.Day <= to))
        {
            var cost = use.Batch is { } id ? Share(batches[id], use.Grams) : Straight(use, straight);
            var old = pots.GetValueOrDefault(use.PotId) ?? new(use.PotId, garden.Pots.FirstOrDefault(p => p.Id == use.PotId)?.Name ?? use.PotId, use.Pots, 0, Cost.None);
            pots[use.PotId] = old with { Grams = old.Grams + use.Grams, Cost = old.Cost + cost };
        }

        return [.. pots.Values.OrderByDescending(static p => p.Cost.Known).ThenBy(static p => p.PotId, StringComparer.Ordinal)];
    }

    // What no bag of the shelf stands for has no price.
    private static Cost Straight(FeedUse use, Dictionary<(Guid, string), Cost> straight)
    {
        straight.Remove((use.Entry, use.PotId), out var cost);
        cost ??= Cost.None;
        var rest = use.Grams - cost.PricedGrams - cost.UnpricedGrams;
        return rest > FirstExpired.Dust ? cost + Cost.Of(rest, null, use.FeedId) : cost;
    }

    private Cost DiscardedBatches() => ledger.Batches.Discards.Where(d => d.Day >= from && d.Day <= to)
        .Aggregate(Cost.None, (sum, d) => batches.TryGetValue(d.Batch, out var batch) ? sum + Share(batch, d.Grams) : sum);

    private static Cost Share(BatchCost batch, double grams) => batch.Batch.Grams > 0 ? batch.Cost * (grams / batch.Batch.Grams) : Cost.None;

    private Cost Of(StockMove move) => Cost.Of(move.Grams, prices.GetValueOrDefault((move.LineId, move.Bag)), move.LineId);
}
