using Ashery.Journal;

namespace Ashery.Stock;

/// <summary>
/// First expired, first out: what has the earliest date goes first; what has no date after it, the oldest before the newer. The usual rule of
/// stores that keep goods with a date (common practice, no source).
/// </summary>
public static class FirstExpired
{
    /// <summary>g below which a bag is empty: less than any scale shows, more than sums lose.</summary>
    public const double Dust = 1e-6;

    /// <summary>Bags in the order in which they are to be used up.</summary>
    public static IReadOnlyList<StockBag> Order(IEnumerable<StockBag> bags) =>
        [.. bags.OrderBy(static b => b.BestBefore ?? DateOnly.MaxValue).ThenBy(static b => b.BoughtOn ?? DateOnly.MinValue).ThenBy(static b => b.Bought)];

    /// <summary>Batches in the order in which they are to be used up.</summary>
    public static IReadOnlyList<Batch> Order(IEnumerable<Batch> batches) =>
        [.. batches.OrderBy(static b => b.UseBy ?? DateOnly.MaxValue).ThenBy(static b => b.Made).ThenBy(static b => b.Lot, StringComparer.Ordinal).ThenBy(static b => b.Id)];

    /// <summary>The bags a weighing comes from: the one it names, else those that expire first, as far as it takes.</summary>
    public static IEnumerable<StockBag> Bags(StockLedger ledger, Weighing weighing, DateOnly day)
    {
        if (weighing.Bought is { } named && ledger.Bag(weighing.BagId, named) is { } bag)
        {
            yield return bag;
            yield break;
        }

        var rest = weighing.Grams;
        foreach (var next in Order(ledger.Line(weighing.BagId)?.Bags.Where(b => b.Left is null or > Dust && !(b.BoughtOn > day)) ?? []))
        {
            yield return next;
            rest -= next.Left ?? rest;
            if (rest <= Dust)
            {
                yield break;
            }
        }
    }

    internal static int Compare(BagAccount a, BagAccount b)
    {
        var byDate = (a.BestBefore ?? DateOnly.MaxValue).CompareTo(b.BestBefore ?? DateOnly.MaxValue);
        var byAge = byDate != 0 ? byDate : (a.BoughtOn ?? DateOnly.MinValue).CompareTo(b.BoughtOn ?? DateOnly.MinValue);
        return byAge != 0 ? byAge : Nullable.Compare(a.Bought, b.Bought);
    }
}
