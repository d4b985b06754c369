using System.Text;

namespace Ashery.Cards.Pictures.Leaves;

/// <summary>
/// A leaf about (0, 0): tip up at y = -46, base at y = 40, stalk below. Half its width at a part t of its length (0 at the tip) is
/// w(t) = wide · sin(pi t^1.36)^0.9: pointed at the tip, round at the base, widest below the middle.
/// </summary>
internal sealed class LeafShape(double wide = 33, double wave = 0, double bend = 0)
{
    public const double Tip = -46, Base = 40;

    private const int Steps = 36;

    private static readonly double[] Starts = [0.36, 0.49, 0.62, 0.75, 0.87];

    private static readonly int[] Sides = [-1, 1];

    /// <summary>Half the width at a part of the length.</summary>
    public double Half(double t) => wide * Math.Pow(Math.Max(0, Math.Sin(Math.PI * Math.Pow(Math.Clamp(t, 0, 1), 1.36))), 0.9) * (1 + (wave * Math.Sin(t * 34)));

    public static double Y(double t) => Tip + ((Base - Tip) * t);

    /// <summary>Sideways place of the midrib.</summary>
    public double X(double t) => bend * Math.Sin((1 - t) * Math.PI / 2) * (1 - t);

    /// <summary>Outline between two parts of the length, drawn in by <paramref name="inset"/> of its width.</summary>
    public string Outline(double from = 0, double to = 1, double inset = 0) => Between(from, to, -1 + inset, 1 - inset);

    /// <summary>A strip of the leaf: from <paramref name="left"/> to <paramref name="right"/>, in halves of the width (-1 and 1 are the edges).</summary>
    public string Between(double from, double to, double left, double right)
    {
        var path = new StringBuilder();
        for (var i = 0; i <= Steps; i++)
        {
            Point(path, from + ((to - from) * i / Steps), right, i == 0 ? 'M' : 'L');
        }

        for (var i = Steps; i >= 0; i--)
        {
            Point(path, from + ((to - from) * i / Steps), left, 'L');
        }

        return path.Append('Z').ToString();
    }

    /// <summary>The edge alone, both sides.</summary>
    public string Edge(double side, double from = 0, double to = 1)
    {
        var path = new StringBuilder();
        for (var i = 0; i <= Steps; i++)
        {
            Point(path, from + ((to - from) * i / Steps), side, i == 0 ? 'M' : 'L');
        }

        return path.ToString();
    }

    /// <summary>A place on the leaf: part of the length, part of the half width.</summary>
    public (double X, double Y) Place(double t, double across) => (X(t) + (Half(t) * across), Y(t));

    public string Midrib(double from = 0.06) => Edge(0, from);

    /// <summary>Side veins of both sides, each a curve towards the tip that ends at a part of the half width.</summary>
    public IEnumerable<string> Veins(double reach = 0.86)
    {
        foreach (var start in Starts)
        {
            foreach (var side in Sides)
            {
                var end = Math.Max(0.09, start - 0.17);
                var (x, y) = Place(end, side * reach);
                yield return $"M{Pen.N(X(start))} {Pen.N(Y(start))}Q{Pen.N(X(start) + (side * Half(start) * 0.5))} {Pen.N(Y(start) - 5)} {Pen.N(x)} {Pen.N(y)}";
            }
        }
    }

    /// <summary>Places strewn evenly over the leaf, the same each time (Halton points); those nearer than <paramref name="clear"/> to the midrib left out.</summary>
    public IEnumerable<(double X, double Y, int Index)> Strewn(int count, double within = 0.88, double clear = 0.06, double from = 0.1, double to = 0.95)
    {
        for (int i = 1, found = 0; found < count && i < count * 6; i++)
        {
            var (t, across) = (from + ((to - from) * Halton(i, 2)), ((2 * Halton(i, 3)) - 1) * within);

            // Fewer where the leaf is narrow, so that they lie evenly on its face.
            if (Math.Abs(across) >= clear && Halton(i, 5) * wide <= Half(t))
            {
                found++;
                var (x, y) = Place(t, across);
                yield return (x, y, i);
            }
        }
    }

    public static double Halton(int index, int radix)
    {
        double part = 1, value = 0;
        for (; index > 0; index /= radix)
        {
            part /= radix;
            value += part * (index % radix);
        }

        return value;
    }

    private void Point(StringBuilder path, double t, double across, char letter)
    {
        var (x, y) = Place(t, across);
        path.Append(letter).Append(Pen.N(x)).Append(' ').Append(Pen.N(y));
    }
}
