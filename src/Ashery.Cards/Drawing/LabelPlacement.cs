namespace Ashery.Cards.Drawing;

/// <summary>An upright rectangle.</summary>
public readonly record struct Box(double Left, double Top, double Right, double Bottom)
{
    public bool Overlaps(Box other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    public bool Within(Box other) => Left >= other.Left && Right <= other.Right && Top >= other.Top && Bottom <= other.Bottom;

    public static Box Around(Spot centre, double radius) => new(centre.X - radius, centre.Y - radius, centre.X + radius, centre.Y + radius);
}

/// <summary>A label that wants a place beside its point.</summary>
/// <param name="Point">What it names.</param>
/// <param name="PointRadius">Room the point's own mark takes.</param>
/// <param name="Text">What it says.</param>
/// <param name="Size">Size of the letters.</param>
/// <param name="Face">Their face.</param>
/// <param name="Outward">Side it likes best, as a direction; zero for the right.</param>
public sealed record LabelWish(Spot Point, double PointRadius, string Text, double Size, Face Face = Face.Text, Spot Outward = default);

/// <summary>Where a label went; null box when there was no room and it is left to the table under the picture.</summary>
public sealed record PlacedLabel(LabelWish Wish, Box? Box, (Spot From, Spot To)? Leader);

/// <summary>
/// Places labels so that none overlaps another, a point, or an obstacle, or leaves the frame; rules (axes and the like) are
/// kept free where that costs little. Greedy in the order given (most important first) over a fixed list of places around the
/// point, cheapest first (near, on the side it likes, crossing no rule), so the same input always gives the same picture.
/// A label without room is left out rather than squeezed in.
/// </summary>
public static class LabelPlacement
{
    private static readonly (double X, double Y)[] Sides =
        [(1, 0), (-1, 0), (0, -1), (0, 1), (1, -1), (1, 1), (-1, -1), (-1, 1), (1, -0.5), (1, 0.5), (-1, -0.5), (-1, 0.5)];

    private static readonly double[] Gaps = [4, 10, 18, 28, 40, 54];

    public static IReadOnlyList<PlacedLabel> Place(
        IReadOnlyList<LabelWish> wishes, IReadOnlyList<Box> obstacles, Box frame, IReadOnlyList<(Spot From, Spot To)>? rules = null)
    {
        var taken = new List<Box>(obstacles);
        taken.AddRange(wishes.Select(w => Box.Around(w.Point, w.PointRadius)));
        var lines = new List<(Spot From, Spot To)>(rules ?? []);
        var placed = new List<PlacedLabel>();
        foreach (var wish in wishes)
        {
            var label = Find(wish, taken, frame, lines);
            placed.Add(label);
            if (label.Box is { } box)
            {
                taken.Add(box);
            }

            if (label.Leader is { } leader)
            {
                lines.Add(leader);
            }
        }

        return placed;
    }

    private static PlacedLabel Find(LabelWish wish, List<Box> taken, Box frame, List<(Spot From, Spot To)> rules)
    {
        var width = TextWidth.Of(wish.Text, wish.Size, wish.Face);
        var height = wish.Size * 1.2;
        var (best, lowest) = (new PlacedLabel(wish, null, null), double.PositiveInfinity);
        for (var g = 0; g < Gaps.Length; g++)
        {
            for (var i = 0; i < Sides.Length; i++)
            {
                var cost = g + Dislike(i, wish.Outward);
                if (cost >= lowest)
                {
                    continue;
                }

                var (x, y) = Sides[i];
                var reach = wish.PointRadius + Gaps[g];
                var left = wish.Point.X + (x * reach) + (x switch { > 0 => 0, < 0 => -width, _ => -width / 2 });
                var top = wish.Point.Y + (y * reach) + (y switch { > 0 => 0, < 0 => -height, _ => -height / 2 });
                var box = new Box(left, top, left + width, top + height);
                if (!box.Within(frame) || taken.Exists(t => t.Overlaps(box)))
                {
                    continue;
                }

                (Spot From, Spot To)? leader = Gaps[g] < 10 ? null
                    : (wish.Point, new(Math.Clamp(wish.Point.X, box.Left, box.Right), Math.Clamp(wish.Point.Y, box.Top, box.Bottom)));
                cost += (1.5 * rules.Count(r => Touches(r.From, r.To, box)))
                    + (leader is { } l ? 3 * taken.Count(t => !t.Overlaps(Box.Around(wish.Point, 1)) && Touches(l.From, l.To, t)) : 0);
                if (cost < lowest)
                {
                    (best, lowest) = (new(wish, box, leader), cost);
                }
            }
        }

        return best;
    }

    /// <summary>Level beats above and below, straight beats slanted; the liked side beats its opposite by less than one gap.</summary>
    private static double Dislike(int side, Spot outward)
    {
        var (x, y) = Sides[side];
        var plain = side switch { < 2 => 0.05 * side, < 4 => 0.2, < 8 => 0.5, _ => 0.35 };
        var away = outward == default ? 0 : 0.3 * (1 - (((x * outward.X) + (y * outward.Y)) / Math.Sqrt(((x * x) + (y * y)) * ((outward.X * outward.X) + (outward.Y * outward.Y)))));
        return plain + away;
    }

    /// <summary>Does the stroke pass through the box? Liang and Barsky's clipping, kept to its yes or no.</summary>
    internal static bool Touches(Spot from, Spot to, Box box)
    {
        var (dx, dy) = (to.X - from.X, to.Y - from.Y);
        var (enter, leave) = (0.0, 1.0);
        ReadOnlySpan<(double P, double Q)> sides =
            [(-dx, from.X - box.Left), (dx, box.Right - from.X), (-dy, from.Y - box.Top), (dy, box.Bottom - from.Y)];
        foreach (var (p, q) in sides)
        {
            if (p == 0)
            {
                if (q < 0)
                {
                    return false;
                }

                continue;
            }

            var t = q / p;
            (enter, leave) = p < 0 ? (Math.Max(enter, t), leave) : (enter, Math.Min(leave, t));
        }

        return enter <= leave;
    }
}
