using Ashery.Journal;
using Ashery.Stock;
using CsCheck;

namespace Ashery.Tests.Stock;

/// <summary>Nothing gets lost and nothing comes from nowhere, whatever is written in whatever order.</summary>
public class StockConservationTests
{
    private const double Dust = 1e-5;

    // The left side is added up from the entries themselves, not from the book's own movements.
    [Fact]
    public void Opening_bought_and_corrected_is_what_is_left_mixed_given_and_thrown_away() => StockTales.Any.Sample(entries =>
    {
        var ledger = StockLedger.Of(StockTales.Garden, entries);
        var straight = ledger.Moves.Where(static m => m.Kind == StockMoveKind.Given).ToLookup(static m => m.LineId);
        foreach (var line in ledger.Lines)
        {
            var bought = entries.Select(static e => e.Facts).OfType<BagBought>().Where(b => b.BagId == line.Id).Sum(static b => b.Grams);
            var mixed = entries.Select(static e => e.Facts).OfType<BatchMade>().SelectMany(static b => b.Weighings).Where(w => w.BagId == line.Id).Sum(static w => w.Grams);
            var thrown = entries.Select(static e => e.Facts).OfType<Discarded>().Where(d => d.BagId == line.Id).Sum(static d => d.Grams);
            var given = straight[line.Id].Sum(static m => m.Grams);
            var before = line.Bags.Where(static b => b.Bought is null).Sum(static b => b.Opening);
            var corrected = line.Bags.Sum(static b => b.Corrected);
            Assert.Equal(before + bought + corrected, line.Bags.Sum(static b => b.Left ?? 0) + mixed + thrown + given, Dust);
            Assert.Equal(mixed, line.Bags.Sum(static b => b.InBatches), Dust);
            Assert.Equal(thrown, line.Bags.Sum(static b => b.Discarded), Dust);
            Assert.All(line.Bags, static b => Assert.True(b.Left is null or >= 0));
        }

        // What the shelf said is where the book began.
        Assert.Equal(1000, ledger.Bag("urea", null)!.Opening, Dust);
        Assert.Equal(300, ledger.Bag("map-technical", null)!.Opening, Dust);
    }, iter: 300);

    [Fact]
    public void Every_gram_of_feed_given_came_from_a_batch_or_from_bags() => StockTales.Any.Sample(entries =>
    {
        var ledger = StockLedger.Of(StockTales.Garden, entries);
        var feeds = StockTales.Garden.Feeds.ToDictionary(static f => f.Id);
        foreach (var entry in entries)
        {
            if (entry.Facts is not FeedGiven given)
            {
                continue;
            }

            var uses = ledger.Batches.Uses.Where(u => u.Entry == entry.Id).ToList();
            Assert.Equal(given.Amounts.Sum(static a => a.Grams * (a.PotId == "row" ? 4 : 1)), uses.Sum(static u => u.Grams), Dust);
            if (feeds.ContainsKey(given.FeedId))
            {
                Assert.Equal(
                    uses.Where(static u => u.Batch is null).Sum(static u => u.Grams),
                    ledger.Moves.Where(m => m.Entry == entry.Id && m.Kind == StockMoveKind.Given).Sum(static m => m.Grams), Dust);
            }
        }
    }, iter: 200);

    [Fact]
    public void A_batch_is_what_was_given_thrown_away_and_left() => StockTales.Any.Sample(entries =>
    {
        var book = StockLedger.Of(StockTales.Garden, entries).Batches;
        Assert.Equal(entries.Count(static e => e.Facts is BatchMade), book.Batches.Count);
        foreach (var batch in book.Batches)
        {
            var made = ((BatchMade)entries.Single(e => e.Id == batch.Id).Facts).Weighings.Sum(static w => w.Grams);
            var thrown = entries.Select(static e => e.Facts).OfType<Discarded>().Where(d => d.Batch == batch.Id).Sum(static d => d.Grams);
            var given = book.From(batch.Id).Sum(static u => u.Grams);
            Assert.Equal(made + batch.Over, given + thrown + batch.Left, Dust);
            Assert.Equal(made, batch.Draws.Sum(static d => d.Grams), Dust);
            Assert.True(batch.Over <= Dust || batch.Left <= Dust, "A batch cannot be overdrawn and have something left.");
        }
    }, iter: 200);

    [Fact]
    public void Weighed_at_the_end_the_book_says_what_the_scale_says() => Gen.Select(StockTales.Any, Gen.Double[0, 2000]).Sample((entries, grams) =>
    {
        var ledger = StockLedger.Of(StockTales.Garden, [.. entries, StockTales.Entry(500, new StockCounted("urea", grams))]);
        Assert.Equal(grams, ledger.Line("urea")!.Left!.Value, Dust);
    }, iter: 200);

    [Fact]
    public void The_order_in_which_entries_are_handed_over_does_not_matter() => Gen.Select(StockTales.Any, Gen.Int[0, 100_000]).Sample((entries, seed) =>
    {
        var shuffled = entries.ToArray();
        new Random(seed).Shuffle(shuffled);
        Assert.Equal(Facts(StockLedger.Of(StockTales.Garden, entries)), Facts(StockLedger.Of(StockTales.Garden, shuffled)));
    }, iter: 100);

    [Fact]
    public void What_was_taken_back_leaves_no_trace() => Gen.Select(StockTales.Any, Gen.Int[0, 1000]).Sample((entries, which) =>
    {
        var gone = entries[which % entries.Count].Id;
        var ledger = StockLedger.Of(StockTales.Garden, [.. entries.Where(e => e.Id != gone)]);
        Assert.DoesNotContain(ledger.Moves, m => m.Entry == gone || m.Bag == gone);
        Assert.DoesNotContain(ledger.Batches.Batches, b => b.Id == gone);
        Assert.DoesNotContain(ledger.Batches.Uses, u => u.Entry == gone || u.Batch == gone);
        Assert.DoesNotContain(ledger.Lines.SelectMany(static l => l.Bags), b => b.Bought == gone);
    }, iter: 200);

    [Fact]
    public void Bags_nobody_named_go_out_first_expired_first() => StockTales.Any.Sample(entries =>
    {
        var ledger = StockLedger.Of(StockTales.Garden, entries);
        var left = ledger.Lines.SelectMany(static l => l.Bags).ToDictionary(static b => (b.LineId, b.Bought), static b => b.Bought is null ? b.Opening : 0);
        var bags = ledger.Lines.SelectMany(static l => l.Bags).ToDictionary(static b => (b.LineId, b.Bought));
        foreach (var move in ledger.Moves)
        {
            var key = (move.LineId, move.Bag);
            if (move.Assumed)
            {
                // Every bag that was there and comes before this one in the order was already empty.
                var before = FirstExpired.Order(bags.Values.Where(b => b.LineId == move.LineId)).TakeWhile(b => b.Bought != move.Bag);
                Assert.All(before.Where(b => !(b.BoughtOn > move.Day) && b.Bought is not null), b => Assert.True(left[(b.LineId, b.Bought)] <= Dust));
            }

            left[key] = left.GetValueOrDefault(key) + (move.Kind is StockMoveKind.Bought or StockMoveKind.Counted or StockMoveKind.Found ? move.Grams : -move.Grams);
        }
    }, iter: 200);

    private static string Facts(StockLedger ledger) => string.Join('\n', ledger.Lines.SelectMany(static l => l.Bags)
        .Select(static b => FormattableString.Invariant($"{b.LineId} {b.Bought} {b.Left:0.###} {b.Corrected:0.###} {b.InBatches:0.###}"))
        .Concat(ledger.Batches.Batches.Select(static b => FormattableString.Invariant($"{b.Lot} {b.Left:0.###} {b.Over:0.###}"))));
}
