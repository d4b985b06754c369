using Ashery.Gardens;
using Ashery.Journal;
using Ashery.Materials;

namespace Ashery.Stock;

/// <summary>The materials behind the weighings of a batch: the bag's own label first, then the catalogue.</summary>
internal static class BatchMaterials
{
    public static Material? Find(Garden garden, string bagId, string materialId)
    {
        Material? other = null;
        foreach (var bag in garden.Shelf)
        {
            if (bag.Material.Id == materialId)
            {
                if (bag.Id == bagId)
                {
                    return bag.Material;
                }

                other ??= bag.Material;
            }
        }

        return other ?? MaterialCatalogue.Default.Find(materialId);
    }

    public static IEnumerable<(string BagId, string MaterialId, double Grams)> Parts(IEnumerable<Weighing> weighings) =>
        weighings.Where(static w => w.Grams > 0).Select(static w => (w.BagId, w.MaterialId, w.Grams));

    /// <summary>Each material once, with the price of its line of the shelf; what is unknown is left out.</summary>
    public static IReadOnlyList<(Offer Offer, double Grams)> Offers(Garden garden, IEnumerable<(string BagId, string MaterialId, double Grams)> parts)
    {
        List<(Offer Offer, double Grams)> offers = [];
        foreach (var (bagId, materialId, grams) in parts)
        {
            if (Find(garden, bagId, materialId) is not { } material)
            {
                continue;
            }

            var at = offers.FindIndex(o => o.Offer.Material.Id == material.Id);
            if (at >= 0)
            {
                offers[at] = (offers[at].Offer, offers[at].Grams + grams);
            }
            else
            {
                offers.Add((new(material, garden.Shelf.FirstOrDefault(b => b.Id == bagId)?.PricePerKg), grams));
            }
        }

        return offers;
    }
}
