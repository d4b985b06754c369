namespace Ashery.Quantities;

/// <summary>
/// Units a grower may type. US customary units by their legal definitions (1 lb = 453.59237 g exactly, 1 US gallon = 231 cubic inches =
/// 3.785411784 L exactly; from memory of NIST Handbook 44, appendix C). A teaspoon is the 5 mL measuring spoon, a tablespoon 15 mL, a cup 240 mL,
/// as on nutrition labels; a US customary teaspoon of 4.93 mL is 1.4 % less, within what a scoop can do.
/// </summary>
public static class Units
{
    public const double GramsPerOunce = 28.349523125;

    public const double GramsPerPound = 453.59237;

    public const double LitresPerUsGallon = 3.785411784;

    public const double LitresPerUsQuart = LitresPerUsGallon / 4;

    public const double LitresPerUsPint = LitresPerUsGallon / 8;

    public const double LitresPerUsFluidOunce = LitresPerUsGallon / 128;

    public const double LitresPerTeaspoon = 0.005;

    public const double LitresPerTablespoon = 0.015;

    public const double LitresPerCup = 0.240;

    /// <summary>Units of mass, for messages.</summary>
    public const string MassNames = "mg, g, kg, oz or lb";

    /// <summary>Units of volume, for messages.</summary>
    public const string VolumeNames = "mL, L, tsp, tbsp, cup, fl oz, pint, quart or gal";

    /// <summary>Grams in a unit of mass; null when it is none.</summary>
    public static double? Grams(string unit) => unit.ToLowerInvariant() switch
    {
        "mg" or "milligram" or "milligrams" => 0.001,
        "g" or "gr" or "gram" or "grams" or "gramme" or "grammes" => 1,
        "kg" or "kilo" or "kilos" or "kilogram" or "kilograms" => 1000,
        "oz" or "ounce" or "ounces" => GramsPerOunce,
        "lb" or "lbs" or "pound" or "pounds" => GramsPerPound,
        _ => null,
    };

    /// <summary>Litres in a unit of volume; null when it is none.</summary>
    public static double? Litres(string unit) => unit.ToLowerInvariant() switch
    {
        "ml" or "cc" or "millilitre" or "millilitres" or "milliliter" or "milliliters" => 0.001,
        "cl" => 0.01,
        "dl" => 0.1,
        "l" or "litre" or "litres" or "liter" or "liters" => 1,
        "tsp" or "teaspoon" or "teaspoons" => LitresPerTeaspoon,
        "tbsp" or "tablespoon" or "tablespoons" => LitresPerTablespoon,
        "cup" or "cups" => LitresPerCup,
        "floz" or "fl oz" or "fl. oz" or "fluid ounce" or "fluid ounces" => LitresPerUsFluidOunce,
        "pt" or "pint" or "pints" => LitresPerUsPint,
        "qt" or "quart" or "quarts" => LitresPerUsQuart,
        "gal" or "gallon" or "gallons" => LitresPerUsGallon,
        _ => null,
    };
}
