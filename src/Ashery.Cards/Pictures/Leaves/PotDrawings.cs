using static Ashery.Cards.Pictures.Leaves.LeafPaint;

namespace Ashery.Cards.Pictures.Leaves;

/// <summary>A root ball out of its pot, and a pot in the hand.</summary>
internal static class PotDrawings
{
    private const string Ball = "M-38 -30L38 -30L29 44C20 50 -20 50 -29 44Z";

    public static void White(Pen pen)
    {
        RootBall(pen, Soil);
        Strands(pen, Root, 2, 1);
        Hairs(pen, Root);
    }

    public static void Few(Pen pen)
    {
        RootBall(pen, Soil);
        pen.Line("M-8 -28C-10 -10 -14 6 -12 26M6 -28C8 -8 4 10 10 34M-2 -28C0 -14 -2 -4 2 6", Root, 1.6);
    }

    public static void BrownRot(Pen pen)
    {
        RootBall(pen, Wet);
        Strands(pen, Brown, 3.4, 0.8);
        pen.Line("M-20 12C-22 24 -19 34 -15 40M18 4C21 18 16 30 20 38", "#a27a4f", 4.6).Line("M-20 12C-22 24 -19 34 -15 40M18 4C21 18 16 30 20 38", LeafPaint.Dark, 1.2);
        foreach (var (x, y) in ((double, double)[])[(-30, 20), (30, 12), (0, 52)])
        {
            pen.Fill($"M{Pen.N(x)} {Pen.N(y - 6)}C{Pen.N(x + 5)} {Pen.N(y)} {Pen.N(x + 4)} {Pen.N(y + 5)} {Pen.N(x)} {Pen.N(y + 5)}C{Pen.N(x - 4)} {Pen.N(y + 5)} {Pen.N(x - 5)} {Pen.N(y)} {Pen.N(x)} {Pen.N(y - 6)}Z", "#5b93b5");
        }
    }

    public static void DeadTips(Pen pen)
    {
        RootBall(pen, Soil);
        Strands(pen, Root, 2.2, 0.62);
        foreach (var (x, y) in ((double, double)[])[(-26, 22), (-15, 28), (-5, 22), (6, 30), (16, 24), (25, 20)])
        {
            pen.Line($"M{Pen.N(x)} {Pen.N(y - 8)}l{Pen.N(x * 0.04)} 12", "#c8701f", 4).Dot(x + (x * 0.04), y + 5, 2.6, LeafPaint.Dark);
        }
    }

    public static void Stubby(Pen pen)
    {
        RootBall(pen, Soil);
        foreach (var x in (double[])[-24, -8, 8, 24])
        {
            pen.Line($"M{Pen.N(x)} -28L{Pen.N(x * 0.95)} 0", Root, 4.6);
            foreach (var y in (double[])[-18, -8, 0])
            {
                pen.Line($"M{Pen.N(x)} {Pen.N(y)}l-6 7m6 -7l6 7m-6 -4l0 10", Root, 3.4);
            }
        }
    }

    public static void Circling(Pen pen)
    {
        RootBall(pen, Soil);
        for (var k = 0; k < 7; k++)
        {
            var y = -22 + (k * 10);
            var half = 35.5 - (k * 1.15);
            pen.Line($"M{Pen.N(-half)} {Pen.N(y)}C{Pen.N(-half / 2)} {Pen.N(y + 7)} {Pen.N(half / 2)} {Pen.N(y - 5)} {Pen.N(half)} {Pen.N(y + 3)}", Root, 3);
            pen.Line($"M{Pen.N(-half)} {Pen.N(y + 5)}C{Pen.N(-half / 3)} {Pen.N(y - 3)} {Pen.N(half / 3)} {Pen.N(y + 9)} {Pen.N(half)} {Pen.N(y)}", "#cfc29f", 2.2);
        }
    }

    public static void Grubs(Pen pen)
    {
        RootBall(pen, Soil);
        pen.Line("M-24 -28C-24 -18 -26 -10 -25 -4M-8 -28C-8 -16 -6 -8 -9 2M10 -28C9 -20 12 -12 11 -6M24 -28C24 -20 26 -12 25 -8", Root, 2.2);
        foreach (var (x, y, turn) in ((double, double, double)[])[(-18, 16, 10), (8, 10, -30), (18, 30, 40), (-6, 36, -10)])
        {
            pen.At(x, y, turn, 1, static p => p.Line("M-7 0C-4 -6 4 -6 7 0", "#f4f1e6", 5.4).Line("M-4 -3l0 -2M0 -4.5l0 -2M4 -3l0 -2", "#b7b09b", 1).Dot(7.4, 0.6, 2.2, LeafPaint.Dark));
        }
    }

    public static void Light(Pen pen) => Weighed(pen, Dry, -14, 0.22);

    public static void Right(Pen pen) => Weighed(pen, Soil, 0, 0.6);

    public static void Heavy(Pen pen) => Weighed(pen, Wet, 14, 1);

    private static void RootBall(Pen pen, string soil)
    {
        pen.Line("M0 -30L0 -52", LeafPaint.Green, 5);
        foreach (var turn in (double[])[-58, 58])
        {
            pen.At(0, -44, turn, 0.3, static p => p.At(0, -44, 0, 1, static q => LeafForms.Plain(q, LeafPaint.Green)));
        }

        pen.Fill(Ball, soil);
        for (var i = 1; i < 40; i++)
        {
            pen.Dot(-30 + (60 * LeafShape.Halton(i, 2)), -26 + (68 * LeafShape.Halton(i, 3)), 1.2, i % 2 == 0 ? "#8a7058" : "#2f241b", 0.7);
        }

        pen.Rule(Ball, Tone.Edge, 1.3);
    }

    private static void Strands(Pen pen, string colour, double width, double length)
    {
        foreach (var x in (double[])[-32, -25, -17, -9, -2, 6, 14, 22, 30])
        {
            var end = -28 + (70 * length);
            pen.Line($"M{Pen.N(x * 0.5)} -29C{Pen.N(x * 1.05)} -14 {Pen.N(x * 0.85)} {Pen.N(end * 0.4)} {Pen.N(x * 0.85)} {Pen.N(end)}", colour, width);
        }
    }

    private static void Hairs(Pen pen, string colour)
    {
        foreach (var (x, y) in ((double, double)[])[(-24, 4), (-14, 16), (-6, 0), (4, 18), (12, 2), (20, 14), (-20, 28), (10, 32)])
        {
            pen.Line($"M{Pen.N(x)} {Pen.N(y)}l-5 4m5 -4l5 5", colour, 1);
        }
    }

    // A pot that hangs from a spring balance: how far it draws the pointer down tells the weight.
    private static void Weighed(Pen pen, string soil, double sink, double wet)
    {
        pen.Rule("M-20 -56L20 -56M0 -56L0 -48", Tone.Edge, 2.4);
        var y = -20 + sink;
        var spring = "M0 -48";
        for (var k = 1; k <= 6; k++)
        {
            spring += $"L{(k % 2 == 0 ? "-5" : "5")} {Pen.N(-48 + ((y + 40) * k / 6.5))}";
        }

        pen.Rule(spring + $"L0 {Pen.N(y - 6)}", Tone.Soft, 2).Rule($"M0 {Pen.N(y - 6)}L-19 {Pen.N(y + 8)}M0 {Pen.N(y - 6)}L19 {Pen.N(y + 8)}", Tone.Edge, 1.6);
        pen.At(0, y + 8, 0, 1, p =>
        {
            p.Fill("M-22 0L22 0L17 34L-17 34Z", Clay).Fill("M-19 6L19 6L15.6 30L-15.6 30Z", soil);
            p.Fill($"M{Pen.N(-19 + (3.4 * (1 - wet)))} {Pen.N(6 + (24 * (1 - wet)))}L{Pen.N(19 - (3.4 * (1 - wet)))} {Pen.N(6 + (24 * (1 - wet)))}L15.6 30L-15.6 30Z", "#3f7fa6", 0.55);
            p.Rule("M-22 0L22 0L17 34L-17 34Z", Tone.Edge, 1.3).Fill("M-24 -4L24 -4L24 2L-24 2Z", "#a9623f").Rule("M-24 -4L24 -4L24 2L-24 2Z", Tone.Edge, 1.2);
        });
        pen.Rule("M40 -34L40 36M36 -34L44 -34M36 1L44 1M36 36L44 36", Tone.Line, 1.6).Rule($"M34 {Pen.N(1 + (sink * 2))}L46 {Pen.N(1 + (sink * 2))}", Tone.Ember, 4);
    }
}
