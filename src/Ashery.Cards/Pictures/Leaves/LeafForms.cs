using static Ashery.Cards.Pictures.Leaves.LeafPaint;

namespace Ashery.Cards.Pictures.Leaves;

/// <summary>Leaves out of shape.</summary>
internal static class LeafForms
{
    public static void Small(Pen pen)
    {
        // The size it should have, dashed by dots, and the leaf within.
        var full = new LeafShape();
        for (var t = 0.04; t < 1; t += 0.055)
        {
            foreach (var side in (int[])[-1, 1])
            {
                var (x, y) = full.Place(t, side);
                pen.Dot(x, y, 1.1, "#8b958f");
            }
        }

        pen.At(0, 18, 0, 0.5, static p => LeafPatterns.Body(p, LeafPaint.Green));
    }

    public static void Roll(Pen pen)
    {
        // Edges rolled up and in: the pale underside shows along both sides.
        var leaf = new LeafShape(27);
        LeafPatterns.Body(pen, LeafPaint.Green, shape: leaf);
        foreach (var side in (int[])[-1, 1])
        {
            pen.Fill(leaf.Between(0.12, 0.95, side < 0 ? -1.12 : 0.5, side < 0 ? -0.5 : 1.12), Young);
            pen.Line(leaf.Edge(side * 0.5, 0.14, 0.93), Deep, 1.6).Rule(leaf.Edge(side * 1.12, 0.12, 0.95), Tone.Edge, 1.3);
            pen.Rule($"M{Pen.N(side * 42)} 14q{Pen.N(side * 2)} -14 {Pen.N(side * -8)} -17m{Pen.N(side * 1)} 6l{Pen.N(side * -1.5)} -6l{Pen.N(side * 6)} -1", Tone.Soft, 2);
        }
    }

    public static void Cup(Pen pen)
    {
        // Seen from the side: the blade arches like a cap, its edge and tip hang.
        pen.Line("M42 12C48 20 48 34 42 50", LeafPaint.Green, 3.6);
        pen.Fill("M-44 28C-46 -6 -24 -36 4 -36C32 -36 46 -10 42 14C30 5 20 3 8 5C-12 7 -32 14 -44 28Z", LeafPaint.Green);
        pen.Fill("M-44 28C-32 14 -12 7 8 5C20 3 30 5 42 14C30 14 18 15 8 17C-12 19 -30 22 -44 28Z", "#86b97f");
        pen.Line("M-43 26C-36 -2 -18 -22 6 -24C24 -24 36 -8 42 12", Vein, 2.2);
        pen.Line("M-32 1C-34 8 -34 14 -34 18M-20 -12C-22 -2 -20 6 -19 11M-4 -22C-6 -10 -4 0 -2 6M14 -23C13 -12 14 -2 15 4M28 -16C27 -8 28 0 30 6M-20 -12C-18 -20 -12 -28 -6 -33M-4 -22C0 -28 4 -33 10 -35M14 -23C18 -27 22 -30 26 -30", Vein, 1.2);
        pen.Rule("M-44 28C-46 -6 -24 -36 4 -36C32 -36 46 -10 42 14C30 5 20 3 8 5C-12 7 -32 14 -44 28Z", Tone.Edge, 1.3);
        pen.Rule("M-48 34L-48 46M-52 42L-48 47L-44 42M6 24L6 36M2 32L6 37L10 32", Tone.Soft, 2);
    }

    public static void Strap(Pen pen)
    {
        // Narrow, thick, crinkled.
        var leaf = new LeafShape(15, 0.22);
        LeafPatterns.Stalk(pen, LeafPaint.Green);
        pen.Fill(leaf.Outline(), Deep);
        foreach (var t in (double[])[0.2, 0.31, 0.42, 0.53, 0.64, 0.75, 0.86])
        {
            foreach (var side in (int[])[-1, 1])
            {
                var (x, y) = leaf.Place(t, side * 0.55);
                pen.Oval(x, y, 4.4, 3, Young, 0.85, side * -20);
            }
        }

        pen.Line(leaf.Midrib(), Vein, 3.2);
        LeafPatterns.Rim(pen, leaf);
    }

    public static void Twist(Pen pen)
    {
        // Hooked to one side, one half short, the stalk turned.
        var leaf = new LeafShape(24, 0.06, 34);
        pen.Line("M0 38C-8 44 10 48 -2 56", LeafPaint.Green, 3.4);
        pen.Fill(leaf.Between(0, 1, -0.45, 1), LeafPaint.Green).Fill(leaf.Between(0.35, 0.8, 0.35, 1), Young, 0.7);
        pen.Line(leaf.Midrib(), Vein, 2.2);
        foreach (var t in (double[])[0.3, 0.46, 0.62, 0.78])
        {
            var (x, y) = leaf.Place(t - 0.12, 0.8);
            var (u, v) = leaf.Place(t - 0.08, -0.35);
            pen.Line($"M{Pen.N(leaf.X(t))} {Pen.N(LeafShape.Y(t))}L{Pen.N(x)} {Pen.N(y)}M{Pen.N(leaf.X(t))} {Pen.N(LeafShape.Y(t))}L{Pen.N(u)} {Pen.N(v)}", Vein, 1.2);
        }

        pen.Rule(leaf.Between(0, 1, -0.45, 1), Tone.Edge, 1.3);
    }

    public static void Rosette(Pen pen)
    {
        // Tiny leaves crowded on a short shoot.
        pen.Line("M0 54L0 12", LeafPaint.Green, 4.2);
        (double X, double Y, double Turn, double Size)[] leaves =
            [(-2, 34, -105, 0.36), (2, 36, 105, 0.36), (-3, 22, -72, 0.42), (3, 22, 72, 0.42), (-3, 10, -50, 0.46), (3, 10, 50, 0.46), (-2, 4, -22, 0.46), (2, 4, 22, 0.46), (0, 2, 0, 0.42)];
        foreach (var (x, y, turn, size) in leaves)
        {
            pen.At(x, y, turn, size, static p => p.At(0, -42, 0, 1, static q => Plain(q, LeafPaint.Green)));
        }
    }

    public static void Collapse(Pen pen)
    {
        // A shoot whose youngest leaves hang dead over green older ones.
        pen.Line("M0 56L0 -18", LeafPaint.Green, 4.2);
        pen.At(-2, 40, -72, 0.56, static p => p.At(0, -42, 0, 1, static q => Plain(q, LeafPaint.Green)));
        pen.At(2, 34, 72, 0.56, static p => p.At(0, -42, 0, 1, static q => Plain(q, LeafPaint.Green)));
        pen.At(-2, 14, -52, 0.42, static p => p.At(0, -42, 0, 1, static q => Plain(q, Young)));
        pen.At(2, 10, 54, 0.42, static p => p.At(0, -42, 0, 1, static q => Plain(q, Young)));
        pen.Line("M0 -8C0 -24 -8 -28 -14 -22", Brown, 3.6).Line("M0 -12C2 -26 10 -28 15 -20", Brown, 3.2);
        pen.At(-14, -22, 205, 0.36, static p => p.At(0, -42, 0, 0.7, 1, static q => Plain(q, Brown)));
        pen.At(15, -20, 160, 0.34, static p => p.At(0, -42, 0, 0.7, 1, static q => Plain(q, Brown)));
        pen.At(0, -18, 176, 0.24, static p => p.At(0, -42, 0, 0.7, 1, static q => Plain(q, LeafPaint.Dark)));
    }

    /// <summary>A small leaf: body, midrib, outline. Its base is at y = 42 of its own room, so that it can be set on a stem.</summary>
    internal static void Plain(Pen pen, string colour) => Plain(pen, colour, Vein);

    internal static void Plain(Pen pen, string colour, string vein)
    {
        var leaf = new LeafShape(29);
        pen.Line("M0 40L0 46", colour, 4).Fill(leaf.Outline(), colour).Line(leaf.Midrib(0.1), vein, 2.6);
        pen.Fill(leaf.Between(0, 1, 0, 1), "#0d1f14", 0.1).Rule(leaf.Outline(), Tone.Edge, 2.2);
    }
}
