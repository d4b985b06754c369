using System.Globalization;

namespace Ashery.Cli.Text;

/// <summary>Figures as the texts show them: a point, no more digits than mean something, a dash for unknown.</summary>
internal static class Figures
{
    public const string Unknown = "-";

    /// <summary>Three significant digits or whole, without trailing zeros.</summary>
    public static string Short(double value)
    {
        var size = Math.Abs(value);
        var format = size switch
        {
            0 => "0",
            >= 100 => "0",
            >= 10 => "0.#",
            >= 1 => "0.##",
            >= 0.1 => "0.###",
            >= 0.001 => "0.#####",
            _ => "0.##E0",
        };
        return value.ToString(format, CultureInfo.InvariantCulture);
    }

    /// <summary>Three digits that count, of large figures too: what was worked out and not weighed.</summary>
    public static string Three(double value)
    {
        var unit = Math.Abs(value) < 1000 ? 1 : Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(value))) - 2);
        return Short(unit == 1 ? value : Math.Round(value / unit) * unit);
    }

    public static string Short(double? value) => value is { } v ? Short(v) : Unknown;

    public static string Fixed(double value, int decimals) =>
        value.ToString(decimals switch { 0 => "0", 1 => "0.0", 2 => "0.00", 3 => "0.000", _ => "0.0000" }, CultureInfo.InvariantCulture);

    public static string Fixed(double? value, int decimals) => value is { } v ? Fixed(v, decimals) : Unknown;

    /// <summary>A fraction as percent.</summary>
    public static string Percent(double fraction, int decimals = 2) => Fixed(fraction * 100, decimals) + " %";

    public static string Percent(double? fraction, int decimals = 2) => fraction is { } f ? Percent(f, decimals) : Unknown;

    public static string Whole(int value) => value.ToString(CultureInfo.InvariantCulture);

    /// <summary>A day as ISO 8601 writes it.</summary>
    public static string Date(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>A name of the code as words: <c>SlowRelease</c> is slow release.</summary>
    public static string Words(string name)
    {
        var words = string.Empty;
        foreach (var c in name)
        {
            words += char.IsUpper(c) && words.Length > 0 ? $" {char.ToLowerInvariant(c)}" : char.ToLowerInvariant(c);
        }

        return words;
    }
}
