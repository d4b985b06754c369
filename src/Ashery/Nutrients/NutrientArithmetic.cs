namespace Ashery.Nutrients;

/// <summary>The sums behind every dose: nutrient in a product, product for a nutrient, milligrams in a litre.</summary>
public static class NutrientArithmetic
{
    /// <summary>g of product that hold so many g of a nutrient.</summary>
    /// <param name="nutrientGrams">g of nutrient wanted.</param>
    /// <param name="fraction">Mass fraction of the nutrient in the product, above 0.</param>
    public static double GramsOfProduct(double nutrientGrams, double fraction) => nutrientGrams / fraction;

    /// <summary>mg of nutrient a litre when so many g of product go into so many litres (parts per million of a dilute solution).</summary>
    public static double MilligramsPerLitre(double productGrams, double fraction, double litres) => productGrams * 1000 * fraction / litres;

    /// <summary>g of product for so many mg of nutrient a litre.</summary>
    public static double GramsFor(double milligramsPerLitre, double fraction, double litres) => milligramsPerLitre * litres / 1000 / fraction;
}
