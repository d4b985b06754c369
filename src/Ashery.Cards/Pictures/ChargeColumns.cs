using Ashery.Cards.Drawing;
using Ashery.Solutions.Waters;

namespace Ashery.Cards.Pictures;

/// <summary>
/// The ions of a water as two columns of equal height, cations left, anions right, in meq/L. What the report does not say is hatched with a
/// dashed edge; what was added only to close a balance that is off is an open dashed box marked as the gap.
/// </summary>
public static class ChargeColumns
{
    private const double Wide = 360;
    private const double Top = 34;
    private const double Bottom = 286;
    private const double Apart = 16;
    private static readonly Tone[] Washes = [Tone.WaterWash, Tone.LeafWash, Tone.EmberWash];

    /// <summary>As SVG, for a page or a file; 360 wide, scales freely.</summary>
    public static string Svg(WaterReading reading, SvgFor use = SvgFor.Page, string id = "charges") => SvgWriter.Write(Draw(reading, id), use);

    public static Picture Draw(WaterReading reading, string id = "charges")
    {
        var marks = new List<Mark>();
        var most = Math.Max(1e-9, Math.Max(Sum(reading.Sides.Cations), Sum(reading.Sides.Anions)));
        marks.Add(new Words(new(150, 20), "cations", 13, Tone.Ink, Anchor.Middle, Face.Bold));
        marks.Add(new Words(new(215, 20), "anions", 13, Tone.Ink, Anchor.Middle, Face.Bold));
        Column(marks, reading, reading.Sides.Cations, most, 122, 178, toLeft: true);
        Column(marks, reading, reading.Sides.Anions, most, 187, 243, toLeft: false);
        marks.Add(new Strokes([(new(116, Bottom), new(249, Bottom))], Tone.Edge, 1.25));
        var sum = Figures.Number(most, most < 1 ? 2 : 1);
        marks.Add(new Words(new(182, Bottom + 18), $"{sum} meq/L on each side", 12, Tone.Soft, Anchor.Middle));
        return new(id, Wide, Bottom + 26, "Charge of cations and anions", Describe(reading, sum), marks);
    }

    private static void Column(List<Mark> marks, WaterReading reading, IReadOnlyList<BalanceIon> ions, double most, double left, double right, bool toLeft)
    {
        var boxes = new List<(BalanceIon Ion, double Top, double Bottom)>();
        var y = Bottom;
        for (var i = 0; i < ions.Count; i++)
        {
            var ion = ions[i];
            var gap = reading.Closing is var (quantity, moles) && quantity == ion.Quantity ? Math.Min(ion.Charge, moles * 1000) : 0;
            var top = y - (ion.Charge / most * (Bottom - Top));
            var inner = y - ((ion.Charge - gap) / most * (Bottom - Top));
            Box(marks, ion, left, inner, right, y, Washes[i % Washes.Length]);
            if (gap > 0)
            {
                Gap(marks, gap, left, top, right, inner);
            }

            boxes.Add((ion with { Charge = ion.Charge - gap }, inner, y));
            y = top;
        }

        Labels(marks, [.. boxes.Where(b => b.Ion.Charge >= 0.005 * most)], left, right, toLeft);
    }

    private static void Box(List<Mark> marks, BalanceIon ion, double left, double top, double right, double bottom, Tone wash)
    {
        Spot[] box = [new(left, top), new(right, top), new(right, bottom), new(left, bottom)];
        var inner = new List<Mark> { new Shape(box, wash, ion.Estimated ? Tone.None : Tone.Edge, 1) };
        if (ion.Estimated)
        {
            inner.Add(new Strokes(Hatch.Inside(box, 7, 1), Tone.Edge, 0.75));
            inner.Add(new Shape(box, Tone.None, Tone.Edge, 1.25, Dashed: true));
        }

        marks.Add(new Group($"{ion.Quantity}: {Figures.Number(ion.Charge, 2)} meq/L{(ion.Estimated ? ", estimated" : "")}", inner));
    }

    private static void Gap(List<Mark> marks, double gap, double left, double top, double right, double bottom)
    {
        Spot[] box = [new(left, top), new(right, top), new(right, bottom), new(left, bottom)];
        marks.Add(new Group($"Gap: {Figures.Number(gap, 2)} meq/L", [new Shape(box, Tone.Sheet, Tone.Ember, 2, Dashed: true)]));
        if (bottom - top >= 15)
        {
            marks.Add(new Words(new((left + right) / 2, ((top + bottom) / 2) + 4), $"gap {Figures.Number(gap, gap < 0.1 ? 2 : 1)}", 12, Tone.Ember, Anchor.Middle, Face.Bold));
        }
    }

    // Names beside the column, no two nearer than a line; a leader where the name had to move.
    private static void Labels(List<Mark> marks, List<(BalanceIon Ion, double Top, double Bottom)> boxes, double left, double right, bool toLeft)
    {
        var at = boxes.ConvertAll(static b => (b.Top + b.Bottom) / 2);
        for (var i = 1; i < at.Count; i++)
        {
            at[i] = Math.Min(at[i], at[i - 1] - Apart);
        }

        for (var i = at.Count - 1; i >= 0; i--)
        {
            at[i] = Math.Max(at[i], i == at.Count - 1 ? 8 : at[i + 1] + Apart);
        }

        for (var i = 0; i < at.Count; i++)
        {
            var (ion, top, bottom) = boxes[i];
            var (edge, text) = toLeft ? (left, left - 16) : (right, right + 16);
            marks.Add(new Strokes([(new(edge, (top + bottom) / 2), new(toLeft ? text + 3 : text - 3, at[i]))], Tone.Edge, 0.75));
            marks.Add(new Words(new(text, at[i] + 4), $"{Name(ion)} {Figures.Number(ion.Charge, ion.Charge < 0.1 ? 2 : 1)}{(ion.Estimated ? " est." : "")}", 12, Tone.Ink, toLeft ? Anchor.End : Anchor.Start));
        }
    }

    private static string Name(BalanceIon ion) => ion.Symbol == "alkalinity" ? "HCO3" : ion.Symbol == "H" ? "acid" : ion.Symbol;

    private static double Sum(IReadOnlyList<BalanceIon> ions) => ions.Sum(static i => i.Charge);

    private static string Describe(WaterReading reading, string sum)
    {
        var words = $"Cations: {List(reading.Sides.Cations)}. Anions: {List(reading.Sides.Anions)}. {sum} meq/L on each side.";
        return reading.Closing is var (quantity, moles) ? $"{words} Of the {quantity}, {Figures.Number(moles * 1000, 2)} meq/L were added to close the balance." : words;
    }

    private static string List(IReadOnlyList<BalanceIon> ions) =>
        string.Join(", ", ions.Select(static i => $"{i.Quantity} {Figures.Number(i.Charge, 2)}{(i.Estimated ? " (estimated)" : "")}"));
}
