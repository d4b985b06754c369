using Ashery.Cards.Drawing;
using PdfSharp.Fonts;

namespace Ashery.Cards.Fonts;

/// <summary>Gives PDFsharp the shipped fonts, and only those: a machine's own fonts never change a card.</summary>
internal sealed class ShippedFonts : IFontResolver
{
    private static readonly ShippedFonts Instance = new();

    private ShippedFonts()
    {
    }

    public static void Register()
    {
        if (!ReferenceEquals(GlobalFontSettings.FontResolver, Instance))
        {
            GlobalFontSettings.FontResolver = Instance;
        }
    }

    /// <summary>Family names are our own face names.</summary>
    public FontResolverInfo? ResolveTypeface(string familyName, bool bold, bool italic) => new(familyName);

    public byte[]? GetFont(string faceName) => Typeface.File(Enum.Parse<Face>(faceName));
}
