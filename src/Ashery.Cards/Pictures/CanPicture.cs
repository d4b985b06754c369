using Ashery.Cards.Drawing;
using Ashery.Solutions;
using Ashery.Solutions.Can;

namespace Ashery.Cards.Pictures;

/// <summary>
/// Where a can lands: conductivity across, pH up. The crop's window is shaded and named; the fresh can is a solid diamond, the can left open a
/// ring, a line from the one to the other; the water alone is a small square.
/// </summary>
public static class CanPicture
{
    private const double Wide = 360;
    private const double High = 300;
    private const double Left = 44;
    private const double Right = Wide - 16;
    private const double Top = 28;
    private const double Bottom = High - 46;

    /// <summary>As SVG, for a page or a file; 360 wide, scales freely.</summary>
    public static string Svg(CanReport report, CanWindow? window, SvgFor use = SvgFor.Page, string id = "can") => SvgWriter.Write(Draw(report, window, id), use);

    /// <summary>As a picture for any surface.</summary>
    public static Picture Draw(CanReport report, CanWindow? window, string id = "can")
    {
        var water = CanState.Of(Speciation.Solve(report.Request.Water.At(report.Request.Celsius).Under(Air.Closed)));
        var axes = Axes.For(report, window, water);
        var marks = new List<Mark> { new Shape(Rectangle(Left, Top, Right, Bottom), Tone.Sheet) };
        if (window is not null)
        {
            Window(marks, axes, window);
        }

        Grid(marks, axes);
        var fresh = axes.At(report.Closed);
        var open = axes.At(report.Open);
        var tap = axes.At(water);
        marks.Add(new Strokes([(fresh, open)], Tone.Ember, 1.5, Dashed: true));
        marks.Add(new Group($"The water alone: {Said(water)}", [new Shape(Rectangle(tap.X - 4, tap.Y - 4, tap.X + 4, tap.Y + 4), Tone.Sheet, Tone.Edge, 1.5)]));
        marks.Add(new Group($"Left open: {Said(report.Open)}", [new Disc(open, 6, Tone.Sheet, Tone.Ember, 2)]));
        marks.Add(new Group($"Fresh: {Said(report.Closed)}", [new Shape([new(fresh.X, fresh.Y - 7), new(fresh.X + 7, fresh.Y), new(fresh.X, fresh.Y + 7), new(fresh.X - 7, fresh.Y)], Tone.Ember, Tone.Sheet, 1)]));
        Labels(marks, fresh, open, tap, window is null ? null : (axes.Middle(window), NameOf(window)));
        return new(id, Wide, High, window is null ? "Conductivity and pH of the can" : $"Conductivity and pH of the can in the window of {window.Crop.Name}", Describe(report, window, water), marks);
    }

    private static void Window(List<Mark> marks, Axes axes, CanWindow window)
    {
        var (x1, x2) = window.Ec is { } ec ? (axes.X(ec.Low), axes.X(ec.High)) : (Left, Right);
        var shape = Rectangle(x1, axes.Y(window.PH.High), Math.Max(x2, x1 + 3), axes.Y(window.PH.Low));
        marks.Add(new Group($"Window of {window.Crop.Name}: pH {Figures.Number(window.PH.Low, 1)} to {Figures.Number(window.PH.High, 1)}{(window.Ec is { } e ? $", EC {Figures.Number(e.Low, 2)} to {Figures.Number(e.High, 2)} mS/cm" : "")}",
            [new Shape(shape, Tone.LeafWash), new Strokes(Hatch.Inside(shape, 7, 1), Tone.Line, 0.75), new Shape(shape, Tone.None, Tone.Leaf, 1.25, Dashed: true)]));
    }

    private static void Grid(List<Mark> marks, Axes axes)
    {
        var lines = new List<(Spot, Spot)>();
        foreach (var ec in axes.EcTicks)
        {
            lines.Add((new(axes.X(ec), Bottom), new(axes.X(ec), Bottom + 4)));
            marks.Add(new Words(new(axes.X(ec), Bottom + 17), Figures.Short(ec, 4), 12, Tone.Ink, Anchor.Middle));
        }

        foreach (var ph in axes.PhTicks)
        {
            lines.Add((new(Left - 4, axes.Y(ph)), new(Left, axes.Y(ph))));
            marks.Add(new Words(new(Left - 7, axes.Y(ph) + 4), Figures.Short(ph), 12, Tone.Ink, Anchor.End));
        }

        marks.Add(new Strokes(lines, Tone.Edge, 1));
        marks.Add(new Strokes([(new(Left, Top), new(Left, Bottom)), (new(Left, Bottom), new(Right, Bottom))], Tone.Edge, 1.25));
        marks.Add(new Words(new(Right, Bottom + 36), "EC, mS/cm at 25 °C", 13, Tone.Ink, Anchor.End, Face.Bold));
        marks.Add(new Words(new(6, 13), "pH", 13, Tone.Ink, Anchor.Start, Face.Bold));
    }

    private static void Labels(List<Mark> marks, Spot fresh, Spot open, Spot tap, (Spot At, string Name)? window)
    {
        var wishes = new List<LabelWish>
        {
            new(fresh, 9, "fresh", 13, Face.Bold),
            new(open, 9, "left open", 13),
            new(tap, 7, "the water", 12),
        };
        if (window is { } named)
        {
            wishes.Add(new(named.At, 1, named.Name, 12));
        }

        var placed = LabelPlacement.Place(wishes, [], new Box(Left + 2, 2, Wide - 2, Bottom - 2), []);
        for (var i = 0; i < placed.Count; i++)
        {
            if (placed[i].Box is not { } box)
            {
                continue;
            }

            if (placed[i].Leader is { } leader)
            {
                marks.Add(new Strokes([leader], Tone.Edge, 0.75));
            }

            marks.Add(new Words(new(box.Left, box.Bottom - (placed[i].Wish.Size * 0.28)), placed[i].Wish.Text, placed[i].Wish.Size, i < 2 ? Tone.Ember : i < 3 ? Tone.Ink : Tone.Leaf, Face: placed[i].Wish.Face, Halo: true));
        }
    }

    private static string NameOf(CanWindow window) => TextWidth.Fit(Safe.Plain(window.Crop.Name), 130, 12);

    private static Spot[] Rectangle(double x1, double y1, double x2, double y2) => [new(x1, y1), new(x2, y1), new(x2, y2), new(x1, y2)];

    private static string Said(CanState state) => $"EC {Figures.Number(state.Ec25, 2)} mS/cm, pH {Figures.Number(state.PH, 1)}";

    private static string Describe(CanReport report, CanWindow? window, CanState water)
    {
        var words = $"Fresh: {Said(report.Closed)}. Left open to the air: {Said(report.Open)}. The water alone: {Said(water)}.";
        return window is null ? words : words
            + $" {window.Crop.Name} wants pH {Figures.Number(window.PH.Low, 1)} to {Figures.Number(window.PH.High, 1)}"
            + (window.Ec is { } ec ? $"; at its nitrogen this feed has EC {Figures.Number(ec.Low, 2)} to {Figures.Number(ec.High, 2)} mS/cm." : ".");
    }

    private sealed record Axes(double EcMost, double EcStep, double PhLeast, double PhMost)
    {
        public IEnumerable<double> EcTicks => Enumerable.Range(0, (int)Math.Round(EcMost / EcStep) + 1).Select(i => i * EcStep);

        public IEnumerable<double> PhTicks => Enumerable.Range((int)PhLeast, (int)(PhMost - PhLeast) + 1).Select(i => (double)i);

        public static Axes For(CanReport report, CanWindow? window, CanState water)
        {
            var most = 1.1 * Math.Max(Math.Max(report.Closed.Ec25, report.Open.Ec25), Math.Max(water.Ec25, window?.Ec?.High ?? 0));
            var step = Step(most / 5);
            var phs = new[] { report.Closed.PH, report.Open.PH, water.PH, window?.PH.Low ?? 5.5, window?.PH.High ?? 6.5 };
            return new(step * Math.Max(2, Math.Ceiling(most / step)), step, Math.Max(0, Math.Floor(phs.Min() - 0.3)), Math.Min(14, Math.Ceiling(phs.Max() + 0.3)));
        }

        public double X(double ec) => Left + (Math.Clamp(ec / EcMost, 0, 1) * (Right - Left));

        public double Y(double ph) => Bottom - (Math.Clamp((ph - PhLeast) / (PhMost - PhLeast), 0, 1) * (Bottom - Top));

        /// <summary>Left in the middle of the window's height, and under it where it is too narrow: its name stands to the right of that.</summary>
        public Spot Middle(CanWindow window)
        {
            var (left, right) = window.Ec is { } ec ? (X(ec.Low), X(ec.High)) : (Left + 2, Right);
            var fits = TextWidth.Of(NameOf(window), 12) + 6 < right - left;
            return fits ? new(left, (Y(window.PH.Low) + Y(window.PH.High)) / 2) : new(left - 2, Math.Min(Y(window.PH.Low) + 11, Bottom - 12));
        }

        public Spot At(CanState state) => new(X(state.Ec25), Y(state.PH));

        // 1, 2 or 5 of a power of ten.
        private static double Step(double rough)
        {
            var power = Math.Pow(10, Math.Floor(Math.Log10(Math.Max(rough, 1e-3))));
            return power * ((rough / power) switch { <= 1 => 1, <= 2 => 2, <= 5 => 5, _ => 10 });
        }
    }
}
