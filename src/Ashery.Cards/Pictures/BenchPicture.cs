using Ashery.Cards.Drawing;
using Ashery.Feeds;

namespace Ashery.Cards.Pictures;

/// <summary>
/// The pots of a day's work on their bench, in walking order: each as large as it is, the mark of its feed on a tag above, and what became of
/// it told by the sign beside the mark: a tick for given, a cross for left out, two bars for "not today", a clock hand for overdue.
/// </summary>
public static class BenchPicture
{
    private const double High = 118, PotHigh = 34, TagHigh = 22, Few = 8;
    private const int MostRows = 6;

    private static readonly double[] Sides = [-1, 1];

    public static string Svg(IReadOnlyList<BenchPot> pots, double wide = 360, SvgFor use = SvgFor.Page, string id = "bench") => SvgWriter.Write(Draw(pots, wide, id), use);

    public static Picture Draw(IReadOnlyList<BenchPot> pots, double wide = 360, string id = "bench")
    {
        var inRow = Math.Max(3, (int)(wide / (pots.Count <= Few ? 86 : 59)));
        var shown = Math.Min(pots.Count, inRow * MostRows);
        var rows = Math.Max(1, (shown + inRow - 1) / inRow);
        var marks = new List<Mark>();
        var largest = pots.Count == 0 ? 1 : pots.Max(static p => p.Litres);
        for (var row = 0; row < rows; row++)
        {
            var (first, ground) = (row * inRow, ((row + 1) * High) - 22);
            marks.Add(new Shape([new(4, ground), new(wide - 4, ground), new(wide - 4, ground + 5), new(4, ground + 5)], Tone.Line));
            var count = Math.Min(inRow, shown - first);
            var step = wide / (rows > 1 ? inRow : Math.Max(count, 3));
            for (var i = 0; i < count; i++)
            {
                var pot = pots[first + i];
                marks.Add(new Group(Say(pot), [.. One(pot, new((i + 0.5) * step, ground), largest, step)]));
            }
        }

        var left = pots.Count - shown;
        if (left > 0)
        {
            marks.Add(new Words(new(wide - 6, (rows * High) + 12), $"and {Figures.Short(left, 0)} more", 13, Tone.Soft, Anchor.End));
        }

        return new(id, wide, (rows * High) + (left > 0 ? 18 : 0), "The day's pots on their bench", string.Join(' ', pots.Select(static p => Say(p) + ".")), marks);
    }

    private static IEnumerable<Mark> One(BenchPot pot, Spot foot, double largest, double step)
    {
        // Volumes go by the cube; a small pot is still seen.
        var size = Math.Max(0.6, Math.Cbrt(pot.Litres / largest));
        var (high, half) = (PotHigh * size, 20 * size);
        var rim = foot.Y - high;
        var isOver = pot.Sign is BenchSign.Given or BenchSign.Skipped or BenchSign.Coming;
        var (fill, edge) = isOver ? (Tone.Sheet, Tone.Edge) : (Tone.EmberWash, Tone.Ember);
        foreach (var leaf in Plant(new(foot.X, rim), size, isOver))
        {
            yield return leaf;
        }

        yield return new Shape([new(foot.X - (half * 0.86), rim + (high * 0.16)), new(foot.X + (half * 0.86), rim + (high * 0.16)), new(foot.X + (half * 0.62), foot.Y), new(foot.X - (half * 0.62), foot.Y)], fill, edge, 1.5);
        yield return new Shape([new(foot.X - half, rim), new(foot.X + half, rim), new(foot.X + half, rim + (high * 0.2)), new(foot.X - half, rim + (high * 0.2))], fill, edge, 1.5);
        var top = foot.Y - PotHigh - 57;
        if (pot.Kind is { } kind)
        {
            var sign = pot.Sign is BenchSign.Due or BenchSign.Coming ? 0 : 11;
            foreach (var mark in FeedMarks.Draw(kind, new(foot.X - sign, top + (TagHigh / 2)), 8))
            {
                yield return mark;
            }

            foreach (var mark in Sign(pot.Sign, new(foot.X + 11, top + (TagHigh / 2))))
            {
                yield return mark;
            }
        }

        yield return new Words(new(foot.X, foot.Y + 17), TextWidth.Fit(Safe.Plain(pot.Name), step - 5, 11), 11, Tone.Ink, Anchor.Middle);
    }

    /// <summary>Two leaves on each side and a flower: enough to be a plant.</summary>
    private static IEnumerable<Mark> Plant(Spot soil, double size, bool isPale)
    {
        var (fill, r) = (isPale ? Tone.LeafWash : Tone.Leaf, 12.5 * size);
        yield return new Strokes([(soil, new(soil.X, soil.Y - (1.9 * r)))], Tone.Leaf, 1.5);
        foreach (var side in Sides)
        {
            yield return new Shape([soil, new(soil.X + (side * r * 0.5), soil.Y - (r * 1.05)), new(soil.X + (side * r * 1.45), soil.Y - (r * 0.95)), new(soil.X + (side * r * 0.9), soil.Y - (r * 0.2))], fill, Tone.Leaf, 1);
            yield return new Shape([new(soil.X, soil.Y - (r * 0.7)), new(soil.X + (side * r * 0.25), soil.Y - (r * 1.6)), new(soil.X + (side * r * 0.95), soil.Y - (r * 1.75)), new(soil.X + (side * r * 0.65), soil.Y - (r * 1.05))], fill, Tone.Leaf, 1);
        }

        yield return new Disc(new(soil.X, soil.Y - (2 * r)), r * 0.36, isPale ? Tone.Sheet : Tone.EmberWash, Tone.Ember, 1.2);
    }

    private static IEnumerable<Mark> Sign(BenchSign sign, Spot at)
    {
        switch (sign)
        {
            case BenchSign.Given:
                yield return new Strokes([(new(at.X - 7, at.Y), new(at.X - 2, at.Y + 6)), (new(at.X - 2, at.Y + 6), new(at.X + 8, at.Y - 7))], Tone.Leaf, 3.5);
                break;
            case BenchSign.Skipped:
                yield return new Strokes([(new(at.X - 6, at.Y - 6), new(at.X + 6, at.Y + 6)), (new(at.X - 6, at.Y + 6), new(at.X + 6, at.Y - 6))], Tone.Soft, 3);
                break;
            case BenchSign.Held:
                yield return new Strokes([(new(at.X - 3.5, at.Y - 7), new(at.X - 3.5, at.Y + 7)), (new(at.X + 3.5, at.Y - 7), new(at.X + 3.5, at.Y + 7))], Tone.Ember, 4);
                break;
            case BenchSign.Overdue:
                yield return new Disc(at, 8, Tone.Sheet, Tone.Ember, 2);
                yield return new Strokes([(at, new(at.X, at.Y - 5.5)), (at, new(at.X + 4, at.Y + 1.5))], Tone.Ember, 2);
                break;
        }
    }

    private static string Say(BenchPot pot) => $"{Safe.Plain(pot.Name)}: " + pot.Sign switch
    {
        BenchSign.Due => "due",
        BenchSign.Overdue => "overdue",
        BenchSign.Held => "not today",
        BenchSign.Given => "given",
        BenchSign.Skipped => "left out",
        _ => "to come",
    } + (pot.Kind is { } kind ? $", {FeedMarks.Name(kind).ToLowerInvariant()}" : "");
}
