using Ashery.Cards.Drawing;
using Ashery.Solutions.Waters;

namespace Ashery.Cards.Pictures;

/// <summary>
/// A strip for each figure a water is judged by: plain where it is fine, hatched where it wants watching, hatched close with a wash where it
/// is trouble. The water is a diamond; a bar through it is the range of an estimate.
/// </summary>
public static class WaterStrips
{
    private const double Wide = 360;
    private const double Left = 10;
    private const double Right = Wide - 10;
    private const double RowHigh = 54;
    private const int MostRows = 8;

    /// <summary>As SVG, for a page or a file; 360 wide, scales freely.</summary>
    public static string Svg(IReadOnlyList<WaterFinding> findings, SvgFor use = SvgFor.Page, string id = "strips") => SvgWriter.Write(Draw(findings, id), use);

    /// <summary>Figures that are drawn, the worst first: a strip needs a limit.</summary>
    public static IReadOnlyList<WaterFinding> Shown(IReadOnlyList<WaterFinding> findings) => [.. findings.Where(static f => f.Watch is not null).Take(MostRows)];

    public static Picture Draw(IReadOnlyList<WaterFinding> findings, string id = "strips")
    {
        var marks = new List<Mark>();
        var shown = Shown(findings);
        for (var i = 0; i < shown.Count; i++)
        {
            Row(marks, shown[i], i * RowHigh);
        }

        return new(id, Wide, (shown.Count * RowHigh) + 4, "Figures of the water against what plants bear", string.Join(' ', shown.Select(Describe)), marks);
    }

    private static void Row(List<Mark> marks, WaterFinding f, double y)
    {
        var watch = f.Watch!.Value;
        var trouble = f.Trouble?.Value;
        var most = 1.15 * Math.Max(Math.Max(trouble ?? (1.6 * watch), 1.2 * watch), Math.Min(f.Value.Typical, 3 * (trouble ?? watch)));
        double X(double v) => Left + (Math.Clamp(v / most, 0, 1) * (Right - Left));
        var (top, low) = (y + 20, y + 34);
        var verdict = Verdict(f);
        var room = Right - Left - TextWidth.Of(verdict, 12, Face.Bold) - 10;
        marks.Add(new Words(new(Left, y + 14), TextWidth.Fit($"{f.Kind.Name} {Value(f.Value.Typical)}{(f.Kind.Unit.Length > 0 ? " " + f.Kind.Unit : "")}", room, 12), 12, Tone.Ink));
        marks.Add(new Words(new(Right, y + 14), verdict, 12, f.Level == WaterLevel.Fine ? Tone.Leaf : Tone.Ember, Anchor.End, Face.Bold));

        var inner = new List<Mark> { new Shape(Band(Left, top, Right, low), Tone.Sheet) };
        var (careFrom, careTo) = f.Kind.Below ? (Left, X(watch)) : (X(watch), trouble is { } t ? X(t) : Right);
        inner.Add(new Shape(Band(careFrom, top, careTo, low), Tone.LeafWash));
        inner.Add(new Strokes(Hatch.Inside(Band(careFrom, top, careTo, low), 9, 1), Tone.Edge, 0.75));
        if (trouble is { } bad)
        {
            inner.Add(new Shape(Band(X(bad), top, Right, low), Tone.EmberWash));
            inner.Add(new Strokes(Hatch.Inside(Band(X(bad), top, Right, low), 4.5, 1), Tone.Ember, 0.75));
        }

        inner.Add(new Shape(Band(Left, top, Right, low), Tone.None, Tone.Edge, 1));
        var (x, middle) = (X(f.Value.Typical), (top + low) / 2);
        if (!f.Value.IsCertain)
        {
            inner.Add(new Strokes([(new(X(f.Value.Low), middle), new(X(f.Value.High), middle)), (new(X(f.Value.Low), top + 2), new(X(f.Value.Low), low - 2)), (new(X(f.Value.High), top + 2), new(X(f.Value.High), low - 2))], Tone.Ink, 1.5));
        }

        inner.Add(new Shape([new(x, middle - 9), new(x + 9, middle), new(x, middle + 9), new(x - 9, middle)], Tone.Ink, Tone.Sheet, 1.5));
        marks.Add(new Group(Describe(f), inner));
        Ticks(marks, X(watch), Value(watch), trouble is { } end ? (X(end), Value(end)) : null, y + 47);
    }

    private static void Ticks(List<Mark> marks, double watch, string watchText, (double X, string Text)? trouble, double y)
    {
        var first = Math.Clamp(watch, Left + (TextWidth.Of(watchText, 12) / 2), Right - (TextWidth.Of(watchText, 12) / 2));
        marks.Add(new Words(new(first, y), watchText, 12, Tone.Soft, Anchor.Middle));
        if (trouble is { } t)
        {
            var half = TextWidth.Of(t.Text, 12) / 2;
            var at = Math.Clamp(t.X, first + (TextWidth.Of(watchText, 12) / 2) + half + 6, Right - half);
            if (at - half > first + (TextWidth.Of(watchText, 12) / 2))
            {
                marks.Add(new Words(new(at, y), t.Text, 12, Tone.Soft, Anchor.Middle));
            }
        }
    }

    private static Spot[] Band(double x1, double y1, double x2, double y2) => [new(x1, y1), new(x2, y1), new(x2, y2), new(x1, y2)];

    private static string Value(double v) => Math.Abs(v) >= 100 ? Figures.Short(v, 0) : Math.Abs(v) >= 10 ? Figures.Short(v, 1) : Figures.Short(v);

    private static string Verdict(WaterFinding f) => f.Level.ToString().ToLowerInvariant() + (f.Worst > f.Level ? "?" : "");

    private static string Describe(WaterFinding f) =>
        $"{f.Kind.Name}: {Value(f.Value.Typical)} {f.Kind.Unit}, {f.Level.ToString().ToLowerInvariant()}{(f.Worst > f.Level ? $", perhaps {f.Worst.ToString().ToLowerInvariant()}" : "")}; watch {(f.Kind.Below ? "below" : "above")} {Value(f.Watch!.Value)}{(f.Trouble is { } t ? $", trouble above {Value(t.Value)}" : "")}.";
}
