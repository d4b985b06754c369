using System.Globalization;

namespace Ashery.Web.Show;

/// <summary>Masses, volumes and temperatures in the grower's units. Kept metric; only shown otherwise.</summary>
public sealed record Amounts(bool Us)
{
    // NIST Handbook 44, appendix C (from memory): exact definitions.
    private const double GramsPerOunce = 28.349523125;
    private const double GramsPerPound = 453.59237;
    private const double LitresPerGallon = 3.785411784;
    private const double LitresPerFluidOunce = 0.0295735295625;

    public string Mass(double grams)
    {
        if (!Us)
        {
            return grams >= 1000 ? $"{Figures.Short(grams / 1000)} kg" : $"{Figures.Short(grams)} g";
        }

        return grams switch
        {
            >= GramsPerPound => $"{Figures.Short(grams / GramsPerPound)} lb",
            >= GramsPerOunce => $"{Figures.Short(grams / GramsPerOunce)} oz ({Figures.Short(grams)} g)",
            _ => $"{Figures.Short(grams)} g",
        };
    }

    public string Mass(double? grams) => grams is { } g ? Mass(g) : "–";

    public string Volume(double litres)
    {
        if (!Us)
        {
            return litres >= 1 ? $"{Figures.Short(litres)} L" : $"{Figures.Short(litres * 1000)} mL";
        }

        return litres >= LitresPerGallon / 4 ? $"{Figures.Short(litres / LitresPerGallon)} gal" : $"{Figures.Short(litres / LitresPerFluidOunce)} fl oz";
    }

    public string Temperature(double celsius) => Us
        ? $"{Math.Round((celsius * 9 / 5) + 32).ToString(CultureInfo.InvariantCulture)} °F"
        : $"{Figures.Short(celsius)} °C";

    /// <summary>Strength of a can.</summary>
    public string Can(double gramsPer10Litres) => Us
        ? $"{Figures.Short(gramsPer10Litres / 10 * LitresPerGallon)} g in 1 gal"
        : $"{Figures.Short(gramsPer10Litres)} g in 10 L";

    public double ToCelsius(double typed) => Us ? (typed - 32) * 5 / 9 : typed;

    public double FromCelsius(double celsius) => Us ? (celsius * 9 / 5) + 32 : celsius;

    /// <summary>Unit of a pot's volume in forms.</summary>
    public string VolumeUnit => Us ? "gal" : "L";

    public double ToLitres(double typed) => Us ? typed * LitresPerGallon : typed;

    public string FromLitres(double litres) => Figures.Number(Math.Round(Us ? litres / LitresPerGallon : litres, 4));

    /// <summary>Unit of a bag's size and stock in forms.</summary>
    public string BagUnit => Us ? "lb" : "kg";

    public double ToGrams(double typed) => Us ? typed * GramsPerPound : typed * 1000;

    public string FromGrams(double grams) => Figures.Number(Math.Round(grams / (Us ? GramsPerPound : 1000), 5));
}
