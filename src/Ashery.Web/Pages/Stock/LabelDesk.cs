using Ashery.Cards;
using Ashery.Gardens;
using Ashery.Stock;
using Ashery.Web.Gardens;

namespace Ashery.Web.Pages.Stock;

/// <summary>The label of a batch, for its page and for files.</summary>
internal static class LabelDesk
{
    /// <summary>Null when there is no such batch, or nobody knows a material of it any more.</summary>
    /// <param name="stock">The book.</param>
    /// <param name="garden">The garden.</param>
    /// <param name="key">Lot number or key of the batch.</param>
    /// <param name="paper">Name of the paper; empty for the usual.</param>
    /// <param name="address">Address the application was asked at, which the code on the label opens.</param>
    public static CardDocument? Describe(StockDesk stock, Garden garden, string key, string paper, string address) =>
        stock.Batch(key) is { } batch && BatchReport.Of(garden, batch.FeedId, batch.Weighings).Value is { } report
            ? BatchLabel.Describe(new()
            {
                Batch = batch,
                Report = report,
                Address = $"{address.TrimEnd('/')}/batches/{stock.Key(batch)}",
                Settings = garden.Settings,
                Paper = Paper.Find(paper) ?? Paper.Label,
            })
            : null;
}
