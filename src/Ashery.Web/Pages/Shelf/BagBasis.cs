using Ashery.Materials;

namespace Ashery.Web.Pages.Shelf;

/// <summary>Finds the catalogue's material behind a bag.</summary>
internal static class BagBasis
{
    /// <summary>By its id, a number at its end set aside; null for a bag of nothing the catalogue holds.</summary>
    public static Material? Of(Material material)
    {
        if (MaterialCatalogue.Default.Find(material.Id) is { } same)
        {
            return same;
        }

        var cut = material.Id.LastIndexOf('-');
        return cut > 0 && material.Id[(cut + 1)..].All(char.IsAsciiDigit) && material.CompatibilityGroup != OwnBag.CompoundGroup
            ? MaterialCatalogue.Default.Find(material.Id[..cut])
            : null;
    }
}
