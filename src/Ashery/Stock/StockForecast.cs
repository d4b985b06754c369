using Ashery.Gardens;
using Ashery.Journal;
using Ashery.Planning;

namespace Ashery.Stock;

/// <summary>
/// When each bag and batch is used up if the year is given as planned. What is mixed goes first, then the bags, first expired first. Nothing is
/// replaced by another feed here: the point is to see what must be bought.
/// </summary>
public sealed record StockForecast
{
    public required DateOnly From { get; init; }

    public required DateOnly To { get; init; }

    /// <summary>In the order of the ledger.</summary>
    public required IReadOnlyList<LineForecast> Lines { get; init; }

    /// <summary>Batches with something left, first to be used first.</summary>
    public required IReadOnlyList<BatchForecast> Batches { get; init; }

    /// <summary>What to buy for what the plan still takes beyond bags and batches.</summary>
    public required IReadOnlyList<ShoppingLine> Shopping { get; init; }

    /// <summary>What all there is to buy costs; null when a price is unknown.</summary>
    public double? ShoppingCost => Shopping.Any(static s => s.Cost is null) ? null : Shopping.Sum(static s => s.Cost!.Value);

    /// <summary>Goes through the planned feeds from today on.</summary>
    /// <param name="garden">The garden.</param>
    /// <param name="ledger">Its book.</param>
    /// <param name="entries">Entries that stand: feeds given, skipped and moved answer the plan.</param>
    /// <param name="planned">Feeds planned as if every bag were full (<see cref="Full"/>), earlier ones too where they may have been moved.</param>
    /// <param name="today">First day.</param>
    /// <param name="to">Last day the plan covers.</param>
    public static StockForecast Of(Garden garden, StockLedger ledger, IReadOnlyList<Entry> entries, IReadOnlyList<PlannedFeed> planned, DateOnly today, DateOnly to)
    {
        var walk = new ForecastWalk(garden, ledger, to);
        foreach (var (day, feedId, grams) in Needs.Of(garden, planned, entries, today))
        {
            walk.Give(day, feedId, grams);
        }

        return new()
        {
            From = today,
            To = to,
            Lines = walk.Lines(),
            Batches = walk.Batches(),
            Shopping = StockShopping.Of(ledger, walk),
        };
    }

    /// <summary>The garden as if every bag held as much as wanted: a plan of it replaces no feed by another.</summary>
    public static Garden Full(Garden garden) => garden with { Shelf = [.. garden.Shelf.Select(static b => b with { Stock = null })] };

    public LineForecast? Line(string id) => Lines.FirstOrDefault(l => l.LineId == id);
}

/// <summary>How far a line of the shelf reaches.</summary>
/// <param name="LineId">Which.</param>
/// <param name="UsedGrams">g the plan takes from its bags.</param>
/// <param name="RunsOut">First day on which no bag of this material holds what is needed; null when it lasts.</param>
/// <param name="Bags">Its bags in the order of the ledger.</param>
public sealed record LineForecast(string LineId, double UsedGrams, DateOnly? RunsOut, IReadOnlyList<BagForecast> Bags);

/// <summary>How far a bag reaches.</summary>
/// <param name="Bag">The bag.</param>
/// <param name="UsedGrams">g the plan takes from it.</param>
/// <param name="EmptyOn">Day it is used up; null when some is left at the end.</param>
/// <param name="LeftAtBestBefore">g still in it on its best-before; null when it has none within the plan.</param>
public sealed record BagForecast(StockBag Bag, double UsedGrams, DateOnly? EmptyOn, double? LeftAtBestBefore);

/// <summary>How far a batch reaches.</summary>
/// <param name="Batch">The batch.</param>
/// <param name="UsedGrams">g the plan takes from it.</param>
/// <param name="EmptyOn">Day it is used up; null when some is left at the end or at its use-by.</param>
/// <param name="LeftAtUseBy">g still in it on its use-by; null when it has none within the plan.</param>
public sealed record BatchForecast(Batch Batch, double UsedGrams, DateOnly? EmptyOn, double? LeftAtUseBy);
