using Ashery.Feeds;
using Ashery.Gardens;
using Ashery.Journal;
using Ashery.Pots;
using Ashery.Problems;

namespace Ashery.Stock;

/// <summary>Goes through the entries day by day and writes the book.</summary>
internal sealed class StockWalk
{
    private readonly Dictionary<string, LineAccount> lines = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<LineAccount>> byMaterial = new(StringComparer.Ordinal);
    private readonly Dictionary<Guid, BagAccount> bags = [];
    private readonly Dictionary<string, Feed> feeds = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Pot> pots = new(StringComparer.Ordinal);
    private readonly BatchWalk batches;
    private readonly List<FeedUse> uses = [];
    private readonly List<BatchDiscard> discards = [];
    private readonly List<StockMove> moves = [];
    private readonly List<Problem> notes = [];

    public StockWalk(Garden garden)
    {
        foreach (var bag in garden.Shelf)
        {
            var line = new LineAccount(bag.Id, bag);
            lines.TryAdd(bag.Id, line);
            (byMaterial.TryGetValue(bag.Material.Id, out var same) ? same : byMaterial[bag.Material.Id] = []).Add(line);
        }

        foreach (var feed in garden.Feeds)
        {
            feeds.TryAdd(feed.Id, feed);
        }

        foreach (var pot in garden.Pots)
        {
            pots.TryAdd(pot.Id, pot);
        }

        batches = new(feeds, notes);
    }

    public StockLedger Run(IReadOnlyList<Entry> entries)
    {
        // Bags are known from the start, so that a weighing written for an earlier day may name one; they come to the shelf on their own day.
        foreach (var entry in entries)
        {
            if (entry.Facts is BatchMade made)
            {
                batches.Know(entry, made);
            }

            if (entry.Facts is BagBought bought)
            {
                var line = Line(bought.BagId);
                var bag = new BagAccount(line, entry, bought, bought.Grams);
                line.Bought.Add(bag);
                line.IsKept = true;
                bags.TryAdd(entry.Id, bag);
            }
        }

        foreach (var entry in entries.OrderBy(static e => e.Day).ThenBy(Hour).ThenBy(static e => Rank(e.Facts)).ThenBy(static e => e.Id))
        {
            Write(entry);
        }

        return new()
        {
            Lines = [.. lines.Values.Select(static l => l.Close())],
            Moves = moves,
            Batches = new([.. batches.Close(moves).OrderByDescending(static b => b.Made).ThenByDescending(static b => b.Lot, StringComparer.Ordinal).ThenBy(static b => b.Id)], uses, discards),
            Notes = notes,
        };
    }

    private void Write(Entry entry)
    {
        switch (entry.Facts)
        {
            case BagBought bought:
                moves.Add(new(entry.Id, entry.Day, bought.BagId, entry.Id, StockMoveKind.Bought, bought.Grams));
                break;
            case BatchMade made:
                batches.Make(entry.Id);
                foreach (var weighing in made.Weighings.Where(static w => w.Grams > 0))
                {
                    var line = Line(weighing.BagId);
                    line.MaterialId ??= weighing.MaterialId;
                    Draw([line], entry, weighing.Grams, weighing.Bought, StockMoveKind.Batch);
                }

                break;
            case FeedGiven given:
                foreach (var amount in given.Amounts.Where(static a => a.Grams > 0))
                {
                    Give(entry, given, amount);
                }

                break;
            case Discarded { BagId: { } bagId } thrown when thrown.Grams > 0:
                Draw([Line(bagId)], entry, thrown.Grams, thrown.Bought, StockMoveKind.Discarded);
                break;
            case Discarded { Batch: { } batch } thrown:
                if (thrown.Grams > 0 && batches.Discard(batch, thrown.Grams))
                {
                    discards.Add(new(entry.Id, entry.Day, batch, thrown.Grams, thrown.Why));
                }

                break;
            case StockCounted counted:
                Count(entry, counted);
                break;
        }
    }

    private void Give(Entry entry, FeedGiven given, PotAmount amount)
    {
        var count = Math.Max(1, pots.GetValueOrDefault(amount.PotId)?.Count ?? 1);
        var rest = amount.Grams * count;
        foreach (var (batch, grams, assumed) in batches.Take(given, entry.Day, rest))
        {
            uses.Add(new(entry.Id, entry.Day, given.FeedId, amount.PotId, grams / count, count, batch, assumed));
            rest -= grams;
        }

        if (rest <= FirstExpired.Dust)
        {
            return;
        }

        // No batch holds it: it was mixed on the spot, out of the bags.
        uses.Add(new(entry.Id, entry.Day, given.FeedId, amount.PotId, rest / count, count, null, Assumed: false));
        foreach (var (material, share) in feeds.GetValueOrDefault(given.FeedId)?.Parts ?? new Dictionary<string, double>())
        {
            if (byMaterial.TryGetValue(material, out var from))
            {
                Draw(from, entry, share * rest, null, StockMoveKind.Given, amount.PotId);
            }
        }
    }

    private void Draw(List<LineAccount> from, Entry entry, double grams, Guid? named, StockMoveKind kind, string? pot = null)
    {
        foreach (var line in from)
        {
            line.IsKept = true;
        }

        if (named is { } id)
        {
            if (bags.TryGetValue(id, out var bag) && from.Contains(bag.Line))
            {
                Take(bag, entry, grams, kind, assumed: false, pot);
                return;
            }

            notes.Add(new(from[0].Id, $"On {Day(entry.Day)} a bag of {from[0].Name} is named that is not in the book.", "It was taken from the bag that expires first; correct the entry to name another.", Severity.Warning));
        }

        var there = from.SelectMany(l => l.On(entry.Day)).Where(static b => b.Left > FirstExpired.Dust).ToList();
        there.Sort(FirstExpired.Compare);
        var rest = grams;
        foreach (var bag in there)
        {
            var part = Math.Min(rest, bag.Left);
            Take(bag, entry, part, kind, assumed: there.Count > 1, pot);
            rest -= part;
            if (rest <= FirstExpired.Dust)
            {
                return;
            }
        }

        Take((from.Find(static l => l.Before.IsOpen) ?? from[0]).Before, entry, rest, kind, assumed: false, pot);
    }

    private void Take(BagAccount bag, Entry entry, double grams, StockMoveKind kind, bool assumed, string? pot)
    {
        var over = bag.Take(grams, kind);
        if (over > 0)
        {
            moves.Add(new(entry.Id, entry.Day, bag.Line.Id, bag.Bought, StockMoveKind.Found, over));
            notes.Add(new(
                bag.Line.Id,
                FormattableString.Invariant($"On {Day(entry.Day)} {over:0.##} g more of {bag.Line.Name} went out than the book had."),
                "Weigh what is left, or look at the last bags bought.",
                Severity.Warning));
        }

        moves.Add(new(entry.Id, entry.Day, bag.Line.Id, bag.Bought, kind, grams, assumed) { Pot = pot });
    }

    private void Count(Entry entry, StockCounted counted)
    {
        var line = Line(counted.BagId);
        line.IsKept = true;
        if (counted.Bought is { } id)
        {
            if (bags.TryGetValue(id, out var bag) && bag.Line == line)
            {
                Set(bag, entry, counted.Grams);
                return;
            }

            notes.Add(new(line.Id, $"On {Day(entry.Day)} a bag of {line.Name} was weighed that is not in the book.", "Correct the entry, or take it back.", Severity.Warning));
            return;
        }

        var there = line.On(entry.Day);
        var inBags = there.Where(b => b != line.Before).Sum(static b => b.Left);
        if (line.Before.IsOpen)
        {
            Set(line.Before, entry, Math.Max(0, counted.Grams - inBags));
        }

        var missing = line.Before.Left + inBags - counted.Grams;
        if (missing < -FirstExpired.Dust)
        {
            // The open bag is the one to be used next.
            var open = there.Find(static b => b.Left > FirstExpired.Dust) ?? line.Before;
            Set(open, entry, open.Left - missing);
            return;
        }

        foreach (var bag in there)
        {
            if (missing > FirstExpired.Dust && bag.Left > 0)
            {
                var part = Math.Min(missing, bag.Left);
                Set(bag, entry, bag.Left - part);
                missing -= part;
            }
        }
    }

    private void Set(BagAccount bag, Entry entry, double grams)
    {
        var by = bag.Set(grams);
        if (by != 0)
        {
            moves.Add(new(entry.Id, entry.Day, bag.Line.Id, bag.Bought, StockMoveKind.Counted, by));
        }
    }

    private LineAccount Line(string id)
    {
        if (!lines.TryGetValue(id, out var line))
        {
            lines.Add(id, line = new(id, null));
        }

        return line;
    }

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);

    // An entry without an hour: a bag is there from the morning, what is left is weighed in the evening.
    private static TimeOnly Hour(Entry entry) => entry.Time ?? entry.Facts switch
    {
        BagBought => TimeOnly.MinValue,
        StockCounted => TimeOnly.MaxValue,
        _ => new TimeOnly(12, 0),
    };

    private static int Rank(EntryFacts facts) => facts switch
    {
        BagBought => 0,
        BatchMade => 1,
        FeedGiven => 2,
        Discarded => 3,
        _ => 4,
    };
}
