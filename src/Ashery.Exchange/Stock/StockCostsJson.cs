using Ashery.Stock;

namespace Ashery.Exchange.Stock;

/// <summary>What feeding cost between two days, at the prices of the bags it came from.</summary>
/// <param name="From">First day.</param>
/// <param name="To">Last day.</param>
/// <param name="Given">Feed given.</param>
/// <param name="Bought">Bags bought.</param>
/// <param name="Discarded">Thrown away.</param>
/// <param name="Missing">Missing when the rest was weighed; negative where more was found.</param>
/// <param name="InBags">What lies in bags now.</param>
/// <param name="InBatches">What lies in batches now.</param>
/// <param name="Pots">Pots that got something, dearest first.</param>
/// <param name="Batches">What each batch cost to make, newest first.</param>
public sealed record StockCostsJson(
    DateOnly From, DateOnly To, CostJson Given, CostJson Bought, CostJson Discarded, CostJson Missing, CostJson InBags, CostJson InBatches,
    IReadOnlyList<PotCostJson> Pots, IReadOnlyList<BatchCostJson> Batches)
{
    internal static StockCostsJson Of(StockCosts c) => new(
        c.From, c.To, CostJson.Of(c.Given), CostJson.Of(c.Bought), CostJson.Of(c.Discarded), CostJson.Of(c.Missing), CostJson.Of(c.InBags), CostJson.Of(c.InBatches),
        [.. c.Pots.Select(static p => new PotCostJson(p.PotId, p.Name, p.Pots, p.Grams, CostJson.Of(p.Cost), CostJson.Of(p.Each)))],
        [.. c.Batches.Select(static b => new BatchCostJson(b.Batch.Lot, b.Batch.FeedName, b.Batch.Grams, CostJson.Of(b.Cost), b.PerKg))]);
}

/// <summary>A sum of money that says what it lacks.</summary>
/// <param name="Known">What is known, in the garden's currency.</param>
/// <param name="UnpricedGrams">g without a price: they are not in the sum.</param>
/// <param name="Unpriced">Lines of the shelf they came from.</param>
public sealed record CostJson(double Known, double UnpricedGrams, IReadOnlyList<string> Unpriced)
{
    internal static CostJson Of(Cost c) => new(c.Known, c.UnpricedGrams, c.Unpriced);
}

/// <summary>What the feed of a pot cost.</summary>
/// <param name="Pot">Its key.</param>
/// <param name="Name">Its name.</param>
/// <param name="Pots">How many equal pots.</param>
/// <param name="Grams">g of feed, all together.</param>
/// <param name="Cost">For all of them together.</param>
/// <param name="Each">For one of them.</param>
public sealed record PotCostJson(string Pot, string Name, int Pots, double Grams, CostJson Cost, CostJson Each);

/// <summary>What a batch cost.</summary>
/// <param name="Lot">Lot number.</param>
/// <param name="Name">Name of the feed.</param>
/// <param name="Grams">g made.</param>
/// <param name="Cost">Of everything weighed into it.</param>
/// <param name="PerKg">For a kg; null when a price is missing.</param>
public sealed record BatchCostJson(string Lot, string Name, double Grams, CostJson Cost, double? PerKg);
