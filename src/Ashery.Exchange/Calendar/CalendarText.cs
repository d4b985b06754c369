using System.Globalization;
using System.Text;
using Ashery.Pots;

namespace Ashery.Exchange.Calendar;

/// <summary>Words for calendar files.</summary>
internal static class CalendarText
{
    /// <summary>What one pot gets, and of what strength.</summary>
    public static string Amount(Dose dose) => dose switch
    {
        { Predilution: { } p } => string.Create(CultureInfo.InvariantCulture, $"{p.MillilitresPerPot:0.#} mL of {p.Grams:0.###} g in {p.WaterMillilitres:0} mL"),
        { Method: DoseMethod.Can, Can: { } c } => string.Create(CultureInfo.InvariantCulture, $"{c.GramsPer10Litres:0.##} g in 10 L, {c.LitresPerPot:0.##} L a pot{(c.Waterings > 1 ? $", {c.Waterings} waterings" : "")}"),
        { Method: DoseMethod.Spray, Spray: { } s } => string.Create(CultureInfo.InvariantCulture, $"{s.GramsPerLitre:0.##} g in a litre, {s.MillilitresPerPot:0} mL a pot"),
        { Scoops: { } n } => string.Create(CultureInfo.InvariantCulture, $"{n:0.#} scoops ({dose.Grams:0.##} g)"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{dose.Grams:0.###} g"),
    };

    /// <summary>
    /// Control characters other than line feeds have no place in a text value (RFC 5545, 3.3.11); halves of surrogate pairs become U+FFFD.
    /// </summary>
    public static string Plain(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var rune in text.Replace("\r\n", "\n", StringComparison.Ordinal).EnumerateRunes())
        {
            if (rune.Value == '\n' || !(Rune.IsControl(rune) || rune.Value is 0x2028 or 0x2029))
            {
                plain.Append(rune.ToString());
            }
        }

        return plain.ToString();
    }

    /// <summary>On one line.</summary>
    public static string Line(string text) => Plain(text).Replace('\n', ' ');
}
