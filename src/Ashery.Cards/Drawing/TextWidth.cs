namespace Ashery.Cards.Drawing;

/// <summary>
/// How wide a line of text may become when the reader's font is not known: advance widths of DejaVu Sans (thousandths of
/// the size, read from the font's <c>hmtx</c> table), the widest of the faces a page asks for. Bold adds a tenth.
/// </summary>
internal static class TextWidth
{
    private static readonly short[] Ascii =
    [
        318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361, 318, 337, 636, 636, 636, 636, 636, 636, 636, 636, 636,
        636, 337, 337, 838, 838, 838, 531, 1000, 684, 686, 698, 770, 632, 575, 775, 752, 295, 295, 656, 557, 863, 748, 787, 603, 787,
        695, 635, 611, 732, 684, 989, 685, 611, 685, 390, 337, 390, 838, 500, 500, 613, 635, 550, 635, 615, 352, 635, 634, 278, 278,
        579, 278, 974, 634, 612, 635, 635, 411, 521, 392, 634, 592, 818, 592, 592, 525, 636, 337, 636, 838,
    ];

    public static double Of(string text, double size, Face face = Face.Text)
    {
        var thousandths = 0.0;
        foreach (var rune in text.EnumerateRunes())
        {
            thousandths += rune.Value switch
            {
                >= 32 and < 127 => Ascii[rune.Value - 32],
                < 32 => 0,
                < 0x2000 => 700,
                >= 0x2080 and <= 0x208E => 450, // subscript figures
                _ => 1000,
            };
        }

        return thousandths * size / 1000 * (face == Face.Text ? 1 : 1.12);
    }

    /// <summary>The text, cut with an ellipsis so that it fits.</summary>
    public static string Fit(string text, double width, double size, Face face = Face.Text)
    {
        if (Of(text, size, face) <= width)
        {
            return text;
        }

        var kept = text.EnumerateRunes().ToList();
        while (kept.Count > 0)
        {
            kept.RemoveAt(kept.Count - 1);
            var cut = string.Concat(kept).TrimEnd() + "…";
            if (Of(cut, size, face) <= width)
            {
                return cut;
            }
        }

        return "";
    }
}
