using System.Globalization;

namespace Ashery.Cards;

/// <summary>Numbers as a card prints them: invariant, with as many digits as the figure deserves.</summary>
internal static class Figures
{
    public static string Number(double value, int decimals) => Clean(value, decimals).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    /// <summary>At most so many decimals, without trailing zeros.</summary>
    public static string Short(double value, int decimals = 2) =>
        Clean(value, decimals).ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);

    /// <summary>A mass fraction as percent; a little is not called nothing.</summary>
    public static string Percent(double fraction, int decimals = 1)
    {
        var least = 0.5 * Math.Pow(10, -decimals);
        return fraction > 1e-9 && fraction * 100 < least
            ? $"< {Short(Math.Pow(10, -decimals), decimals)} %"
            : Short(fraction * 100, decimals) + " %";
    }

    /// <summary>A mass to weigh, in g: no digit that was weighed is dropped above 0.01 g.</summary>
    public static string Grams(double grams) => Math.Abs(grams) switch
    {
        >= 100 => Short(grams, 1) + " g",
        >= 0.1 => Short(grams, 2) + " g",
        _ => Short(grams, 4) + " g",
    };

    /// <summary>A mass to buy or to keep, in g or kg.</summary>
    public static string Stock(double grams) => Math.Abs(grams) switch
    {
        >= 1000 => Short(grams / 1000, 2) + " kg",
        >= 10 => Short(grams, 0) + " g",
        >= 0.1 => Short(grams, 1) + " g",
        _ => Short(grams, 3) + " g",
    };

    /// <summary>A grade as it is spoken: 12.8-3.8-18.1.</summary>
    public static string Grade(double n, double p2O5, double k2O, int decimals = 1) =>
        $"{Short(n * 100, decimals)}-{Short(p2O5 * 100, decimals)}-{Short(k2O * 100, decimals)}";

    /// <summary>8 March, and 8 March 2027 when the year matters.</summary>
    public static string Day(DateOnly date, bool year = false) => date.ToString(year ? "d MMMM yyyy" : "d MMMM", CultureInfo.InvariantCulture);

    private static double Clean(double value, int decimals)
    {
        var rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        return rounded == 0 ? 0 : rounded;
    }
}
