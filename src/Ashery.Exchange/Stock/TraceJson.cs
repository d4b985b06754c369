using Ashery.Exchange.Json;
using Ashery.Stock;

namespace Ashery.Exchange.Stock;

/// <summary>The answer of <c>ashery batch --trace LOT --json</c>: back to the bags and the makers' lots.</summary>
public sealed record TraceJson
{
    /// <summary>What was asked for.</summary>
    public required string Lot { get; init; }

    /// <summary>Batches with this number: one, unless two were made at the same moment.</summary>
    public required IReadOnlyList<StockBatchJson> Batches { get; init; }

    /// <summary>Bags they came from.</summary>
    public required IReadOnlyList<TracedBagJson> Bags { get; init; }

    /// <summary>The JSON text.</summary>
    public static string Write(TraceJson value) => AsheryJson.Write(value, StockJsonContext.Shared.TraceJson);

    /// <summary>The shape of the traces of a lot.</summary>
    public static TraceJson Of(string lot, IReadOnlyList<Trace> traces) => new()
    {
        Lot = lot,
        Batches = [.. traces.SelectMany(static t => t.Batches).Select(static b => StockBatchJson.Of(b))],
        Bags = [.. traces.SelectMany(static t => t.Bags).Select(static b => new TracedBagJson(
            b.Line.Id, b.Line.Name, b.Bag.Bought, b.Bag.BoughtOn, b.Bag.Lot, b.Bag.BestBefore, b.Grams, b.Assumed))],
    };
}

/// <summary>A bag at the end of a trace.</summary>
/// <param name="Bag">Line of the shelf.</param>
/// <param name="Name">As it is called.</param>
/// <param name="Bought">Entry by which it was bought; null for what stood there before the book.</param>
/// <param name="BoughtOn">Day it was bought.</param>
/// <param name="Lot">The maker's lot.</param>
/// <param name="BestBefore">As printed.</param>
/// <param name="Grams">g of it that went in.</param>
/// <param name="Assumed">True when nobody named the bag and first-expired-first-out chose it.</param>
public sealed record TracedBagJson(string Bag, string Name, Guid? Bought, DateOnly? BoughtOn, string? Lot, DateOnly? BestBefore, double Grams, bool Assumed);

/// <summary>The answer of <c>ashery batch --recall LOT --json</c>: forward to batches and pots.</summary>
public sealed record RecallJson
{
    /// <summary>What was asked for: a maker's lot, or a batch's own.</summary>
    public required string Lot { get; init; }

    /// <summary>Bags with this lot and what is left in them.</summary>
    public required IReadOnlyList<RecalledBagJson> Bags { get; init; }

    /// <summary>Batches that hold some of it.</summary>
    public required IReadOnlyList<RecalledBatchJson> Batches { get; init; }

    /// <summary>Pots that got some of it, oldest first.</summary>
    public required IReadOnlyList<RecalledUseJson> Uses { get; init; }

    /// <summary>g thrown away straight from the bags.</summary>
    public required double Discarded { get; init; }

    /// <summary>The JSON text.</summary>
    public static string Write(RecallJson value) => AsheryJson.Write(value, StockJsonContext.Shared.RecallJson);

    /// <summary>The shape of a recall.</summary>
    public static RecallJson Of(string lot, Recall recall, StockLedger ledger) => new()
    {
        Lot = lot,
        Bags = [.. recall.Bags.Select(b => new RecalledBagJson(b.LineId, ledger.Line(b.LineId)!.Name, b.Bought, b.BoughtOn, b.Left))],
        Batches = [.. recall.Batches.Select(static b => new RecalledBatchJson(b.Batch.Lot, b.Batch.FeedName, b.Batch.Made, b.Grams, b.Batch.Left, b.Assumed))],
        Uses = [.. recall.Uses.Select(u => new RecalledUseJson(
            u.Use.Day, u.Use.PotId, u.Use.Pots, u.Use.FeedId, u.Use.Batch is { } id ? ledger.Batches.Find(id)?.Lot : null, u.Use.Grams, u.Grams, u.Assumed))],
        Discarded = recall.Discarded,
    };
}

/// <summary>A bag a recall starts from.</summary>
/// <param name="Bag">Line of the shelf.</param>
/// <param name="Name">As it is called.</param>
/// <param name="Bought">Entry by which it was bought.</param>
/// <param name="BoughtOn">Day it was bought.</param>
/// <param name="Left">g left in it.</param>
public sealed record RecalledBagJson(string Bag, string Name, Guid? Bought, DateOnly? BoughtOn, double? Left);

/// <summary>A batch a recall reaches.</summary>
/// <param name="Lot">Lot number.</param>
/// <param name="Name">Name of the feed.</param>
/// <param name="Made">Day it was made.</param>
/// <param name="Grams">g of what is recalled that went into it.</param>
/// <param name="Left">g of the batch still there.</param>
/// <param name="Assumed">True when nobody named the bag.</param>
public sealed record RecalledBatchJson(string Lot, string Name, DateOnly Made, double Grams, double Left, bool Assumed);

/// <summary>A feed a recall reaches.</summary>
/// <param name="Day">When.</param>
/// <param name="Pot">Which pot.</param>
/// <param name="Pots">How many equal pots.</param>
/// <param name="Feed">Key of the feed.</param>
/// <param name="Batch">Lot of the batch; null when it was mixed on the spot.</param>
/// <param name="FeedGrams">g of feed, all pots of it together.</param>
/// <param name="Grams">g of what is recalled in it.</param>
/// <param name="Assumed">True when nobody named the bag or the batch.</param>
public sealed record RecalledUseJson(DateOnly Day, string Pot, int Pots, string Feed, string? Batch, double FeedGrams, double Grams, bool Assumed);
