using Ashery.Journal;
using Ashery.Stock;
using CsCheck;

namespace Ashery.Tests.Stock;

/// <summary>Back and forward along the same ways.</summary>
public class TraceTests
{
    private const double Dust = 1e-5;

    [Fact]
    public void A_recall_of_every_bag_of_a_trace_finds_the_feed_it_started_from() => StockTales.Any.Sample(entries =>
    {
        var ledger = StockLedger.Of(StockTales.Garden, entries);
        foreach (var entry in entries.Where(static e => e.Facts is FeedGiven))
        {
            var trace = Trace.OfFeed(ledger, entry.Id);
            Assert.NotNull(trace);
            foreach (var traced in trace.Bags)
            {
                var recall = Recall.OfBag(ledger, traced.Line.Id, traced.Bag.Bought);
                Assert.Contains(recall.Uses, u => u.Use.Entry == entry.Id);
                Assert.True(traced.Batch is null || recall.Batches.Any(b => b.Batch.Id == traced.Batch));
            }
        }
    }, iter: 150);

    [Fact]
    public void A_trace_of_every_feed_of_a_recall_finds_the_bag_it_started_from_with_the_same_grams() => StockTales.Any.Sample(entries =>
    {
        var ledger = StockLedger.Of(StockTales.Garden, entries);
        foreach (var bag in ledger.Lines.SelectMany(static l => l.Bags))
        {
            foreach (var entry in Recall.OfBag(ledger, bag.LineId, bag.Bought).Uses.GroupBy(static u => u.Use.Entry))
            {
                var traced = Trace.OfFeed(ledger, entry.Key)!.Bags.Where(t => t.Bag == bag).ToList();
                Assert.NotEmpty(traced);
                Assert.Equal(entry.Sum(static u => u.Grams), traced.Sum(static t => t.Grams), Dust);
            }
        }
    }, iter: 150);

    [Fact]
    public void A_lot_is_followed_to_the_pots_with_days_and_grams()
    {
        var bag = StockTales.Entry(0, new BagBought("urea", 2000, 8, "K-77", new(2028, 1, 31)));
        var batch = StockTales.Entry(1, new BatchMade("270302-01", "two", [new("urea", "urea", 100, bag.Id), new("potassium-sulfate", "potassium-sulfate", 100)]));
        var fed = StockTales.Entry(5, new FeedGiven("two", [new("a", 10), new("row", 5)], Batch: batch.Id));
        var other = StockTales.Entry(6, new FeedGiven("two", [new("b", 8)]), 12);
        var ledger = StockLedger.Of(StockTales.Garden, [bag, batch, fed, other]);

        var recall = Recall.OfLot(ledger, " k-77 ");
        Assert.Equal(bag.Id, Assert.Single(recall.Bags).Bought);
        Assert.Equal(100, Assert.Single(recall.Batches).Grams);
        Assert.Equal(
            [("a", 1, 5.0, false), ("row", 4, 10.0, false), ("b", 1, 4.0, true)],
            recall.Uses.Select(static u => (u.Use.PotId, u.Use.Pots, Math.Round(u.Grams, 9), u.Assumed)));
        Assert.Equal(new DateOnly(2027, 3, 6), recall.Uses[0].Use.Day);
        Assert.Equal(200 - 10 - 20 - 8, ledger.Batches.Find(batch.Id)!.Left, Dust);

        var own = Recall.OfLot(ledger, "270302-01");
        Assert.Equal(3, own.Uses.Count);
        Assert.True(Recall.OfLot(ledger, "nobody").IsEmpty);
    }
}
