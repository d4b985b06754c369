using Ashery.Gardens;
using Ashery.Quantities;

namespace Ashery.Cards.Wording;

/// <summary>
/// Masses and volumes as this grower reads them. Masses to weigh stay in grams, with ounces beside the larger ones for who wants US units: a
/// scale that reads a tenth of a gram shows grams everywhere.
/// </summary>
internal static class Amounts
{
    /// <summary>Below this a kitchen scale in ounces shows nothing of use.</summary>
    private const double LeastInOunces = 20;

    public static string Mass(double grams, GardenSettings settings) => settings.UsUnits && grams >= LeastInOunces
        ? $"{Figures.Grams(grams)} ({QuantityText.Of(new Mass(grams), usUnits: true)})"
        : Figures.Grams(grams);

    public static string Litres(double litres, GardenSettings settings) => settings.UsUnits
        ? QuantityText.Of(new Volume(litres), usUnits: true)
        : Figures.Short(litres, litres switch { >= 10 => 1, >= 0.1 => 2, _ => 4 }) + " L";

    public static string Millilitres(double millilitres, GardenSettings settings) => settings.UsUnits
        ? QuantityText.Of(Volume.FromMillilitres(millilitres), usUnits: true)
        : Figures.Short(millilitres, millilitres < 10 ? 1 : 0) + " mL";

    /// <summary>Strength of a can: g in 10 L, or g in a gallon.</summary>
    public static string Can(double gramsPer10Litres, GardenSettings settings) => settings.UsUnits
        ? Figures.Grams(Math.Round(gramsPer10Litres * Units.LitresPerUsGallon / 10, 1)) + " in 1 gal"
        : Figures.Grams(gramsPer10Litres) + " in 10 L";

    /// <summary>Strength of a spray: g in 1 L, or g in a quart.</summary>
    public static string Spray(double gramsPerLitre, GardenSettings settings) => settings.UsUnits
        ? Figures.Grams(Math.Round(gramsPerLitre * Units.LitresPerUsQuart, 2)) + " in 1 quart"
        : Figures.Grams(gramsPerLitre) + " in 1 L";
}
