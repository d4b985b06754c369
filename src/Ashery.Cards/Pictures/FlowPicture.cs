using Ashery.Cards.Drawing;
using Ashery.Cards.Layout;

namespace Ashery.Cards.Pictures;

/// <summary>Bags, batches and pots in three columns, with bands as broad as the grams that went between them; dashed where nobody named the bag.</summary>
public static class FlowPicture
{
    private const double Wide = 360;
    private const double BoxWide = 106;
    private const double BoxHigh = 52;
    private const double Apart = 8;
    private const double Top = 26;
    private static readonly double[] Columns = [2, (Wide - BoxWide) / 2, Wide - BoxWide - 2];

    /// <summary>As SVG, for a page or a file; 360 wide, scales freely.</summary>
    public static string Svg(FlowView view, SvgFor use = SvgFor.Page, string id = "flow") => SvgWriter.Write(Draw(view, id), use);

    public static Picture Draw(FlowView view, string id = "flow")
    {
        IReadOnlyList<FlowBox>[] columns = [view.Bags, view.Batches, view.Pots];
        var rows = Math.Max(1, columns.Max(static c => c.Count));
        var height = Top + (rows * (BoxHigh + Apart));
        Dictionary<string, (double X, double Y, FlowBox Box)> places = new(StringComparer.Ordinal);
        for (var c = 0; c < columns.Length; c++)
        {
            // A short column stands in the middle of the tall one.
            var y = Top + ((rows - columns[c].Count) * (BoxHigh + Apart) / 2);
            foreach (var box in columns[c])
            {
                places.TryAdd(box.Key, (Columns[c], y, box));
                y += BoxHigh + Apart;
            }
        }

        var marks = new List<Mark>();
        foreach (var (name, x) in new[] { "bags", "batches", "pots" }.Zip(Columns))
        {
            marks.Add(new Words(new(x + (BoxWide / 2), 16), name, 12, Tone.Soft, Anchor.Middle, Face.Bold));
        }

        Bands(marks, view, places);
        foreach (var (x, y, box) in places.Values)
        {
            marks.Add(new Group($"{box.Name}, {box.Words}",
            [
                new Shape([new(x, y), new(x + BoxWide, y), new(x + BoxWide, y + BoxHigh), new(x, y + BoxHigh)], Tone.Sheet, Tone.Edge, 1.25),
                .. Name(box.Name, x + 6, y + 15),
                new Words(new(x + 6, y + BoxHigh - 7), TextWidth.Fit(box.Words, BoxWide - 12, 12), 12, Tone.Soft),
            ]));
        }

        return new(id, Wide, height, view.Title, Describe(view, places), marks);
    }

    /// <summary>A name on one line or two.</summary>
    private static IEnumerable<Mark> Name(string name, double x, double y)
    {
        var lines = LineBreaker.Break(Safe.Plain(name), BoxWide - 12, static text => TextWidth.Of(text, 12, Face.Bold));
        for (var i = 0; i < Math.Min(2, lines.Count); i++)
        {
            var text = i == 1 && lines.Count > 2 ? TextWidth.Fit(lines[1] + "…", BoxWide - 12, 12, Face.Bold) : lines[i];
            yield return new Words(new(x, y + (i * 14)), text, 12, Tone.Ink, Anchor.Start, Face.Bold);
        }
    }

    private static void Bands(List<Mark> marks, FlowView view, Dictionary<string, (double X, double Y, FlowBox Box)> places)
    {
        var most = Math.Max(1e-9, view.Links.Count == 0 ? 0 : view.Links.Max(static l => l.Grams));
        foreach (var link in view.Links)
        {
            if (!places.TryGetValue(link.From, out var from) || !places.TryGetValue(link.To, out var to))
            {
                continue;
            }

            var breadth = 1.5 + (8 * Math.Sqrt(link.Grams / most));
            var (a, b) = (new Spot(from.X + BoxWide, from.Y + (BoxHigh / 2)), new Spot(to.X, to.Y + (BoxHigh / 2)));
            marks.Add(new Group($"{from.Box.Name} to {to.Box.Name}: {Figures.Grams(link.Grams)}{(link.Assumed ? ", bag or batch assumed" : "")}",
            [
                new Strokes([(a, b)], Tone.LeafWash, breadth),
                new Strokes([(a, b)], Tone.Leaf, 1.25, Dashed: link.Assumed),
            ]));
        }
    }

    private static string Describe(FlowView view, Dictionary<string, (double X, double Y, FlowBox Box)> places) => view.Links.Count == 0
        ? "Nothing went anywhere yet."
        : string.Join(' ', view.Links.Where(l => places.ContainsKey(l.From) && places.ContainsKey(l.To))
            .Select(l => $"{places[l.From].Box.Name} ({places[l.From].Box.Words}) to {places[l.To].Box.Name}: {Figures.Grams(l.Grams)}{(l.Assumed ? ", assumed" : "")}."));
}
