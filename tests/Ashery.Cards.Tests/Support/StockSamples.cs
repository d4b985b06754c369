using Ashery.Exchange.Journal;
using Ashery.Gardens;
using Ashery.Journal;
using Ashery.Stock;
using Ashery.Today;

namespace Ashery.Cards.Tests.Support;

/// <summary>The demo garden's book, and labels of its first batch.</summary>
internal static class StockSamples
{
    public static IReadOnlyList<Entry> Entries { get; } = DemoJournal.Create(Demo.Day);

    public static StockLedger Ledger { get; } = StockLedger.Of(Demo.Garden, Entries);

    public static StockForecast Forecast { get; } = StockOutlook.For(Demo.Garden, Ledger, Entries, Demo.Day);

    public static Batch Batch => Ledger.Batches.Batches[^1];

    /// <summary>The label, of a feed with another name where one is given.</summary>
    public static BatchLabelRequest Label(string? name = null) => new()
    {
        Batch = Batch with { FeedName = name ?? Batch.FeedName, Lot = name is null ? Batch.Lot : name[..12] },
        Report = BatchReport.Of(Demo.Garden, Batch.FeedId, Batch.Weighings).Value!,
        Address = "http://terrace.example:8080/batches/" + Batch.Lot,
        Settings = Demo.Garden.Settings,
    };
}
