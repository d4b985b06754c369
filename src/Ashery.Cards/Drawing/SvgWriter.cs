using System.Globalization;
using System.Text;
using Ashery.Cards.Fonts;

namespace Ashery.Cards.Drawing;

/// <summary>Whether an SVG stands in a page that has <see cref="Look.Css"/> and <see cref="Look.PictureCss"/>, or alone in a file.</summary>
public enum SvgFor
{
    /// <summary>Inline in a page: no style of its own, follows the page's theme.</summary>
    Page,

    /// <summary>A file: carries its style, light and dark by the reader's system.</summary>
    File,
}

/// <summary>How text is set.</summary>
public enum SvgText
{
    /// <summary>In the reader's font, with the room it may need kept free: pictures.</summary>
    Free,

    /// <summary>Held to the width measured in the shipped font: laid-out cards.</summary>
    Measured,
}

/// <summary>Writes a picture as SVG 1.1 that is well-formed XML. Plain light colours stand in attributes, classes override them.</summary>
public static class SvgWriter
{
    public static string Write(Picture picture, SvgFor use, SvgText text = SvgText.Free)
    {
        var svg = new StringBuilder(8192);
        var id = Safe.Id(picture.Id);
        svg.Append("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"as-picture\" role=\"").Append(text == SvgText.Free ? "img" : "group").Append("\" viewBox=\"0 0 ")
            .Append(Number(picture.Width)).Append(' ').Append(Number(picture.Height)).Append('"');
        if (use == SvgFor.File)
        {
            svg.Append(" width=\"").Append(Number(picture.Width)).Append("\" height=\"").Append(Number(picture.Height)).Append('"');
        }

        svg.Append(" aria-labelledby=\"").Append(id).Append("-title ").Append(id).Append("-desc\" font-family=\"")
            .Append(Safe.Xml(Look.TextFamily)).Append("\">\n")
            .Append("<title id=\"").Append(id).Append("-title\">").Append(Safe.Xml(picture.Title)).Append("</title>\n")
            .Append("<desc id=\"").Append(id).Append("-desc\">").Append(Safe.Xml(picture.Description)).Append("</desc>\n");
        if (use == SvgFor.File)
        {
            svg.Append("<style>\n").Append(LookCss.Standalone(Look.Palette)).Append("</style>\n");
            Draw(svg, text, new Shape([new(0, 0), new(picture.Width, 0), new(picture.Width, picture.Height), new(0, picture.Height)], Tone.Sheet));
        }

        foreach (var mark in picture.Marks)
        {
            Draw(svg, text, mark);
        }

        return svg.Append("</svg>\n").ToString();
    }

    private static void Draw(StringBuilder svg, SvgText text, Mark mark)
    {
        switch (mark)
        {
            case Shape s:
                svg.Append("<path d=\"M");
                svg.AppendJoin('L', s.Corners.Select(c => $"{Number(c.X)} {Number(c.Y)}")).Append("Z\"");
                Paint(svg, s.Fill, s.Stroke, s.Width, s.Dashed);
                svg.Append("/>\n");
                break;
            case Strokes s:
                svg.Append("<path d=\"");
                foreach (var (from, to) in s.Lines)
                {
                    svg.Append('M').Append(Number(from.X)).Append(' ').Append(Number(from.Y))
                        .Append('L').Append(Number(to.X)).Append(' ').Append(Number(to.Y));
                }

                svg.Append('"');
                Paint(svg, Tone.None, s.Stroke, s.Width, s.Dashed);
                svg.Append("/>\n");
                break;
            case Disc d:
                svg.Append("<circle cx=\"").Append(Number(d.Centre.X)).Append("\" cy=\"").Append(Number(d.Centre.Y))
                    .Append("\" r=\"").Append(Number(d.Radius)).Append('"');
                Paint(svg, d.Fill, d.Stroke, d.Width, dashed: false);
                svg.Append("/>\n");
                break;
            case Words w:
                Write(svg, text, w);
                break;
            case Group g:
                svg.Append("<g><title>").Append(Safe.Xml(g.Title)).Append("</title>\n");
                foreach (var inner in g.Marks)
                {
                    Draw(svg, text, inner);
                }

                svg.Append("</g>\n");
                break;
            default:
                throw new NotSupportedException(mark.GetType().Name);
        }
    }

    private static void Write(StringBuilder svg, SvgText text, Words w)
    {
        svg.Append("<text x=\"").Append(Number(w.At.X)).Append("\" y=\"").Append(Number(w.At.Y))
            .Append("\" font-size=\"").Append(Number(w.Size)).Append('"');
        if (w.Anchor != Anchor.Start)
        {
            svg.Append(" text-anchor=\"").Append(w.Anchor == Anchor.Middle ? "middle" : "end").Append('"');
        }

        if (w.Face != Face.Text)
        {
            svg.Append(" font-weight=\"bold\"");
        }

        if (w.Face == Face.Head)
        {
            svg.Append(" font-family=\"").Append(Safe.Xml(Look.HeadFamily)).Append('"');
        }

        if (text == SvgText.Measured && w.Text.Length > 1)
        {
            svg.Append(" textLength=\"").Append(Number(Typeface.Width(w.Text, w.Size, w.Face))).Append("\" lengthAdjust=\"spacingAndGlyphs\"");
        }

        if (w.Halo)
        {
            svg.Append(" paint-order=\"stroke\" stroke-linejoin=\"round\"");
        }

        Paint(svg, w.Fill, w.Halo ? Tone.Sheet : Tone.None, 3, dashed: false);
        svg.Append('>').Append(Safe.Xml(w.Text)).Append("</text>\n");
    }

    private static void Paint(StringBuilder svg, Tone fill, Tone stroke, double width, bool dashed)
    {
        // A colour that no theme changes has no class.
        var (f, k) = (fill == Tone.None ? "" : Look.Of(fill).Name, stroke == Tone.None ? "" : Look.Of(stroke).Name);
        svg.Append(" class=\"").Append(f.Length > 0 ? "as-f-" : "").Append(f);
        svg.Append(k.Length == 0 ? "" : f.Length == 0 ? "as-s-" : " as-s-").Append(k);
        svg.Append("\" fill=\"").Append(fill == Tone.None ? "none" : Look.Of(fill).Light).Append('"');
        if (stroke != Tone.None)
        {
            svg.Append(" stroke=\"").Append(Look.Of(stroke).Light).Append("\" stroke-width=\"").Append(Number(width)).Append('"');
            if (dashed)
            {
                svg.Append(" stroke-dasharray=\"4 3\"");
            }
        }
    }

    internal static string Number(double value) => Math.Round(value, 2).ToString("0.##", CultureInfo.InvariantCulture);
}
