using System.Text;
using Ashery.Cards.Drawing;

namespace Ashery.Cards.Pictures.Leaves;

/// <summary>Writes smooth shapes as SVG: curves, dots, lines, groups.</summary>
internal sealed class Pen
{
    private readonly StringBuilder svg = new(4096);

    public static string N(double value) => SvgWriter.Number(value);

    /// <summary>A closed or open path filled with a colour.</summary>
    public Pen Fill(string path, string colour, double opacity = 1)
    {
        svg.Append("<path d=\"").Append(path).Append("\" fill=\"").Append(colour).Append('"');
        return Opacity(opacity);
    }

    /// <summary>A line with round ends.</summary>
    public Pen Line(string path, string colour, double width, double opacity = 1)
    {
        svg.Append("<path d=\"").Append(path).Append("\" fill=\"none\" stroke=\"").Append(colour).Append("\" stroke-width=\"").Append(N(width)).Append("\" stroke-linecap=\"round\" stroke-linejoin=\"round\"");
        return Opacity(opacity);
    }

    /// <summary>A line in a colour of the page.</summary>
    public Pen Rule(string path, Tone tone, double width)
    {
        var swatch = Look.Of(tone);
        svg.Append("<path d=\"").Append(path).Append("\" class=\"as-s-").Append(swatch.Name).Append("\" fill=\"none\" stroke=\"").Append(swatch.Light)
            .Append("\" stroke-width=\"").Append(N(width)).Append("\" stroke-linecap=\"round\" stroke-linejoin=\"round\"/>\n");
        return this;
    }

    public Pen Dot(double x, double y, double radius, string colour, double opacity = 1) => Oval(x, y, radius, radius, colour, opacity);

    public Pen Oval(double x, double y, double wide, double high, string colour, double opacity = 1, double turn = 0)
    {
        svg.Append("<ellipse cx=\"").Append(N(x)).Append("\" cy=\"").Append(N(y)).Append("\" rx=\"").Append(N(wide)).Append("\" ry=\"").Append(N(high)).Append("\" fill=\"").Append(colour).Append('"');
        if (turn != 0)
        {
            svg.Append(" transform=\"rotate(").Append(N(turn)).Append(' ').Append(N(x)).Append(' ').Append(N(y)).Append(")\"");
        }

        return Opacity(opacity);
    }

    /// <summary>What <paramref name="draw"/> draws, moved, turned and sized.</summary>
    public Pen At(double x, double y, double turn, double size, Action<Pen> draw) => At(x, y, turn, size, size, draw);

    public Pen At(double x, double y, double turn, double wide, double high, Action<Pen> draw)
    {
        svg.Append("<g transform=\"translate(").Append(N(x)).Append(' ').Append(N(y)).Append(") rotate(").Append(N(turn)).Append(") scale(").Append(N(wide)).Append(' ').Append(N(high)).Append(")\">\n");
        draw(this);
        svg.Append("</g>\n");
        return this;
    }

    public override string ToString() => svg.ToString();

    private Pen Opacity(double opacity)
    {
        if (opacity < 1)
        {
            svg.Append(" opacity=\"").Append(N(opacity)).Append('"');
        }

        svg.Append("/>\n");
        return this;
    }
}
