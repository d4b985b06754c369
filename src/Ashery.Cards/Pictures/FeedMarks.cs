using Ashery.Cards.Drawing;
using Ashery.Feeds;

namespace Ashery.Cards.Pictures;

/// <summary>The mark of each kind of feed: told by shape, helped by colour.</summary>
public static class FeedMarks
{
    /// <summary>What the kind is called.</summary>
    public static string Name(FeedKind kind) => kind switch
    {
        FeedKind.Mineral => "Mineral",
        FeedKind.Organic => "Organic",
        FeedKind.Foliar => "Leaf spray",
        FeedKind.TraceElements => "Trace elements",
        FeedKind.Inoculant => "Inoculant",
        _ => kind.ToString(),
    };

    /// <summary>The mark alone as SVG, for legends and tables: decorative, the name must stand beside it.</summary>
    public static string Svg(FeedKind kind, double size = 16)
    {
        var picture = new Picture("mark-" + Name(kind), size, size, Name(kind), "", Draw(kind, new(size / 2, size / 2), size * 0.42));
        var svg = SvgWriter.Write(picture, SvgFor.Page);

        // Many marks stand on one page: their titles would share an id, and nobody is to hear them anyway.
        const string end = "</desc>\n";
        svg = svg.Remove(svg.IndexOf("<title", StringComparison.Ordinal), svg.IndexOf(end, StringComparison.Ordinal) + end.Length - svg.IndexOf("<title", StringComparison.Ordinal));
        var labelled = svg.IndexOf(" aria-labelledby=\"", StringComparison.Ordinal);
        svg = svg.Remove(labelled, svg.IndexOf('"', labelled + " aria-labelledby=\"".Length) + 1 - labelled);
        return svg.Replace(" role=\"img\"", " aria-hidden=\"true\" focusable=\"false\"", StringComparison.Ordinal);
    }

    /// <summary>Mineral: a crystal (diamond). Organic: a round lump. Spray: a drop. Trace: a plus. Inoculant: a triangle.</summary>
    public static IReadOnlyList<Mark> Draw(FeedKind kind, Spot at, double r) => kind switch
    {
        FeedKind.Mineral => [new Shape([new(at.X, at.Y - (1.15 * r)), new(at.X + r, at.Y), new(at.X, at.Y + (1.15 * r)), new(at.X - r, at.Y)], Tone.Ember)],
        FeedKind.Organic => [new Disc(at, 0.95 * r, Tone.Leaf)],
        FeedKind.Foliar => [new Shape(Drop(at, r), Tone.WaterWash, Tone.Water, Math.Max(1.2, r * 0.3))],
        FeedKind.TraceElements => [new Shape(Plus(at, r), Tone.Ink)],
        _ => [new Shape([new(at.X, at.Y - r), new(at.X + r, at.Y + (0.85 * r)), new(at.X - r, at.Y + (0.85 * r))], Tone.Sheet, Tone.Leaf, Math.Max(1.2, r * 0.3))],
    };

    private static Spot[] Plus(Spot at, double r)
    {
        var (a, b) = (r, r * 0.36);
        (double X, double Y)[] corners = [(-b, -a), (b, -a), (b, -b), (a, -b), (a, b), (b, b), (b, a), (-b, a), (-b, b), (-a, b), (-a, -b), (-b, -b)];
        return [.. corners.Select(c => new Spot(at.X + c.X, at.Y + c.Y))];
    }

    private static Spot[] Drop(Spot at, double r)
    {
        // An arc of 260 degrees below, closed to a tip above.
        var spots = new List<Spot> { new(at.X, at.Y - (1.25 * r)) };
        for (var i = 0; i <= 12; i++)
        {
            var angle = (-40 + (i * 260.0 / 12)) * Math.PI / 180;
            spots.Add(new(at.X + (0.8 * r * Math.Cos(angle)), at.Y + (0.25 * r) + (0.8 * r * Math.Sin(angle))));
        }

        return [.. spots];
    }
}
