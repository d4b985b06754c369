using Ashery.Cards.Drawing;
using Ashery.Solutions.Acids;

namespace Ashery.Cards.Pictures;

/// <summary>
/// pH against acid: a full line just mixed, a dashed one after standing in the air, and an upright at the dose that ends in a diamond on the one
/// and a ring on the other. The water before the acid is a small square.
/// </summary>
public static class AcidCurvePicture
{
    private const double Wide = 360;
    private const double High = 300;
    private const double Left = 44;
    private const double Right = Wide - 16;
    private const double Top = 30;
    private const double Bottom = High - 46;

    public static string Svg(AcidReport report, SvgFor use = SvgFor.Page, string id = "acid") => SvgWriter.Write(Draw(report, id), use);

    public static Picture Draw(AcidReport report, string id = "acid")
    {
        // In mL of the bottle where it is poured, else in grams.
        var liquid = report.Amount.MillilitresPerLitre is not null;
        var scale = liquid ? 1 / report.Request.Bottle.Density!.Value : 1;
        var dose = report.Amount.GramsPerLitre * scale;
        var most = report.Curve[^1].GramsPerLitre * scale;
        var low = Math.Floor(report.Curve.Min(static p => Math.Min(p.Closed, p.Open)));
        var high = Math.Ceiling(report.Curve.Max(static p => Math.Max(p.Closed, p.Open)));
        double X(double amount) => Left + (amount / Math.Max(most, 1e-12) * (Right - Left));
        double Y(double pH) => Bottom - ((pH - low) / Math.Max(1, high - low) * (Bottom - Top));

        var marks = new List<Mark> { new Shape([new(Left, Top), new(Right, Top), new(Right, Bottom), new(Left, Bottom)], Tone.Sheet) };
        Grid(marks, low, high, Y);
        marks.Add(new Strokes(Line(report, static p => p.Open, scale, X, Y), Tone.Water, 2, Dashed: true));
        marks.Add(new Strokes(Line(report, static p => p.Closed, scale, X, Y), Tone.Ember, 2.25));
        Spot start = new(X(0), Y(report.Before.PH)), mixed = new(X(dose), Y(report.Mixed.PH)), standing = new(X(dose), Y(report.Standing.PH));
        marks.Add(new Strokes([(new(mixed.X, Bottom), new(mixed.X, Top))], Tone.Edge, 1, Dashed: true));
        marks.Add(new Group(Said("The water as it comes", report.Before), [new Shape([new(start.X - 4, start.Y - 4), new(start.X + 4, start.Y - 4), new(start.X + 4, start.Y + 4), new(start.X - 4, start.Y + 4)], Tone.Sheet, Tone.Edge, 1.5)]));
        marks.Add(new Group(Said("After standing", report.Standing), [new Disc(standing, 6, Tone.Sheet, Tone.Water, 2)]));
        marks.Add(new Group(Said("Just mixed", report.Mixed), [new Shape([new(mixed.X, mixed.Y - 7), new(mixed.X + 7, mixed.Y), new(mixed.X, mixed.Y + 7), new(mixed.X - 7, mixed.Y)], Tone.Ember, Tone.Sheet, 1)]));
        var unit = liquid ? "mL" : "g";
        marks.Add(new Words(new(Math.Clamp(mixed.X, Left + 40, Right - 40), Bottom + 17), $"{Amount(dose)} {unit}", 13, Tone.Ink, Anchor.Middle, Face.Bold));
        if (mixed.X > Left + 80)
        {
            marks.Add(new Words(new(Left, Bottom + 17), "0", 12, Tone.Ink, Anchor.Middle));
        }

        marks.Add(new Words(new(Right, Bottom + 37), $"{unit} of {Figures.Short(report.Request.Bottle.Strength * 100, 1)} % {report.Request.Bottle.Acid.Name} a litre", 12, Tone.Ink, Anchor.End));
        marks.Add(new Words(new(6, Top - 8), "pH", 13, Tone.Ink, Anchor.Start, Face.Bold));
        Labels(marks, mixed, standing);
        return new(id, Wide, High, "pH against acid", Describe(report, dose, unit), marks);
    }

    private static void Grid(List<Mark> marks, double low, double high, Func<double, double> y)
    {
        var lines = new List<(Spot, Spot)>();
        for (var pH = low; pH <= high; pH++)
        {
            lines.Add((new(Left - 4, y(pH)), new(Right, y(pH))));
            marks.Add(new Words(new(Left - 8, y(pH) + 4), Figures.Short(pH, 0), 12, Tone.Ink, Anchor.End));
        }

        marks.Add(new Strokes(lines, Tone.Line, 0.75));
        marks.Add(new Strokes([(new(Left, Top), new(Left, Bottom)), (new(Left, Bottom), new(Right, Bottom))], Tone.Edge, 1.25));
    }

    private static void Labels(List<Mark> marks, Spot mixed, Spot standing)
    {
        // Both curves fall to the right: above and to the right of a point, and below and to the left of it, no curve runs.
        marks.Add(new Words(new(standing.X + 11, Math.Clamp(standing.Y - 6, Top + 12, Bottom - 6)), "after standing", 12, Tone.Water, Halo: true));
        var left = mixed.X - 11 - TextWidth.Of("just mixed", 12, Face.Bold) > Left;
        var y = Math.Clamp(mixed.Y + 15, Top + 12, Bottom - 6);
        marks.Add(new Words(new(left ? mixed.X - 9 : mixed.X + 11, y), "just mixed", 12, Tone.Ember, left ? Anchor.End : Anchor.Start, Face.Bold, Halo: true));
    }

    private static List<(Spot, Spot)> Line(AcidReport report, Func<AcidCurvePoint, double> pH, double scale, Func<double, double> x, Func<double, double> y)
    {
        var lines = new List<(Spot, Spot)>();
        for (var i = 1; i < report.Curve.Count; i++)
        {
            lines.Add((new(x(report.Curve[i - 1].GramsPerLitre * scale), y(pH(report.Curve[i - 1]))), new(x(report.Curve[i].GramsPerLitre * scale), y(pH(report.Curve[i])))));
        }

        return lines;
    }

    private static string Said(string when, AcidStage stage) => $"{when}: pH {Figures.Number(stage.PH, 1)}, alkalinity {Figures.Number(stage.Alkalinity, 0)} mg/L";

    private static string Amount(double value) => Figures.Short(value, value < 0.1 ? 4 : 3);

    private static string Describe(AcidReport report, double dose, string unit) =>
        $"{Amount(dose)} {unit} a litre. {Said("As it comes", report.Before)}. {Said("Just mixed", report.Mixed)}. {Said("After standing in the air", report.Standing)}.";
}
