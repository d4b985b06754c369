using Ashery.Journal;
using Ashery.Stock;
using Ashery.Tests.Planning;
using CsCheck;

namespace Ashery.Tests.Stock;

/// <summary>Money follows the grams.</summary>
public class StockCostTests
{
    private static readonly DateOnly Far = new(2199, 1, 1);

    [Fact]
    public void A_pot_a_batch_and_a_season_by_the_prices_of_the_bags()
    {
        // 4 a kg of urea, 3 a kg of sulfate of potash (the shelf's 6 for 2 kg): a batch of 100 + 100 g costs 0.70, 3.50 a kg.
        var bag = StockTales.Entry(0, new BagBought("urea", 500, 2, "u"));
        var batch = StockTales.Entry(1, new BatchMade("x", "two", [new("urea", "urea", 100, bag.Id), new("potassium-sulfate", "potassium-sulfate", 100)]));
        var fed = StockTales.Entry(5, new FeedGiven("two", [new("a", 20), new("row", 5)], Batch: batch.Id));
        var thrown = StockTales.Entry(9, new Discarded(10, "caked", batch.Id));
        var costs = Costs([bag, batch, fed, thrown], StockTales.Start, Far);
        Assert.Equal(3.5, Assert.Single(costs.Batches).PerKg!.Value, 1e-9);
        Assert.Equal([("a", 0.07, 0.07), ("row", 0.07, 0.0175)], costs.Pots.OrderBy(static p => p.PotId).Select(static p => (p.PotId, Math.Round(p.Cost.Known, 9), Math.Round(p.Each.Known, 9))));
        Assert.Equal(0.14, costs.Given.Known, 1e-9);
        Assert.Equal(0.035, costs.Discarded.Known, 1e-9);
        Assert.Equal(2, costs.Bought.Known, 1e-9);
        Assert.Equal(0.7 - 0.14 - 0.035, costs.InBatches.Known, 1e-9);
        Assert.Empty(Costs([bag, batch, fed, thrown], StockTales.Start.AddDays(6), Far).Pots);
    }

    [Fact]
    public void What_has_no_price_is_named_and_not_called_free()
    {
        var batch = StockTales.Entry(1, new BatchMade("x", "three", [new("urea", "urea", 50), new("map-technical", "map-technical", 50)]));
        var fed = StockTales.Entry(5, new FeedGiven("three", [new("a", 20)], Batch: batch.Id));
        var costs = Costs([batch, fed], StockTales.Start, Far);
        Assert.Null(Assert.Single(costs.Batches).PerKg);
        Assert.False(costs.Given.IsWhole);
        Assert.Equal(["map-technical"], costs.Given.Unpriced);
        Assert.Equal(10, costs.Given.UnpricedGrams, 1e-9);
        Assert.Equal(0.02, costs.Given.Known, 1e-9);
    }

    // Money in = money out: with a price on every bag, what was there and bought is what was given, thrown away, missing and still there.
    [Fact]
    public void Money_is_kept_like_grams() => StockTales.Any.Sample(all =>
    {
        IReadOnlyList<Entry> entries = [.. all.Where(static e => e.Facts is not BagBought { Price: null } && !Names(e, "gone") && !Names(e, "elsewhere"))];
        var garden = StockTales.Garden with { Shelf = [.. StockTales.Garden.Shelf.SkipLast(1), SomeGardens.Bag("map-technical", 300, 5, 1000)] };
        var ledger = StockLedger.Of(garden, entries);
        if (ledger.Batches.Batches.Any(static b => b.Over > 0))
        {
            return;
        }

        var costs = StockCosts.Of(garden, ledger, StockTales.Start, Far);
        var opening = ledger.Lines.SelectMany(static l => l.Bags).Where(static b => b.Bought is null).Sum(static b => b.Opening * b.PricePerGram ?? 0);
        Assert.Equal(opening + costs.Bought.Known, costs.Given.Known + costs.Discarded.Known + costs.Missing.Known + costs.InBags.Known + costs.InBatches.Known, 1e-6);
    }, iter: 200);

    private static bool Names(Entry entry, string word) => entry.Facts switch
    {
        BatchMade b => b.FeedId == word || b.Weighings.Any(w => w.BagId == word),
        FeedGiven f => f.FeedId == word,
        BagBought b => b.BagId == word,
        StockCounted c => c.BagId == word,
        Discarded d => d.BagId == word,
        _ => false,
    };

    private static StockCosts Costs(IReadOnlyList<Entry> entries, DateOnly from, DateOnly to) => StockCosts.Of(StockTales.Garden, StockLedger.Of(StockTales.Garden, entries), from, to);
}
