using static Ashery.Cards.Pictures.Leaves.LeafPaint;

namespace Ashery.Cards.Pictures.Leaves;

/// <summary>A small plant with the leaves that are meant set off, its growing tip, and its buds.</summary>
internal static class PlantDrawings
{
    // Six pairs from the lowest to the youngest: height on the stem, size, how far they hang.
    private static readonly (double Y, double Size, double Turn)[] Pairs = [(34, 0.36, 94), (21, 0.38, 82), (7, 0.37, 72), (-7, 0.33, 62), (-20, 0.26, 50), (-30, 0.18, 34)];

    public static void Older(Pen pen) => Plant(pen, static i => i < 2);

    public static void Middle(Pen pen) => Plant(pen, static i => i is 2 or 3);

    public static void Younger(Pen pen) => Plant(pen, static i => i > 3);

    public static void Whole(Pen pen) => Plant(pen, static _ => true);

    public static void TipNormal(Pen pen) => Tip(pen, 1, LeafPaint.Green, Young);

    public static void TipSlow(Pen pen)
    {
        pen.Line("M0 56L0 -8", LeafPaint.Green, 2.2);
        foreach (var (y, size, turn) in ((double, double, double)[])[(40, 0.34, 84), (20, 0.26, 70), (4, 0.18, 56)])
        {
            Pair(pen, y, size, turn, Pale);
        }

        Leaf(pen, 0, -8, 0, 0.15, Pale);
    }

    public static void TipDies(Pen pen)
    {
        Tip(pen, 0, LeafPaint.Green, Young);
        pen.Line("M0 -6C0 -22 0 -26 -3 -32", Brown, 4).Dot(-3, -34, 4.4, LeafPaint.Dark);
        foreach (var turn in (double[])[-38, 30])
        {
            pen.At(0, -14, turn, 0.22, static p => p.At(0, -42, 0, 0.6, 1, static q => LeafForms.Plain(q, Brown)));
        }

        pen.Line("M-10 14C-16 4 -18 0 -19 -6M10 14C16 4 18 0 19 -6", LeafPaint.Green, 2.4);
        Leaf(pen, -19, -6, -16, 0.2, Young);
        Leaf(pen, 19, -6, 16, 0.2, Young);
    }

    public static void TipBunched(Pen pen)
    {
        pen.Line("M0 56L0 18", LeafPaint.Green, 4);
        foreach (var (x, turn) in ((double, double)[])[(-22, -46), (-12, -26), (0, 0), (12, 26), (22, 46)])
        {
            pen.Line($"M0 22Q{Pen.N(x * 0.4)} 6 {Pen.N(x)} {Pen.N(-6 + Math.Abs(x * 0.5))}", LeafPaint.Green, 2.6);
            pen.At(x, -6 + Math.Abs(x * 0.5), turn, 0.24, static p => p.At(0, -42, -34, 1, static q => LeafForms.Plain(q, Young)).At(0, -42, 34, 1, static q => LeafForms.Plain(q, Young)).At(0, -42, 0, 1, static q => LeafForms.Plain(q, LeafPaint.Green)));
        }

        Pair(pen, 42, 0.34, 84, LeafPaint.Green);
    }

    public static void BudNormal(Pen pen)
    {
        Shoot(pen);
        Flower(pen, 0, -24, 1, Petal);
        Bud(pen, 24, -2, 24, Petal, LeafPaint.Green);
    }

    public static void BudDrop(Pen pen)
    {
        Shoot(pen);
        Bud(pen, 0, -16, 0, Yellow, Yellow);
        Bud(pen, 24, -2, 24, Yellow, Yellow);
        Bud(pen, -24, 44, 120, Yellow, Brown);
        Bud(pen, 30, 46, 80, Brown, Brown);
        pen.Rule("M-24 14L-24 28M-28 24L-24 29L-20 24", Tone.Soft, 2).Rule("M28 18L29 32M25 28L29 33L33 28", Tone.Soft, 2);
    }

    public static void BudScarred(Pen pen)
    {
        Shoot(pen);
        Flower(pen, 0, -24, 1, Petal);
        foreach (var line in (string[])["M-16 -30l8 4", "M8 -36l6 -6", "M10 -18l8 4", "M-10 -14l-4 8", "M-4 -40l2 -8"])
        {
            pen.Line(line, "#f7e7d2", 2.6).Line(line, Brown, 1.1);
        }

        Bud(pen, 24, -2, 24, Brown, LeafPaint.Green);
    }

    public static void BudDeformed(Pen pen)
    {
        Shoot(pen);
        foreach (var (turn, size) in ((double, double)[])[(-60, 0.6), (10, 1), (80, 0.45), (200, 0.5)])
        {
            pen.At(0, -22, turn, size, static p => p.Fill("M0 0C-12 -8 -4 -20 2 -26C6 -18 4 -14 10 -10C8 -4 4 -2 0 0Z", PetalPale).Rule("M0 0C-12 -8 -4 -20 2 -26C6 -18 4 -14 10 -10C8 -4 4 -2 0 0Z", Tone.Edge, 1.2));
        }

        pen.Dot(0, -22, 5, Tan);
        Bud(pen, 24, -2, 60, PetalPale, Tan);
    }

    private static void Plant(Pen pen, Func<int, bool> meant)
    {
        pen.Line("M0 48L0 -34", LeafPaint.Green, 3.2);
        for (var i = 0; i < Pairs.Length; i++)
        {
            Pair(pen, Pairs[i].Y, Pairs[i].Size, Pairs[i].Turn, meant(i) ? Yellow : LeafPaint.Green);
        }

        Leaf(pen, 0, -34, 0, 0.17, meant(5) ? Yellow : LeafPaint.Green);
        pen.Fill("M-19 44L19 44L15 58L-15 58Z", Clay).Fill("M-21 41L21 41L21 46L-21 46Z", "#a9623f");
        pen.Rule("M-21 41L21 41L21 46L19 46L15 58L-15 58L-19 46L-21 46Z", Tone.Edge, 1.2);
        for (var i = 0; i < Pairs.Length; i++)
        {
            // A bar beside the leaves that are meant: the place is told without the colour.
            if (meant(i))
            {
                pen.Rule($"M54 {Pen.N(Pairs[i].Y - 10)}L54 {Pen.N(Pairs[i].Y + 3)}", Tone.Ember, 4);
            }
        }
    }

    private static void Tip(Pen pen, double top, string old, string young)
    {
        pen.Line("M0 56L0 -6", LeafPaint.Green, 4);
        Pair(pen, 42, 0.46, 84, old);
        Pair(pen, 20, 0.4, 62, old);
        if (top > 0)
        {
            Pair(pen, 0, 0.3, 42, young);
            Leaf(pen, -1, -6, -12, 0.26, young);
            Leaf(pen, 1, -6, 14, 0.22, young);
        }
    }

    private static void Shoot(Pen pen)
    {
        pen.Line("M0 56L0 -14M0 24C10 14 18 8 24 0", LeafPaint.Green, 3.2);
        Leaf(pen, 0, 46, -78, 0.38, LeafPaint.Green);
        Leaf(pen, 0, 40, 78, 0.34, LeafPaint.Green);
        Leaf(pen, 0, 20, -62, 0.32, LeafPaint.Green);
    }

    private static void Flower(Pen pen, double x, double y, double size, string colour)
    {
        for (var k = 0; k < 5; k++)
        {
            pen.At(x, y, k * 72, size, p => p.Fill("M0 0C-14 -8 -12 -26 0 -26C12 -26 14 -8 0 0Z", colour).Rule("M0 0C-14 -8 -12 -26 0 -26C12 -26 14 -8 0 0Z", Tone.Edge, 1.2));
        }

        pen.Dot(x, y, 5.4 * size, Yellow);
    }

    private static void Bud(Pen pen, double x, double y, double turn, string petal, string calyx) =>
        pen.At(x, y, turn, 1, p => p.Fill("M0 0C-9 -6 -8 -18 0 -24C8 -18 9 -6 0 0Z", petal).Rule("M0 0C-9 -6 -8 -18 0 -24C8 -18 9 -6 0 0Z", Tone.Edge, 1.2).Fill("M0 3C-9 1 -9 -8 -7 -12C-3 -8 -2 -6 0 -10C2 -6 3 -8 7 -12C9 -8 9 1 0 3Z", calyx));

    private static void Pair(Pen pen, double y, double size, double turn, string colour)
    {
        Leaf(pen, 0, y, -turn, size, colour);
        Leaf(pen, 0, y - 2, turn, size, colour);
    }

    private static void Leaf(Pen pen, double x, double y, double turn, double size, string colour) =>
        pen.At(x, y, turn, size, p => p.At(0, -44, 0, 1, q => LeafForms.Plain(q, colour, colour == Yellow || colour == Pale ? "#a4a34a" : Vein)));
}
