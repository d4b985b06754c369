using Ashery.Gardens;

namespace Ashery.Cards.Wording;

/// <summary>Volumes as this grower reads them. Masses stay in grams: kitchen and pocket scales show them everywhere.</summary>
internal static class Units
{
    // 1 US gallon = 231 cubic inches, 1 US fluid ounce = 1/128 gallon (NIST Handbook 44, appendix C; from memory).
    public const double LitresPerGallon = 3.785411784;
    private const double MillilitresPerFluidOunce = 29.5735295625;

    public static string Litres(double litres, GardenSettings settings) => settings.UsUnits
        ? Digits(litres / LitresPerGallon) + " gal"
        : Digits(litres) + " L";

    public static string Millilitres(double millilitres, GardenSettings settings) => settings.UsUnits
        ? Figures.Short(millilitres / MillilitresPerFluidOunce, 2) + " fl oz"
        : Figures.Short(millilitres, millilitres < 10 ? 1 : 0) + " mL";

    /// <summary>Three figures or so, and no small pot rounded to nothing.</summary>
    private static string Digits(double volume) => Figures.Short(volume, volume switch { >= 10 => 1, >= 0.1 => 2, _ => 4 });

    /// <summary>Strength of a can: g in 10 L, or g in a gallon.</summary>
    public static string Can(double gramsPer10Litres, GardenSettings settings) => settings.UsUnits
        ? Figures.Grams(gramsPer10Litres * LitresPerGallon / 10) + " in 1 gal of water"
        : Figures.Grams(gramsPer10Litres) + " in 10 L of water";
}
