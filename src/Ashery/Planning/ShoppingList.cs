using Ashery.Gardens;
using Ashery.Materials;

namespace Ashery.Planning;

/// <summary>What to buy for the year: what the plan takes beyond the shelf, in whole bags where the size of a bag is known.</summary>
internal static class ShoppingList
{
    public static IReadOnlyList<ShoppingLine> Of(Garden garden, StockBook stock)
    {
        List<ShoppingLine> lines = [];
        foreach (var (id, needed) in stock.Needed.OrderBy(static n => n.Key, StringComparer.Ordinal))
        {
            var bags = garden.Shelf.Where(b => b.Material.Id == id).ToList();
            var onShelf = stock.OnShelf.GetValueOrDefault(id);
            var shortOf = Math.Max(0, needed - onShelf);
            if (shortOf < 1e-6)
            {
                shortOf = 0;
            }

            var priced = bags.Find(static b => b.Price is not null && b.Size is { Grams: > 0 }) ?? bags.Find(static b => b.Size is { Grams: > 0 });
            int? whole = priced?.Size is { Grams: > 0 } size ? (int)Math.Ceiling((shortOf / size.Grams) - 1e-9) : null;
            double? cost = shortOf == 0 ? 0 : whole is { } n && priced?.Price is { } price ? n * price : null;
            lines.Add(new(
                id,
                bags.FirstOrDefault()?.Material.Name ?? MaterialCatalogue.Default.Find(id)?.Name ?? id,
                needed,
                onShelf,
                whole is { } w ? w * priced!.Size!.Value.Grams : shortOf,
                cost)
            {
                Bags = whole,
                RunsOut = stock.RunsOut.TryGetValue(id, out var day) ? day : null,
            });
        }

        return lines;
    }
}
