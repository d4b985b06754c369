using System.Globalization;

namespace Ashery.Quantities;

/// <summary>Writes amounts with as many digits as a grower can use, in metric or US units.</summary>
public static class QuantityText
{
    /// <summary>A mass: mg below a tenth of a gram, g, kg from 1000 g; or oz and lb.</summary>
    public static string Of(Mass mass, bool usUnits = false, int digits = 3)
    {
        var g = mass.Grams;
        if (usUnits)
        {
            return Math.Abs(g) < Units.GramsPerPound ? $"{Number(g / Units.GramsPerOunce, digits)} oz" : $"{Number(g / Units.GramsPerPound, digits)} lb";
        }

        return Math.Abs(g) switch
        {
            0 => "0 g",
            < 0.1 => $"{Number(g * 1000, digits)} mg",
            < 1000 => $"{Number(g, digits)} g",
            _ => $"{Number(g / 1000, digits)} kg",
        };
    }

    /// <summary>A volume: mL, L from one litre; or spoons, fluid ounces and gallons.</summary>
    public static string Of(Volume volume, bool usUnits = false, int digits = 3)
    {
        var l = volume.Litres;
        if (usUnits)
        {
            return Math.Abs(l) switch
            {
                < Units.LitresPerTablespoon => $"{Number(l / Units.LitresPerTeaspoon, digits)} tsp",
                < Units.LitresPerUsQuart => $"{Number(l / Units.LitresPerUsFluidOunce, digits)} fl oz",
                _ => $"{Number(l / Units.LitresPerUsGallon, digits)} gal",
            };
        }

        return Math.Abs(l) < 1 ? $"{Number(l * 1000, digits)} mL" : $"{Number(l, digits)} L";
    }

    /// <summary>A mass fraction as percent by weight.</summary>
    public static string Percent(double fraction, int digits = 3) => $"{Number(fraction * 100, digits)} %";

    /// <summary>A number to so many significant digits, plain, no exponent, no trailing zeros; whole numbers keep all theirs.</summary>
    public static string Number(double value, int digits = 3)
    {
        if (!double.IsFinite(value))
        {
            return "?";
        }

        if (value == 0)
        {
            return "0";
        }

        var decimals = digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value)));
        return Math.Round(value, Math.Clamp(decimals, 0, 12), MidpointRounding.AwayFromZero).ToString("0.############", CultureInfo.InvariantCulture);
    }
}
