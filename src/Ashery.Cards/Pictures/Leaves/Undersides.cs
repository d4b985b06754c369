using static Ashery.Cards.Pictures.Leaves.LeafPaint;

namespace Ashery.Cards.Pictures.Leaves;

/// <summary>The underside of a leaf through a lens: paler, veins raised, and what sits on it.</summary>
internal static class Undersides
{
    private const string Face = "#86b97f";

    private static readonly LeafShape Leaf = new();

    public static void Clean(Pen pen) => Under(pen, static _ => { });

    public static void Webbing(Pen pen) => Under(pen, static p =>
    {
        foreach (var line in (string[])["M-22 20L4 -16L24 8Z", "M-18 -2L8 30L22 0", "M-24 12L20 22M-12 -12L16 26M0 -26L-16 30M4 -20L26 14"])
        {
            p.Line(line, "#ffffff", 0.9, 0.9);
        }

        foreach (var (x, y) in ((double, double)[])[(-10, 6), (8, -6), (12, 14), (-4, 20), (-14, 16), (4, 4)])
        {
            p.Oval(x, y, 2.6, 2, Red).Line($"M{Pen.N(x - 4)} {Pen.N(y - 2)}l8 4M{Pen.N(x - 4)} {Pen.N(y + 2)}l8 -4", LeafPaint.Dark, 0.7);
        }
    });

    public static void Thrips(Pen pen) => Under(pen, static p =>
    {
        foreach (var (x, y, turn) in ((double, double, double)[])[(-12, 2, 30), (8, -10, -20), (12, 16, 60), (-6, 22, -50)])
        {
            p.At(x, y, turn, 1, static q => q.Oval(0, 0, 2.1, 7, "#d9a441").Oval(0, -5.5, 1.8, 2, LeafPaint.Dark).Line("M-4 -2L0 0L4 -2M-4 2L0 1L4 2", LeafPaint.Dark, 0.8));
        }

        foreach (var (x, y, i) in Leaf.Strewn(26, 0.8, 0.1))
        {
            p.Dot(x, y, 0.9 + (0.3 * (i % 2)), LeafPaint.Dark);
        }
    });

    public static void Insects(Pen pen) => Under(pen, static p =>
    {
        foreach (var (x, y, turn) in ((double, double, double)[])[(-12, 0, 20), (-4, 10, -30), (8, 2, 60), (14, 14, 10), (-14, 18, -60), (4, 24, 40), (4, -14, -10)])
        {
            p.At(x, y, turn, 1, static q => q.Oval(0, 0, 3.6, 5.2, "#b6d86a").Line("M-6 -4L-2 -1M6 -4L2 -1M-6 4L-2 2M6 4L2 2M-1 -5L-3 -9M1 -5L3 -9", LeafPaint.Dark, 0.8).Dot(-1, -3.6, 0.7, LeafPaint.Dark).Dot(1, -3.6, 0.7, LeafPaint.Dark));
        }

        p.Oval(-6, -20, 4, 2.4, "#fff6c9", 0.9).Oval(16, -2, 3.4, 2.2, "#fff6c9", 0.9).Oval(-2, 32, 3, 2, "#fff6c9", 0.9);
    });

    public static void Blisters(Pen pen) => Under(pen, static p =>
    {
        foreach (var (x, y, i) in Leaf.Strewn(20, 0.78, 0.14))
        {
            p.Dot(x, y, 3.2 + (0.5 * (i % 3)), Tan).Dot(x - 0.9, y - 0.9, 1.5, "#ead0a2");
        }
    });

    public static void Mould(Pen pen) => Under(pen, static p =>
    {
        foreach (var (x, y, r) in ((double, double, double)[])[(-10, 0, 9), (9, 14, 10), (6, -16, 6.5), (-12, 24, 6)])
        {
            p.Dot(x, y, r, "#f5f5ee", 0.85);
            for (var k = 0; k < 12; k++)
            {
                var turn = k * Math.PI / 6;
                p.Dot(x + (r * 0.95 * Math.Cos(turn)), y + (r * 0.95 * Math.Sin(turn)), 1.6, "#f5f5ee", 0.9);
            }
        }

        foreach (var (x, y, _) in Leaf.Strewn(14, 0.7, 0.2))
        {
            p.Dot(x, y, 1.5, "#c8701f");
        }
    });

    private static void Under(Pen pen, Action<Pen> what)
    {
        LeafPatterns.Stalk(pen, Face);
        pen.Fill(Leaf.Outline(), Face);
        LeafPatterns.Veins(pen, "#5f965f", 1.8, 3.2);
        what(pen);
        pen.Rule(Leaf.Outline(), Tone.Edge, 1.3);
        pen.Rule("M34 20a11 11 0 1 1 -0.1 0M26.5 39L18 48", Tone.Soft, 2.6);
    }
}
