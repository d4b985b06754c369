using Ashery.Cards.Drawing;
using Ashery.Cards.Layout;

namespace Ashery.Cards;

/// <summary>
/// A card as one SVG: as wide as its paper and as long as it takes, in points. Every line of text is held to the width it was
/// measured at (<c>textLength</c>), so that it stays in its place whatever font the reader has.
/// </summary>
public static class CardSvg
{
    public static string Write(CardDocument card, SvgFor use = SvgFor.File)
    {
        var page = SheetLayout.Pages(card, endless: true)[0];
        var height = Math.Max(card.Paper.Height < 100 ? card.Paper.PointsHigh : 0, SheetLayout.Height(page, card.Paper));
        var picture = new Picture("card", card.Paper.PointsWide, height, card.RunningHead, card.Kind, page);
        return SvgWriter.Write(picture, use, SvgText.Measured);
    }
}
