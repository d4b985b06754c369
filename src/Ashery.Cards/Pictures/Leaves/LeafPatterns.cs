using static Ashery.Cards.Pictures.Leaves.LeafPaint;

namespace Ashery.Cards.Pictures.Leaves;

/// <summary>One leaf for each pattern of colour: where it is pale, where it is dead, what tint it has.</summary>
internal static class LeafPatterns
{
    private static readonly LeafShape Leaf = new();

    public static void Green(Pen pen) => Body(pen, LeafPaint.Green);

    public static void Uniform(Pen pen) => Body(pen, Pale, "#eef2cf");

    public static void White(Pen pen) => Body(pen, LeafPaint.White, "#dfe3bd");

    public static void Dark(Pen pen) => Body(pen, "#1f5a48", "#6fa08c");

    public static void Purple(Pen pen)
    {
        Body(pen, LeafPaint.Purple, "#c391b4");
        pen.Fill(Leaf.Between(0.3, 0.97, -0.42, 0.42), Deep, 0.5);
        Veins(pen, "#c391b4", 1.5, 1);
    }

    public static void Interveinal(Pen pen)
    {
        Stalk(pen, LeafPaint.Green);
        pen.Fill(Leaf.Outline(), Yellow);
        Veins(pen, Deep, 2.4, 3.4);
        FineVeins(pen, Deep);
        Rim(pen);
    }

    public static void Net(Pen pen)
    {
        Stalk(pen, LeafPaint.Green);
        pen.Fill(Leaf.Outline(), Pale);
        Veins(pen, LeafPaint.Green, 6.4, 0.1, 0.66);
        pen.Line(Leaf.Midrib(0.2), LeafPaint.Green, 8);
        Veins(pen, Vein, 1.2, 1.8, 0.6);
        foreach (var (x, y, i) in Leaf.Strewn(16, 0.8, 0.25))
        {
            pen.Dot(x, y, 0.9 + (0.3 * (i % 2)), Tan);
        }

        Rim(pen);
    }

    public static void Margin(Pen pen)
    {
        Stalk(pen, LeafPaint.Green);
        pen.Fill(Leaf.Outline(), Yellow);
        pen.Fill(Leaf.Between(0.13, 0.96, -0.72, 0.72), Pale);
        pen.Fill(Leaf.Between(0.17, 0.97, -0.62, 0.62), LeafPaint.Green);
        Finish(pen, Vein, 0.6);
    }

    public static void Mottle(Pen pen)
    {
        Stalk(pen, LeafPaint.Green);
        pen.Fill(Leaf.Outline(), LeafPaint.Green);
        foreach (var (x, y, i) in Leaf.Strewn(15, 0.68, 0.16, 0.16, 0.88))
        {
            pen.Oval(x, y, 4 + (i % 3), 3.2 + (i % 2), i % 3 == 0 ? Pale : Yellow, 0.92, i * 37 % 180);
        }

        Finish(pen, Vein);
    }

    public static void Stipple(Pen pen)
    {
        Stalk(pen, LeafPaint.Green);
        pen.Fill(Leaf.Outline(), LeafPaint.Green);
        foreach (var (x, y, _) in Leaf.Strewn(120, 0.9, 0.03))
        {
            pen.Dot(x, y, 0.95, "#f2edc4");
        }

        Finish(pen, Vein);
    }

    public static void Mosaic(Pen pen)
    {
        Stalk(pen, LeafPaint.Green);
        pen.Fill(Leaf.Outline(), "#9fc873");
        foreach (var (x, y, i) in Leaf.Strewn(11, 0.66, 0.2, 0.2, 0.85))
        {
            pen.Fill($"M{Pen.N(x - 6)} {Pen.N(y - 2)}l4 -{Pen.N(3 + (i % 3))}l{Pen.N(5 + (i % 2))} 2l1 5l-5 {Pen.N(3 + (i % 2))}l-6 -3Z", Deep, 0.95);
        }

        pen.Line("M9 -9a7 6 0 1 1 -0.1 0", Yellow, 1.8).Line("M-18 17a6 5 0 1 1 -0.1 0", Yellow, 1.8);
        Finish(pen, Vein);
    }

    public static void Scorch(Pen pen)
    {
        Stalk(pen, LeafPaint.Green);
        pen.Fill(Leaf.Outline(), Brown);
        pen.Line(Leaf.Edge(-1, 0.05, 0.9), LeafPaint.Dark, 2.2).Line(Leaf.Edge(1, 0.05, 0.9), LeafPaint.Dark, 2.2);
        pen.Fill(Leaf.Between(0.15, 0.97, -0.76, 0.76), Yellow);
        pen.Fill(Leaf.Between(0.19, 0.98, -0.66, 0.66), LeafPaint.Green);
        Finish(pen, Vein, 0.62);
    }

    public static void TipBurn(Pen pen)
    {
        Body(pen, LeafPaint.Green);
        pen.Fill(Leaf.Outline(0, 0.34), Yellow);
        pen.Fill(Leaf.Outline(0, 0.29), Brown).Fill(Leaf.Outline(0, 0.13), LeafPaint.Dark);
        Rim(pen);
    }

    public static void Specks(Pen pen)
    {
        Stalk(pen, LeafPaint.Green);
        pen.Fill(Leaf.Outline(), Yellow);
        pen.Fill(Leaf.Between(0.12, 0.97, -0.8, 0.8), Pale).Fill(Leaf.Between(0.16, 0.98, -0.7, 0.7), LeafPaint.Green);
        Veins(pen, Vein, 1.2, 1.8, 0.65);
        foreach (var (x, y, i) in Leaf.Strewn(64, 0.94, 0.08))
        {
            pen.Dot(x, y, 1.05 + (0.3 * (i % 2)), i % 3 == 0 ? LeafPaint.Dark : Brown);
        }

        Rim(pen);
    }

    public static void Spots(Pen pen)
    {
        Body(pen, LeafPaint.Green);
        foreach (var (x, y, r) in ((double X, double Y, double R)[])[(-14, 8, 6), (11, -12, 5.4), (14, 19, 6.4), (-9, -22, 4), (-18, 24, 3.6)])
        {
            pen.Dot(x, y, r + 1.8, Yellow).Dot(x, y, r, Brown).Dot(x, y, r * 0.55, Tan);
        }
    }

    public static void BetweenDead(Pen pen)
    {
        Stalk(pen, LeafPaint.Green);
        pen.Fill(Leaf.Outline(), LeafPaint.Green);
        foreach (var t in (double[])[0.3, 0.44, 0.58, 0.72])
        {
            foreach (var side in (int[])[-1, 1])
            {
                var (x, y) = Leaf.Place(t, side * 0.5);
                pen.Oval(x, y, 7, 3.2, Yellow, 1, side * -32).Oval(x, y, 5.6, 2.2, Brown, 1, side * -32);
            }
        }

        Finish(pen, Vein);
    }

    public static void Soaked(Pen pen)
    {
        Body(pen, LeafPaint.Green);
        pen.Fill("M-4 -38C8 -34 16 -22 14 -12C12 -4 2 -6 -4 -12C-10 -18 -12 -34 -4 -38Z", Glass, 0.85);
        pen.Fill("M6 2C18 -2 28 8 26 18C22 28 8 24 4 16C2 10 2 4 6 2Z", Glass, 0.85).Fill("M12 8C18 6 22 10 21 15C18 19 11 17 10 13Z", Brown, 0.9);
        pen.Line("M-2 -32C3 -30 6 -26 7 -22", "#9fc0c4", 1.4).Line("M11 4C15 3 19 5 21 8", "#9fc0c4", 1.4);
        Finish(pen, Vein);
    }

    public static void RedSpots(Pen pen)
    {
        Stalk(pen, LeafPaint.Green);
        pen.Fill(Leaf.Outline(), LeafPaint.Green);
        foreach (var (x, y, i) in Leaf.Strewn(24, 0.82, 0.1))
        {
            pen.Dot(x, y, 3.4 + (0.5 * (i % 2)), Red, 0.45).Dot(x, y, 1.9 + (0.4 * (i % 3)), Red);
        }

        Finish(pen, Vein);
    }

    public static void Bronze(Pen pen)
    {
        Stalk(pen, LeafPaint.Green);
        pen.Fill(Leaf.Outline(), LeafPaint.Bronze).Fill(Leaf.Between(0.35, 0.99, -0.55, 0.55), LeafPaint.Green, 0.55);
        pen.Line(Leaf.Edge(-0.5, 0.15, 0.8), "#dcb77a", 3, 0.6).Line(Leaf.Edge(0.55, 0.15, 0.8), "#dcb77a", 3, 0.6);
        Finish(pen, "#e7d3ae");
    }

    public static void SilverStreaks(Pen pen)
    {
        Stalk(pen, LeafPaint.Green);
        pen.Fill(Leaf.Outline(), LeafPaint.Green);
        foreach (var (x, y, i) in Leaf.Strewn(11, 0.7, 0.16, 0.2, 0.86))
        {
            pen.Line($"M{Pen.N(x - 5)} {Pen.N(y + 3)}q5 -{Pen.N(3 + (i % 3))} 10 -{Pen.N(5 + (i % 2))}", Silver, 3.2);
            pen.Dot(x + 1, y + 1, 0.9, LeafPaint.Dark);
        }

        Finish(pen, Vein);
    }

    /// <summary>A whole leaf of one colour with light veins.</summary>
    internal static void Body(Pen pen, string colour, string vein = Vein, LeafShape? shape = null)
    {
        shape ??= Leaf;
        Stalk(pen, colour);
        pen.Fill(shape.Outline(), colour);
        Finish(pen, vein, 0.86, shape);
    }

    internal static void Finish(Pen pen, string vein, double reach = 0.86, LeafShape? shape = null)
    {
        Veins(pen, vein, 1.2, 2, reach, shape);
        Rim(pen, shape);
    }

    internal static void Veins(Pen pen, string colour, double side, double middle, double reach = 0.86, LeafShape? shape = null)
    {
        shape ??= Leaf;
        foreach (var vein in shape.Veins(reach))
        {
            pen.Line(vein, colour, side);
        }

        pen.Line(shape.Midrib(), colour, middle);
    }

    // The shaded half gives the leaf its fold; the outline takes the colour of the page.
    internal static void Rim(Pen pen, LeafShape? shape = null)
    {
        shape ??= Leaf;
        pen.Fill(shape.Between(0, 1, 0, 1), "#0d1f14", 0.1);
        pen.Rule(shape.Outline(), Tone.Edge, 1.3);
    }

    internal static void Stalk(Pen pen, string colour) => pen.Line("M0 38C0 45 2 50 6 55", colour, 3.4).Line("M0 40C0 46 2 50 6 55", Vein, 1);

    private static void FineVeins(Pen pen, string colour)
    {
        foreach (var t in (double[])[0.24, 0.36, 0.5, 0.64, 0.77])
        {
            foreach (var side in (int[])[-1, 1])
            {
                var (x, y) = Leaf.Place(t, side * 0.42);
                var (u, v) = Leaf.Place(t - 0.03, side * 0.72);
                pen.Line($"M{Pen.N(x)} {Pen.N(y)}L{Pen.N(x + (side * 1.5))} {Pen.N(y - 6)}M{Pen.N(u)} {Pen.N(v)}L{Pen.N(u + side)} {Pen.N(v - 5)}", colour, 0.9);
            }
        }
    }
}
