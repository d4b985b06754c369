using Ashery.Cards.Drawing;
using Ashery.Solutions.Can;

namespace Ashery.Cards.Pictures;

/// <summary>
/// What is near coming out of a can: a bar for each solid from the left to its saturation index, a line at 0. Quick solids are full bars with a
/// diamond at the end, slow ones open hatched bars with a ring: past the line the first come out, the second may.
/// </summary>
public static class NearnessBars
{
    private const double Wide = 360;
    private const double Left = 12;
    private const double Right = Wide - 40;
    private const double RowHigh = 40;
    private const double Least = -3;

    // A bar that would be longer ends here; its figure says how far it goes.
    private const double Most = 4;
    private const int MostRows = 8;

    /// <summary>Solids worth showing: near or past their limit, those that settle first.</summary>
    public static IReadOnlyList<NearSolid> Shown(CanReport report)
    {
        var solids = new List<NearSolid>();
        foreach (var mineral in report.Minerals)
        {
            solids.Add(new(mineral.Mineral.Id, mineral.Index, mineral.Mineral.Slow));
        }

        foreach (var salt in report.Salts)
        {
            solids.Add(new(salt.Name, salt.Index, Slow: false));
        }

        return [.. solids.Where(s => s.Index > Least).OrderByDescending(s => s.Index > 0 && !s.Slow).ThenByDescending(s => s.Index).ThenBy(s => s.Name, StringComparer.Ordinal).Take(MostRows)];
    }

    /// <summary>As SVG; empty when nothing is near.</summary>
    public static string Svg(CanReport report, SvgFor use = SvgFor.Page, string id = "near") => Shown(report).Count == 0 ? "" : SvgWriter.Write(Draw(report, id), use);

    public static Picture Draw(CanReport report, string id = "near")
    {
        var shown = Shown(report);
        var most = Math.Clamp(Math.Ceiling(shown.Count == 0 ? 1 : shown.Max(s => s.Index)), 1, Most);
        var zero = X(0, most);
        var marks = new List<Mark>();
        const double Top = 30;
        var bottom = Top + (shown.Count * RowHigh);
        marks.Add(new Shape([new(zero, Top - 6), new(Right, Top - 6), new(Right, bottom), new(zero, bottom)], Tone.EmberWash));
        marks.Add(new Words(new(zero - 5, Top - 12), "stays dissolved", 12, Tone.Soft, Anchor.End));
        marks.Add(new Words(new(zero + 5, Top - 12), "may come out", 12, Tone.Soft));
        // Over the bars only, so that no name is struck through.
        marks.Add(new Strokes([(new(zero, Top - 22), new(zero, Top - 6)), .. shown.Select((_, i) => (new Spot(zero, Top + (i * RowHigh) + 16), new Spot(zero, Top + (i * RowHigh) + 36)))], Tone.Edge, 1.5));
        var y = Top;
        foreach (var solid in shown)
        {
            Row(marks, solid, most, y);
            y += RowHigh;
        }

        return new(id, Wide, bottom + 8, "What is near coming out of the can", Describe(shown), marks);
    }

    private static void Row(List<Mark> marks, NearSolid solid, double most, double y)
    {
        var end = X(solid.Index, most);
        var (top, low) = (y + 19, y + 31);
        Spot[] bar = [new(Left, top), new(end, top), new(end, low), new(Left, low)];
        var middle = (top + low) / 2;
        var inner = new List<Mark>();
        if (solid.Slow)
        {
            inner.Add(new Shape(bar, Tone.Sheet, Tone.Edge, 1));
            inner.Add(new Strokes(Hatch.Inside(bar, 6, 1), Tone.Edge, 0.75));
            inner.Add(new Disc(new(end, middle), 5.5, Tone.Sheet, Tone.Edge, 1.5));
        }
        else
        {
            var tone = solid.Index > 0 ? Tone.Ember : Tone.Leaf;
            inner.Add(new Shape(bar, tone));
            inner.Add(new Shape([new(end, middle - 8), new(end + 8, middle), new(end, middle + 8), new(end - 8, middle)], tone, Tone.Sheet, 1));
        }

        var figure = (solid.Index > 0 ? "+" : "") + Figures.Number(solid.Index, 1);
        marks.Add(new Group($"{solid.Name}: index {figure}, {(solid.Slow ? "slow" : "quick")}", inner));
        marks.Add(new Words(new(Left, y + 13), TextWidth.Fit($"{solid.Name}{(solid.Slow ? ", slow" : "")}", 230, 13), 13, Tone.Ink, Halo: true));
        marks.Add(new Words(new(Wide - 6, middle + 5), figure, 13, Tone.Ink, Anchor.End, Face.Bold, Halo: true));
    }

    private static double X(double index, double most) => Left + ((Math.Clamp(index, Least, most) - Least) / (most - Least) * (Right - Left - 10));

    private static string Describe(IReadOnlyList<NearSolid> shown) => string.Join(' ', shown.Select(s =>
        $"{s.Name}: {(s.Index > 0 ? "+" : "")}{Figures.Number(s.Index, 1)}, {(s.Slow ? "slow" : "quick")}."))
        + " Above 0 a quick solid comes out within hours; a slow one may, over days, and often does not.";
}

/// <summary>A solid near coming out.</summary>
/// <param name="Name">What a grower calls it.</param>
/// <param name="Index">Saturation index.</param>
/// <param name="Slow">True where it may stay away for days.</param>
public sealed record NearSolid(string Name, double Index, bool Slow);
