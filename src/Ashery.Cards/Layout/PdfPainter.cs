using Ashery.Cards.Drawing;
using Ashery.Cards.Fonts;
using PdfSharp.Drawing;

namespace Ashery.Cards.Layout;

/// <summary>Draws marks on a PDF page in the light palette.</summary>
internal static class PdfPainter
{
    public static void Paint(XGraphics graphics, IEnumerable<Mark> marks)
    {
        foreach (var mark in marks)
        {
            Paint(graphics, mark);
        }
    }

    private static void Paint(XGraphics graphics, Mark mark)
    {
        switch (mark)
        {
            case Shape { Fill: Tone.None, Stroke: Tone.None } or Words { Text.Length: 0 }:
                break;
            case Shape s:
                graphics.DrawPolygon(Pen(s.Stroke, s.Width, s.Dashed), Fill(s.Fill), [.. s.Corners.Select(Point)], XFillMode.Alternate);
                break;
            case Strokes s:
                var pen = Pen(s.Stroke, s.Width, s.Dashed)!;
                foreach (var (from, to) in s.Lines)
                {
                    graphics.DrawLine(pen, Point(from), Point(to));
                }

                break;
            case Disc d:
                graphics.DrawEllipse(Pen(d.Stroke, d.Width, dashed: false), Fill(d.Fill), d.Centre.X - d.Radius, d.Centre.Y - d.Radius, 2 * d.Radius, 2 * d.Radius);
                break;
            case Words w:
                Write(graphics, w);
                break;
            case Group g:
                Paint(graphics, g.Marks);
                break;
            default:
                throw new NotSupportedException(mark.GetType().Name);
        }
    }

    private static void Write(XGraphics graphics, Words w)
    {
        var width = Typeface.Width(w.Text, w.Size, w.Face);
        var left = w.At.X - (w.Anchor switch { Anchor.Middle => width / 2, Anchor.End => width, _ => 0 });
        if (w.Halo)
        {
            // PDF text has no halo here: a clear patch behind does the same for legibility.
            graphics.DrawRectangle(Brush(Tone.Sheet), left - 1, w.At.Y - (w.Size * 0.78), width + 2, w.Size);
        }

        graphics.DrawString(w.Text, new XFont(w.Face.ToString(), w.Size, XFontStyleEx.Regular, new XPdfFontOptions(PdfSharp.Pdf.PdfFontEncoding.Unicode)), Brush(w.Fill), left, w.At.Y, XStringFormats.BaseLineLeft);
    }

    private static XPoint Point(Spot s) => new(s.X, s.Y);

    private static XSolidBrush Brush(Tone tone) => new(Colour(tone));

    private static XSolidBrush? Fill(Tone tone) => tone == Tone.None ? null : Brush(tone);

    private static XPen? Pen(Tone tone, double width, bool dashed) => tone == Tone.None
        ? null
        : new XPen(Colour(tone), width) { DashStyle = dashed ? XDashStyle.Dash : XDashStyle.Solid, LineJoin = XLineJoin.Round };

    private static XColor Colour(Tone tone)
    {
        if (tone is Tone.Sheet or Tone.White)
        {
            return XColors.White;
        }

        var hex = Look.Of(tone).Light;
        return XColor.FromArgb(Convert.ToInt32(hex[1..3], 16), Convert.ToInt32(hex[3..5], 16), Convert.ToInt32(hex[5..7], 16));
    }
}
