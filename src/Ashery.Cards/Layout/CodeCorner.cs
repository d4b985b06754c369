using Ashery.Cards.Drawing;
using Ashery.Cards.Fonts;
using Ashery.Cards.Pictures;

namespace Ashery.Cards.Layout;

/// <summary>The code in the top right corner of a sheet, its address in small print under it, for who has no camera.</summary>
internal static class CodeCorner
{
    // 26 mm: half a millimetre a module of an address in a home network, which any phone reads from a hand away.
    private const double Side = 26 * Paper.PointsPerMm, OnLabels = 0.28;

    /// <summary>Draws it; says where the room beside it ends and where the room below it begins.</summary>
    public static (double Right, double Below) Write(Pen pen, string address)
    {
        var side = Math.Min(Side, pen.Width * OnLabels);
        var (left, top) = (pen.Right - side, pen.Y);
        var code = QrPicture.Draw(address);
        foreach (var mark in code.Marks)
        {
            pen.Draw(MarkMove.To(mark, left, top, side / code.Width));
        }

        var size = Math.Max(4.2, pen.Small * 0.72);
        pen.Skip(side);
        foreach (var line in LineBreaker.Break(Typeface.Printable(address, Face.Text), side, text => Typeface.Width(text, size, Face.Text)))
        {
            pen.Line(line, left, size, tone: Tone.Soft);
            pen.Skip(size * 1.2);
        }

        var below = pen.Y;
        pen.Skip(top - below);
        return (left - pen.TextSize, below);
    }
}
