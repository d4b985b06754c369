using Ashery.Cards.Drawing;
using Ashery.Solutions.Foliar;

namespace Ashery.Cards.Pictures;

/// <summary>
/// A strip for each figure of a spray that has a limit, from nothing to the limit and beyond: a full bar with a diamond within it, a hatched one
/// with a cross past it. The upright is the limit of each.
/// </summary>
public static class SprayStrips
{
    private const double Wide = 360;
    private const double Left = 12;
    private const double Right = Wide - 12;
    private const double RowHigh = 44;

    // A bar that would be longer ends here; its figure says how far it goes.
    private const double MostParts = 1.6;

    /// <summary>Findings that can be drawn: a value and a limit of one sign on a scale from nothing, and what is not for leaves at all.</summary>
    public static IReadOnlyList<SprayFinding> Shown(SprayReport report) =>
        [.. report.Findings.Where(static f => f is { Limit: null, Level: SprayLevel.Over } || (f.Limit is { } limit && limit != 0 && f.Value / limit >= 0 && !f.What.StartsWith("pH", StringComparison.Ordinal)))];

    /// <summary>As SVG; empty when nothing has a limit.</summary>
    public static string Svg(SprayReport report, SvgFor use = SvgFor.Page, string id = "spray") => Shown(report).Count == 0 ? "" : SvgWriter.Write(Draw(report, id), use);

    public static Picture Draw(SprayReport report, string id = "spray")
    {
        var shown = Shown(report);
        const double Top = 26;
        var limit = X(1);
        var bottom = Top + (shown.Count * RowHigh);
        var marks = new List<Mark>
        {
            new Shape([new(limit, Top - 4), new(Right, Top - 4), new(Right, bottom), new(limit, bottom)], Tone.EmberWash),
            new Words(new(limit - 5, Top - 9), "within the limit", 12, Tone.Soft, Anchor.End),
            new Words(new(limit + 5, Top - 9), "past it", 12, Tone.Soft),
        };
        var y = Top;
        foreach (var finding in shown)
        {
            Row(marks, finding, y);
            y += RowHigh;
        }

        marks.Add(new Strokes([(new(limit, Top - 20), new(limit, bottom))], Tone.Edge, 1.5));
        return new(id, Wide, bottom + 8, "The spray against printed limits", string.Join(' ', report.Findings.Select(Said)), marks);
    }

    private static void Row(List<Mark> marks, SprayFinding finding, double y)
    {
        var part = finding.Limit is { } limit ? finding.Value / limit : MostParts;
        var over = part > 1 + 1e-9;
        var end = X(part);
        var (top, low) = (y + 21, y + 33);
        Spot[] bar = [new(Left, top), new(end, top), new(end, low), new(Left, low)];
        var middle = (top + low) / 2;
        var inner = new List<Mark> { new Shape(bar, over ? Tone.Sheet : Tone.Leaf, over ? Tone.Ember : Tone.None, 1.25) };
        if (over)
        {
            inner.Add(new Strokes(Hatch.Inside(bar, 6, 1), Tone.Ember, 1));
            inner.Add(new Strokes([(new(end - 6, middle - 6), new(end + 6, middle + 6)), (new(end - 6, middle + 6), new(end + 6, middle - 6))], Tone.Ember, 2.5));
        }
        else
        {
            inner.Add(new Shape([new(end, middle - 8), new(end + 8, middle), new(end, middle + 8), new(end - 8, middle)], Tone.Leaf, Tone.Sheet, 1));
        }

        marks.Add(new Group(Said(finding), inner));
        var figure = finding.Limit is { } most ? $"{Number(finding.Value)} of {Number(most)} {(finding.Unit.StartsWith('%') ? "%" : finding.Unit)}" : "not on leaves";
        marks.Add(new Words(new(Left, y + 15), TextWidth.Fit(Safe.Plain(finding.What), 180, 13), 13, Tone.Ink, Halo: true));
        marks.Add(new Words(new(Right, y + 15), TextWidth.Fit(figure, 150, 12, Face.Bold), 12, Tone.Ink, Anchor.End, Face.Bold, Halo: true));
    }

    private static double X(double part) => Left + (Math.Clamp(part, 0, MostParts) / MostParts * (Right - Left - 10));

    private static string Number(double value) => Math.Abs(value) >= 1000 ? Figures.Short(Math.Round(value / 10) * 10, 0) : Figures.Short(value, Math.Abs(value) < 10 ? 2 : 0);

    private static string Said(SprayFinding finding) =>
        $"{Safe.Plain(finding.What)}: {Number(finding.Value)}{(finding.Limit is { } limit ? $" against {Number(limit)}" : ", no printed limit")} {finding.Unit}".TrimEnd()
        + (finding.Level switch { SprayLevel.Fine => ", within it.", SprayLevel.Mind => ", to mind.", _ => ", past it." });
}
