using Ashery.Nutrients;

namespace Ashery.Materials;

/// <summary>Solubility tables often give the anhydrous salt; a grower weighs the hydrate, which brings water of its own.</summary>
public static class Hydrate
{
    /// <summary>
    /// g of product that saturate 1000 g of added water, from g of another form of the same salt. With f the mass of that form in a gram of
    /// product: x f / (1000 + x (1 - f)) = s / 1000. Null when the product's own water dissolves it: no limit.
    /// </summary>
    public static double? Convert(double gramsPerKgWater, double formInProduct)
    {
        var divisor = 1 - formInProduct;
        divisor = (1000 * formInProduct) - (gramsPerKgWater * divisor);
        return divisor > 0 ? 1000 * gramsPerKgWater / divisor : null;
    }

    /// <summary>Mass of one form in a gram of another, by molar mass; 1 when they are the same.</summary>
    public static double FormInProduct(string form, string product) => string.Equals(form, product, StringComparison.Ordinal)
        ? 1
        : Formula.Parse(form).Value!.MolarMass / Formula.Parse(product).Value!.MolarMass;
}
