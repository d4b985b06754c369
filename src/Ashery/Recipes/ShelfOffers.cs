using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Quantities;

namespace Ashery.Recipes;

/// <summary>Makes a search's offers from bags, of which two may hold the same material.</summary>
public static class ShelfOffers
{
    /// <summary>
    /// Bags of one material and label become one offer: stocks add up (unknown stays as much as wanted), and the dearer
    /// price holds, unknown when one is. Bags of one material with different labels get names of their own
    /// (<c>urea</c>, <c>urea-2</c>).
    /// </summary>
    public static IReadOnlyList<Offer> Merge(IReadOnlyList<Offer> offers)
    {
        var merged = new List<Offer>();
        foreach (var offer in offers)
        {
            var same = merged.FindIndex(m => BaseId(m, offer) && HasSameLabel(m.Material, offer.Material));
            if (same >= 0)
            {
                merged[same] = Join(merged[same], offer);
            }
            else
            {
                merged.Add(offer with { Material = Named(offer.Material, merged) });
            }
        }

        return merged;
    }

    private static bool BaseId(Offer merged, Offer offer) =>
        merged.Material.Id == offer.Material.Id || merged.Material.Id.StartsWith(offer.Material.Id + "-", StringComparison.Ordinal);

    private static Material Named(Material material, List<Offer> taken)
    {
        var id = material.Id;
        for (var next = 2; taken.Exists(t => t.Material.Id == id); next++)
        {
            id = $"{material.Id}-{Say.Number(next)}";
        }

        return id == material.Id ? material : material with { Id = id };
    }

    private static bool HasSameLabel(Material a, Material b)
    {
        foreach (var nutrient in Enum.GetValues<Nutrient>())
        {
            if (Math.Abs(a.Label[nutrient] - b.Label[nutrient]) > 1e-9)
            {
                return false;
            }
        }

        return a.Name == b.Name;
    }

    private static Offer Join(Offer a, Offer b) => a with
    {
        PricePerKg = a.PricePerKg is { } x && b.PricePerKg is { } y ? Math.Max(x, y) : null,
        Stock = a.Stock is { } s && b.Stock is { } t ? new Mass(s.Grams + t.Grams) : null,
    };
}
