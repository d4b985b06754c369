using Ashery.Gardens;

namespace Ashery.Stock;

/// <summary>What feeding cost between two days: what was really given, at the prices of the bags it came from.</summary>
public sealed record StockCosts
{
    public required DateOnly From { get; init; }

    public required DateOnly To { get; init; }

    /// <summary>Pots that got something, dearest first.</summary>
    public required IReadOnlyList<PotCost> Pots { get; init; }

    /// <summary>Every batch of the garden, newest first: what it cost to make.</summary>
    public required IReadOnlyList<BatchCost> Batches { get; init; }

    /// <summary>Feed given.</summary>
    public required Cost Given { get; init; }

    /// <summary>Bags bought.</summary>
    public required Cost Bought { get; init; }

    /// <summary>Thrown away, from bags and from batches.</summary>
    public required Cost Discarded { get; init; }

    /// <summary>Missing when the rest was weighed; negative where more was found.</summary>
    public required Cost Missing { get; init; }

    /// <summary>What lies in bags now, whatever the days asked for.</summary>
    public required Cost InBags { get; init; }

    /// <summary>What lies in batches now.</summary>
    public required Cost InBatches { get; init; }

    public static StockCosts Of(Garden garden, StockLedger ledger, DateOnly from, DateOnly to) => new CostWalk(garden, ledger, from, to).Run();
}

/// <summary>What the feed of a pot cost.</summary>
/// <param name="PotId">Which pot.</param>
/// <param name="Name">Its name; its id where the garden no longer has it.</param>
/// <param name="Pots">How many equal pots.</param>
/// <param name="Grams">g of feed, all of them together.</param>
/// <param name="Cost">For all of them together.</param>
public sealed record PotCost(string PotId, string Name, int Pots, double Grams, Cost Cost)
{
    /// <summary>For one of them.</summary>
    public Cost Each => Cost * (1.0 / Pots);
}

/// <summary>What a batch cost.</summary>
/// <param name="Batch">The batch.</param>
/// <param name="Cost">Of everything weighed into it.</param>
public sealed record BatchCost(Batch Batch, Cost Cost)
{
    /// <summary>In the garden's currency for a kg; null when a price is missing.</summary>
    public double? PerKg => Cost.IsWhole && Batch.Grams > 0 ? Cost.Known / Batch.Grams * 1000 : null;
}
