namespace Ashery.Cards.Drawing;

/// <summary>
/// Patterns as plain strokes, so that they print in grey and need no named pattern (whose id would clash when several
/// pictures stand in one page).
/// </summary>
internal static class Hatch
{
    /// <summary>Parallel strokes of a slope (1 falls to the right, -1 rises) clipped to a convex shape.</summary>
    public static IReadOnlyList<(Spot From, Spot To)> Inside(IReadOnlyList<Spot> shape, double apart, double slope)
    {
        // Lines y = slope x + c; every edge that straddles a line gives one crossing, a convex shape two.
        var offsets = shape.Select(s => s.Y - (slope * s.X)).ToList();
        var lines = new List<(Spot, Spot)>();
        for (var c = Math.Ceiling(offsets.Min() / apart) * apart; c < offsets.Max(); c += apart)
        {
            Cross(lines, shape, s => s.Y - (slope * s.X) - c);
        }

        return lines;
    }

    /// <summary>Upright strokes clipped to a convex shape.</summary>
    public static IReadOnlyList<(Spot From, Spot To)> Upright(IReadOnlyList<Spot> shape, double apart)
    {
        var lines = new List<(Spot, Spot)>();
        for (var x = Math.Ceiling(shape.Min(s => s.X) / apart) * apart; x < shape.Max(s => s.X); x += apart)
        {
            var at = x;
            Cross(lines, shape, s => s.X - at);
        }

        return lines;
    }

    private static void Cross(List<(Spot, Spot)> lines, IReadOnlyList<Spot> shape, Func<Spot, double> side)
    {
        Spot? first = null;
        for (var i = 0; i < shape.Count; i++)
        {
            var a = shape[i];
            var b = shape[(i + 1) % shape.Count];
            var (da, db) = (side(a), side(b));
            if ((da < 0) == (db < 0))
            {
                continue;
            }

            var t = da / (da - db);
            var at = new Spot(a.X + (t * (b.X - a.X)), a.Y + (t * (b.Y - a.Y)));
            if (first is { } from)
            {
                lines.Add((from, at));
                return;
            }

            first = at;
        }
    }
}
