using System.Text.Json;
using System.Text.Json.Serialization;
using Ashery.Exchange.Calendar;
using Ashery.Exchange.Json;
using Ashery.Gardens;
using Ashery.Stock;

namespace Ashery.Exchange.Stock;

/// <summary>The answer of <c>ashery stock --json</c>.</summary>
/// <remarks>Grams throughout; money in the garden's currency, null when a price is unknown; days as YYYY-MM-DD.</remarks>
public sealed record StockJson
{
    /// <summary>Name of the garden.</summary>
    public required string Garden { get; init; }

    /// <summary>ISO 4217 code.</summary>
    public required string Currency { get; init; }

    /// <summary>The day it is told for.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>Lines of the shelf.</summary>
    public required IReadOnlyList<StockLineJson> Lines { get; init; }

    /// <summary>Batches with something left, first to be used first.</summary>
    public required IReadOnlyList<StockBatchJson> Batches { get; init; }

    /// <summary>What the planned year takes beyond bags and batches.</summary>
    public required IReadOnlyList<ShoppingJson> Shopping { get; init; }

    /// <summary>What all there is to buy costs; null when a price is unknown.</summary>
    public required double? ShoppingCost { get; init; }

    /// <summary>What feeding cost between two days.</summary>
    public required StockCostsJson Costs { get; init; }

    /// <summary>Where entries contradict each other.</summary>
    public required IReadOnlyList<ProblemJson> Notes { get; init; }

    /// <summary>The JSON text.</summary>
    public static string Write(StockJson value) => AsheryJson.Write(value, StockJsonContext.Shared.StockJson);

    /// <summary>The shape of a book with its forecast and costs.</summary>
    public static StockJson Of(Garden garden, StockLedger ledger, StockForecast forecast, StockCosts costs) => new()
    {
        Garden = garden.Name,
        Currency = garden.Settings.Currency,
        Today = forecast.From,
        Lines = [.. ledger.Lines.Select(l => StockLineJson.Of(l, forecast.Line(l.Id)!))],
        Batches = [.. forecast.Batches.Select(StockBatchJson.Of)],
        Shopping = [.. forecast.Shopping.Select(ShoppingJson.Of)],
        ShoppingCost = forecast.ShoppingCost,
        Costs = StockCostsJson.Of(costs),
        Notes = ProblemJson.From(ledger.Notes),
    };
}

/// <summary>A line of the shelf.</summary>
/// <param name="Id">Its key.</param>
/// <param name="Material">Key of its material; null when nobody knows.</param>
/// <param name="Name">As it is called.</param>
/// <param name="Left">g in all its bags; null for as much as wanted.</param>
/// <param name="Value">What the rest is worth, as far as prices are known.</param>
/// <param name="Used">g the planned year takes from its bags.</param>
/// <param name="RunsOut">First day on which no bag of this material holds what is needed; null when it lasts.</param>
/// <param name="Bags">First to be used first.</param>
public sealed record StockLineJson(
    string Id, string? Material, string Name, double? Left, double? Value, double Used, DateOnly? RunsOut, IReadOnlyList<StockBagJson> Bags)
{
    internal static StockLineJson Of(StockLine line, LineForecast forecast) => new(
        line.Id, line.MaterialId, line.Name, line.Left, line.Value, forecast.UsedGrams, forecast.RunsOut, [.. forecast.Bags.Select(StockBagJson.Of)]);
}

/// <summary>A bag.</summary>
/// <param name="Bought">Entry by which it was bought; null for what stood there before the book.</param>
/// <param name="BoughtOn">Day it was bought.</param>
/// <param name="Lot">The maker's lot.</param>
/// <param name="BestBefore">As printed.</param>
/// <param name="PricePerKg">Null when unknown.</param>
/// <param name="Opening">g it came with.</param>
/// <param name="InBatches">g weighed into batches.</param>
/// <param name="Given">g that went into feed given without a batch.</param>
/// <param name="Discarded">g thrown away.</param>
/// <param name="Corrected">g by which weighing set the book right; negative where some was missing.</param>
/// <param name="Left">g in it; null for as much as wanted.</param>
/// <param name="EmptyOn">Day the planned year uses it up; null when some is left.</param>
/// <param name="LeftAtBestBefore">g still in it on its best-before; null when that is not within the year.</param>
public sealed record StockBagJson(
    Guid? Bought, DateOnly? BoughtOn, string? Lot, DateOnly? BestBefore, double? PricePerKg, double Opening, double InBatches, double Given, double Discarded,
    double Corrected, double? Left, DateOnly? EmptyOn, double? LeftAtBestBefore)
{
    internal static StockBagJson Of(BagForecast f) => new(
        f.Bag.Bought, f.Bag.BoughtOn, f.Bag.Lot, f.Bag.BestBefore, f.Bag.PricePerGram * 1000, f.Bag.Opening, f.Bag.InBatches, f.Bag.Given, f.Bag.Discarded,
        f.Bag.Corrected, f.Bag.Left, f.EmptyOn, f.LeftAtBestBefore);
}

/// <summary>A batch with something left.</summary>
/// <param name="Id">Its key: what its label's code opens.</param>
/// <param name="Lot">Lot number.</param>
/// <param name="Feed">Key of the feed.</param>
/// <param name="Name">Name of the feed.</param>
/// <param name="Made">Day it was made.</param>
/// <param name="UseBy">Last day it should be used; null when it keeps.</param>
/// <param name="Grams">g made.</param>
/// <param name="Given">g given.</param>
/// <param name="Discarded">g thrown away.</param>
/// <param name="Left">g left.</param>
/// <param name="EmptyOn">Day the planned year uses it up; null when some is left.</param>
public sealed record StockBatchJson(
    Guid Id, string Lot, string Feed, string Name, DateOnly Made, DateOnly? UseBy, double Grams, double Given, double Discarded, double Left, DateOnly? EmptyOn)
{
    internal static StockBatchJson Of(BatchForecast f) => Of(f.Batch, f.EmptyOn);

    internal static StockBatchJson Of(Batch b, DateOnly? emptyOn = null) => new(
        b.Id, b.Lot, b.FeedId, b.FeedName, b.Made, b.UseBy, b.Grams, b.Given, b.Discarded, b.Left, emptyOn);
}

/// <summary>Generated descriptions of what tells of stock and batches.</summary>
[JsonSerializable(typeof(StockJson))]
[JsonSerializable(typeof(BatchJson))]
[JsonSerializable(typeof(TraceJson))]
[JsonSerializable(typeof(RecallJson))]
public sealed partial class StockJsonContext : JsonSerializerContext
{
    /// <summary>The context in the shared form.</summary>
    public static StockJsonContext Shared { get; } = new(new JsonSerializerOptions(AsheryJson.Options));
}
