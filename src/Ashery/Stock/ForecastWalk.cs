using Ashery.Feeds;
using Ashery.Gardens;

namespace Ashery.Stock;

/// <summary>Takes what the plan needs out of batches and bags, day by day.</summary>
internal sealed class ForecastWalk
{
    private readonly StockLedger ledger;
    private readonly DateOnly to;
    private readonly Dictionary<string, Feed> feeds = new(StringComparer.Ordinal);
    private readonly Dictionary<StockBag, Rest> bags = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<Batch, Rest> batches = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<string, IReadOnlyList<StockBag>> byMaterial = new(StringComparer.Ordinal);
    private readonly Dictionary<string, IReadOnlyList<Batch>> byFeed = new(StringComparer.Ordinal);
    private readonly Dictionary<string, double> needed = new(StringComparer.Ordinal);
    private readonly Dictionary<string, double> shortOf = new(StringComparer.Ordinal);
    private readonly Dictionary<string, DateOnly> runsOut = new(StringComparer.Ordinal);

    public ForecastWalk(Garden garden, StockLedger ledger, DateOnly to)
    {
        (this.ledger, this.to) = (ledger, to);
        foreach (var feed in garden.Feeds)
        {
            feeds.TryAdd(feed.Id, feed);
        }

        foreach (var bag in ledger.Lines.SelectMany(static l => l.Bags))
        {
            bags.Add(bag, new() { Left = bag.Left ?? double.PositiveInfinity });
        }

        foreach (var batch in ledger.Batches.Batches)
        {
            batches.Add(batch, new() { Left = batch.Left });
        }
    }

    /// <summary>g of each material the plan takes from bags (what comes out of batches is mixed already).</summary>
    public IReadOnlyDictionary<string, double> Needed => needed;

    /// <summary>g of each material that no bag holds.</summary>
    public IReadOnlyDictionary<string, double> ShortOf => shortOf;

    public IReadOnlyDictionary<string, DateOnly> RunsOut => runsOut;

    public void Give(DateOnly day, string feedId, double grams)
    {
        if (!byFeed.TryGetValue(feedId, out var mixed))
        {
            byFeed.Add(feedId, mixed = ledger.Batches.Open(feedId));
        }

        foreach (var batch in mixed)
        {
            grams -= batch.UseBy < day ? 0 : batches[batch].Take(grams, day, batch.UseBy);
        }

        if (grams <= FirstExpired.Dust || !feeds.TryGetValue(feedId, out var feed))
        {
            return;
        }

        foreach (var (material, share) in feed.Parts)
        {
            Take(material, share * grams, day);
        }
    }

    public IReadOnlyList<LineForecast> Lines() => [.. ledger.Lines.Select(line => new LineForecast(
        line.Id,
        line.Bags.Sum(b => bags[b].Used),
        line is { Shelf: not null, MaterialId: { } material } && runsOut.TryGetValue(material, out var day) ? day : null,
        [.. line.Bags.Select(b => new BagForecast(b, bags[b].Used, bags[b].EmptyOn, b.BestBefore <= to ? bags[b].LeftAtDate() : null))]))];

    public IReadOnlyList<BatchForecast> Batches() => [.. FirstExpired.Order(ledger.Batches.Batches.Where(static b => b.Left > FirstExpired.Dust)).Select(b =>
        new BatchForecast(b, batches[b].Used, batches[b].EmptyOn, b.UseBy <= to ? batches[b].LeftAtDate() : null))];

    private void Take(string material, double grams, DateOnly day)
    {
        needed[material] = needed.GetValueOrDefault(material) + grams;
        if (!byMaterial.TryGetValue(material, out var from))
        {
            byMaterial.Add(material, from = FirstExpired.Order(ledger.Lines.Where(l => l.Shelf is not null && l.MaterialId == material).SelectMany(static l => l.Bags)));
        }

        foreach (var bag in from)
        {
            grams -= bags[bag].Take(grams, day, bag.BestBefore);
        }

        if (grams > FirstExpired.Dust)
        {
            shortOf[material] = shortOf.GetValueOrDefault(material) + grams;
            runsOut.TryAdd(material, day);
        }
    }

    /// <summary>What is left of a bag or batch on the way.</summary>
    private sealed class Rest
    {
        private double beforeDate;

        public double Left { get; set; }

        public double Used { get; private set; }

        public DateOnly? EmptyOn { get; private set; }

        public double Take(double wanted, DateOnly day, DateOnly? date)
        {
            var take = Math.Min(wanted, Left);
            if (take <= 0)
            {
                return 0;
            }

            Left -= take;
            Used += take;
            beforeDate += date is { } d && day <= d ? take : 0;
            EmptyOn = Left <= FirstExpired.Dust ? day : null;
            return take;
        }

        /// <summary>g left when its date was over.</summary>
        public double LeftAtDate() => Math.Max(0, Left + Used - beforeDate);
    }
}
