using Ashery.Materials;
using Ashery.Planning;

namespace Ashery.Stock;

/// <summary>What to buy for the plan beyond what bags and batches hold, in bags of the size last bought.</summary>
internal static class StockShopping
{
    public static IReadOnlyList<ShoppingLine> Of(StockLedger ledger, ForecastWalk walk)
    {
        List<ShoppingLine> lines = [];
        foreach (var (id, needed) in walk.Needed.OrderBy(static n => n.Key, StringComparer.Ordinal))
        {
            var shortOf = walk.ShortOf.GetValueOrDefault(id);
            var own = ledger.Lines.Where(l => l.Shelf is not null && l.MaterialId == id).ToList();
            var (size, price) = Size(own);
            int? whole = size is { } g ? (int)Math.Ceiling((shortOf / g) - 1e-9) : null;
            double? cost = shortOf == 0 ? 0 : whole is { } n && price is { } p ? n * p : null;
            lines.Add(new(
                id, own.FirstOrDefault()?.Name ?? MaterialCatalogue.Default.Find(id)?.Name ?? id, needed,
                ledger.Left(id) ?? double.PositiveInfinity, whole is { } w ? w * size!.Value : shortOf, cost)
            {
                Bags = whole,
                RunsOut = walk.RunsOut.TryGetValue(id, out var day) ? day : null,
            });
        }

        return [.. lines.OrderBy(static l => l.RunsOut ?? DateOnly.MaxValue)];
    }

    /// <summary>Size and price of the bag to buy: the last one bought, with a price rather than without, else as the shelf has it.</summary>
    private static (double? Size, double? Price) Size(List<StockLine> lines)
    {
        var last = lines.SelectMany(static l => l.Bags).Where(static b => b.Bought is not null && b.Opening > 0)
            .OrderByDescending(static b => b.PricePerGram is not null).ThenByDescending(static b => b.BoughtOn).FirstOrDefault();
        if (last is not null)
        {
            return (last.Opening, last.PricePerGram * last.Opening);
        }

        var shelf = lines.Select(static l => l.Shelf!).Where(static b => b.Size is { Grams: > 0 }).OrderByDescending(static b => b.Price is not null).FirstOrDefault();
        return (shelf?.Size?.Grams, shelf?.Price);
    }
}
