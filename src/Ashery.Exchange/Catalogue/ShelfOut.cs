using Ashery.Gardens;

namespace Ashery.Exchange.Catalogue;

/// <summary>From a garden to the JSON of its shelf.</summary>
public static class ShelfOut
{
    public static ShelfJson Of(Garden garden) => new(
        garden.Name,
        garden.Settings.Currency,
        [.. garden.Shelf.Select(static bag => new ShelfBagJson(
            bag.Id,
            bag.Material.Id,
            bag.Material.Name,
            MaterialsOut.Percent(bag.Material.Label),
            bag.Stock?.Grams,
            bag.Price,
            bag.Size?.Grams,
            bag.PricePerKg))],
        [.. garden.Scoops.Select(static scoop => new ShelfScoopJson(
            scoop.Name,
            scoop.Volume.Millilitres,
            scoop.Calibrations.ToDictionary(static c => c.Key, static c => new RangeJson(c.Value.Min, c.Value.Typical, c.Value.Max))))]);
}
