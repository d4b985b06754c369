using System.Text;
using Ashery.Cards.Drawing;

namespace Ashery.Cards.Fonts;

/// <summary>The shipped faces: files, widths, and which signs a card can print.</summary>
internal static class Typeface
{
    /// <summary>Drawn where a sign cannot be: U+25A1.</summary>
    public const char Missing = '□';

    private static readonly Lazy<FontFace> TextFace = new(static () => new(File(Face.Text)));
    private static readonly Lazy<FontFace> BoldFace = new(static () => new(File(Face.Bold)));
    private static readonly Lazy<FontFace> HeadFace = new(static () => new(File(Face.Head)));

    public static string FileName(Face face) => face switch
    {
        Face.Bold => "DejaVuSansCondensed-Bold.ttf",
        Face.Head => "DejaVuSerifCondensed-Bold.ttf",
        _ => "DejaVuSansCondensed.ttf",
    };

    public static byte[] File(Face face)
    {
        using var stream = typeof(Typeface).Assembly.GetManifestResourceStream(FileName(face))
            ?? throw new InvalidOperationException($"The font {FileName(face)} is not part of the assembly.");
        var data = new byte[stream.Length];
        stream.ReadExactly(data);
        return data;
    }

    public static FontFace Of(Face face) => face switch
    {
        Face.Bold => BoldFace.Value,
        Face.Head => HeadFace.Value,
        _ => TextFace.Value,
    };

    /// <summary>Width of a line, in the unit of <paramref name="size"/>.</summary>
    public static double Width(string text, double size, Face face)
    {
        var font = Of(face);
        var ems = 0.0;
        foreach (var sign in text.EnumerateRunes())
        {
            ems += font.Width(sign);
        }

        return ems * size;
    }

    /// <summary>The text with □ for every sign that the face lacks or that must not be drawn without shaping.</summary>
    public static string Printable(string text, Face face)
    {
        var font = Of(face);
        var plain = Safe.Plain(text);
        var printable = new StringBuilder(plain.Length);
        foreach (var sign in plain.EnumerateRunes())
        {
            printable.Append(font.Has(sign) && !NeedsShaping(sign.Value) ? sign.ToString() : Missing.ToString());
        }

        return printable.ToString();
    }

    /// <summary>
    /// Blocks whose letters join, reorder or run from right to left: Hebrew to Arabic Extended, the Indic scripts to Tibetan and
    /// Myanmar, Khmer, Mongolian, and the Hebrew and Arabic presentation forms. Drawn one sign after another they would be wrong.
    /// </summary>
    private static bool NeedsShaping(int sign) => sign
        is (>= 0x0590 and <= 0x109F) or (>= 0x1780 and <= 0x18AF) or (>= 0xFB1D and <= 0xFDFF) or (>= 0xFE70 and <= 0xFEFC);
}
