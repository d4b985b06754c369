using Ashery.Cards.Drawing;

namespace Ashery.Cards.Pictures;

/// <summary>
/// The N-P-K triangle: every mixture of N, P2O5 and K2O is a point, its nearness to a corner the share of that corner's
/// nutrient. Mixing two materials moves along the line between them, so everything that can be mixed from a set lies
/// within their convex hull (other limits set aside): that area is shaded. The target is a ring with cross-hairs, the
/// blend a solid diamond, a material of the blend a solid disc, any other an open one. Hostile names and figures that
/// cannot be drawn do no harm.
/// </summary>
public static class Triangle
{
    private const double Wide = 360;
    private const double High = 350;
    private const double Side = 288;
    private const double Tall = Side * 0.8660254037844386;
    private const double LongestName = 132;
    private static readonly Spot Top = new(Wide / 2, 44);
    private static readonly Spot Left = new((Wide - Side) / 2, Top.Y + Tall);
    private static readonly Spot Right = new((Wide + Side) / 2, Top.Y + Tall);

    private static readonly Words[] Corners =
    [
        new(new(Top.X, Top.Y - 24), "N", 17, Anchor: Anchor.Middle, Face: Face.Head),
        new(new(Left.X - 8, Left.Y + 32), "P₂O₅", 17, Face: Face.Head),
        new(new(Right.X + 8, Right.Y + 32), "K₂O", 17, Anchor: Anchor.End, Face: Face.Head),
    ];

    /// <summary>As SVG, for a page or a file; 360 wide, scales freely.</summary>
    public static string Svg(TriangleView view, SvgFor use = SvgFor.Page, string id = "triangle") => SvgWriter.Write(Draw(view, id), use);

    /// <summary>As a picture for any surface.</summary>
    public static Picture Draw(TriangleView view, string id = "triangle")
    {
        var clusters = Cluster(view);
        var marks = new List<Mark>();
        Area(marks, clusters);
        Frame(marks);
        foreach (var c in clusters.Where(c => !c.Chosen).Concat(clusters.Where(c => c.Chosen)))
        {
            marks.Add(new Group(c.Story, [new Disc(c.At, c.Radius, c.Chosen ? Tone.Leaf : Tone.Sheet, Tone.Leaf, 1.5)]));
        }

        if (view.Target is { HasPlace: true } target)
        {
            marks.Add(new Group($"Target {view.TargetName}: {target}", Ring(Place(target))));
        }

        if (view.Blend is { HasPlace: true } blend)
        {
            marks.Add(new Group($"Blend {view.BlendName}: {blend}", [Diamond(Place(blend))]));
        }

        Labels(marks, view, clusters);
        return new(id, Wide, High, Title(view), Describe(view, clusters), marks);
    }

    internal static Spot Place(Ternary t) => new(
        ((Top.X * t.N) + (Left.X * t.P2O5) + (Right.X * t.K2O)) / t.Sum,
        ((Top.Y * t.N) + (Left.Y * t.P2O5) + (Right.Y * t.K2O)) / t.Sum);

    private static void Area(List<Mark> marks, IReadOnlyList<Cluster> clusters)
    {
        var hull = Hull.Of(clusters.Select(c => c.At));
        marks.Add(new Shape([Top, Right, Left], Tone.Sheet));
        if (hull.Count >= 3)
        {
            marks.Add(new Group("Reachable by mixing the materials shown", [new Shape(hull, Tone.LeafWash), new Strokes(Hatch.Inside(hull, 7, 1), Tone.Line, 0.75), new Shape(hull, Tone.None, Tone.Leaf, 1.25, Dashed: true)]));
        }
        else if (hull.Count == 2)
        {
            marks.Add(new Group("Reachable by mixing the two", [new Strokes([(hull[0], hull[1])], Tone.Leaf, 2, Dashed: true)]));
        }
    }

    private static void Frame(List<Mark> marks)
    {
        var grid = new List<(Spot, Spot)>();
        for (var i = 1; i < 5; i++)
        {
            var t = i / 5.0;
            grid.Add((Place(new(t, 1 - t, 0)), Place(new(t, 0, 1 - t))));
            grid.Add((Place(new(1 - t, t, 0)), Place(new(0, t, 1 - t))));
            grid.Add((Place(new(1 - t, 0, t)), Place(new(0, 1 - t, t))));
        }

        marks.Add(new Strokes(grid, Tone.Line, 0.75));
        marks.Add(new Shape([Top, Right, Left], Tone.None, Tone.Edge, 1.25));
        marks.AddRange(Corners);
    }

    /// <summary>Room that a corner's name takes, with a little air.</summary>
    private static Box Room(Words w)
    {
        var width = TextWidth.Of(w.Text, w.Size, w.Face);
        var left = w.At.X - (w.Anchor switch { Anchor.Middle => width / 2, Anchor.End => width, _ => 0 });
        return new(left - 3, w.At.Y - w.Size, left + width + 3, w.At.Y + (0.3 * w.Size));
    }

    private static void Labels(List<Mark> marks, TriangleView view, IReadOnlyList<Cluster> clusters)
    {
        var wishes = new List<LabelWish>();
        if (view.Target is { HasPlace: true } target)
        {
            wishes.Add(new(Place(target), 11, TextWidth.Fit("Target " + Safe.Plain(view.TargetName), LongestName, 13, Face.Bold), 13, Face.Bold));
        }

        if (view.Blend is { HasPlace: true } blend)
        {
            wishes.Add(new(Place(blend), 11, TextWidth.Fit("Blend " + Safe.Plain(view.BlendName), LongestName + 20, 13, Face.Bold), 13, Face.Bold));
        }

        var named = wishes.Count;
        wishes.AddRange(clusters.OrderByDescending(c => c.Chosen).ThenByDescending(c => c.OnHull)
            .Select(c => new LabelWish(c.At, c.Radius + 1, c.Label(LongestName, 12), 12, Outward: Outward(c.At))));
        var placed = LabelPlacement.Place(wishes, [.. Corners.Select(Room)], new Box(2, 2, Wide - 2, High - 2), [(Top, Left), (Left, Right), (Right, Top)]);
        for (var i = 0; i < placed.Count; i++)
        {
            if (placed[i].Box is not { } box || placed[i].Wish.Text.Length == 0)
            {
                continue;
            }

            if (placed[i].Leader is { } leader)
            {
                marks.Add(new Strokes([leader], Tone.Edge, 0.75));
            }

            var tone = i < named ? Tone.Ember : Tone.Ink;
            marks.Add(new Words(new(box.Left, box.Bottom - (placed[i].Wish.Size * 0.28)), placed[i].Wish.Text, placed[i].Wish.Size, tone, Face: placed[i].Wish.Face, Halo: true));
        }
    }

    /// <summary>Away from the edge a point lies on, so that its name stands outside; nowhere special inside.</summary>
    private static Spot Outward(Spot at)
    {
        var up = (Left.Y - at.Y) / Tall;
        var onLeft = Math.Abs(at.X - (Left.X + (up * Side / 2))) < 3;
        var onRight = Math.Abs(at.X - (Right.X - (up * Side / 2))) < 3;
        return up < 0.01 ? new(0, 1) : onLeft && !onRight ? new(-1, -0.2) : onRight ? new(1, -0.2) : default;
    }

    private static Mark[] Ring(Spot at) =>
    [
        new Disc(at, 9, Tone.None, Tone.Ember, 2),
        new Strokes([(new(at.X - 13, at.Y), new(at.X - 5, at.Y)), (new(at.X + 5, at.Y), new(at.X + 13, at.Y)),
            (new(at.X, at.Y - 13), new(at.X, at.Y - 5)), (new(at.X, at.Y + 5), new(at.X, at.Y + 13))], Tone.Ember, 2),
    ];

    private static Shape Diamond(Spot at) =>
        new([new(at.X, at.Y - 6.5), new(at.X + 6.5, at.Y), new(at.X, at.Y + 6.5), new(at.X - 6.5, at.Y)], Tone.Ember, Tone.Sheet, 1);

    private static IReadOnlyList<Cluster> Cluster(TriangleView view)
    {
        var clusters = view.Materials.Where(m => m.Contents.HasPlace)
            .GroupBy(m => (Math.Round(Place(m.Contents).X), Math.Round(Place(m.Contents).Y)))
            .Select(g => new Cluster([.. g.OrderByDescending(m => m.Chosen)]))
            .ToList();
        var hull = Hull.Of(clusters.Select(c => c.At)).ToHashSet();
        return [.. clusters.Select(c => c with { OnHull = hull.Contains(c.At) })];
    }

    private static string Title(TriangleView view) =>
        view.Target is { HasPlace: true } ? $"N-P-K triangle, target {view.TargetName}" : "N-P-K triangle";

    private static string Describe(TriangleView view, IReadOnlyList<Cluster> clusters)
    {
        var lines = new List<string>();
        if (view.Target is { HasPlace: true } target)
        {
            lines.Add($"Target: {target}.");
        }

        if (view.Blend is { HasPlace: true } blend)
        {
            lines.Add($"Blend {view.BlendName}: {blend}.");
        }

        lines.AddRange(clusters.SelectMany(c => c.Members).Select(m => $"{m.Name}: {m.Contents}{(m.Chosen ? ", in the blend" : "")}."));
        var without = view.Materials.Where(m => !m.Contents.HasPlace).Select(m => m.Name).ToList();
        if (without.Count > 0)
        {
            lines.Add($"Not in the triangle, for they hold no N, P or K: {string.Join(", ", without)}.");
        }

        lines.Add("The shaded area is what mixing these can reach, other limits set aside.");
        return string.Join(' ', lines);
    }
}

/// <summary>Materials at one place in the triangle.</summary>
internal sealed record Cluster(IReadOnlyList<TrianglePoint> Members)
{
    public Spot At { get; } = Triangle.Place(Members[0].Contents);

    public bool OnHull { get; init; }

    public bool Chosen => Members[0].Chosen;

    public double Radius => Chosen ? 5.5 : 4;

    /// <summary>The name, cut to fit; the first name and how many more where several share the place.</summary>
    public string Label(double width, double size)
    {
        var more = Members.Count == 1 ? "" : FormattableString.Invariant($" +{Members.Count - 1}");
        return TextWidth.Fit(Safe.Plain(Members[0].Name), width - TextWidth.Of(more, size), size) + more;
    }

    public string Story => string.Join("; ", Members.Select(m => $"{m.Name}: {m.Contents}"));
}
