using System.Globalization;
using Ashery.Cards.Drawing;
using Ashery.Trials.Results;

namespace Ashery.Cards.Pictures;

/// <summary>
/// A trial at a glance: above, each comparison with its interval against the upright of no difference (full line and filled diamond where the interval leaves it
/// out, dashed and hollow where it does not); below, every pot as a ring and each feed's mean as a bar. Ratios stand on a scale of equal factors.
/// </summary>
public static class EstimatePicture
{
    private const double Wide = 360;
    private const double Left = 14;
    private const double Right = Wide - 14;
    private const double RowHigh = 44;

    // An interval that runs further ends in an arrow of its figure alone.
    private const double MostRatio = 20;

    public static string Svg(TrialReport report, SvgFor use = SvgFor.Page, string id = "trial") => SvgWriter.Write(Draw(report, id), use);

    public static Picture Draw(TrialReport report, string id = "trial")
    {
        var marks = new List<Mark>();
        var y = 18.0;
        var shown = report.Comparisons.Where(static c => c.Estimate is not null).ToList();
        if (shown.Count > 0)
        {
            y = Intervals(marks, report, shown, y);
        }

        y = Pots(marks, report, y);
        return new(id, Wide, y, $"Trial {Safe.Plain(report.Trial.Name)}", Said(report), marks);
    }

    private static double Intervals(List<Mark> marks, TrialReport report, List<Comparison> shown, double top)
    {
        var ratio = report.IsRatio;
        var none = ratio ? 1.0 : 0;
        double low = Math.Min(none, shown.Min(static c => c.Low!.Value)), high = Math.Max(none, shown.Max(static c => c.High!.Value));
        (low, high) = ratio ? (Math.Clamp(low, 1 / MostRatio, 0.8), Math.Clamp(high, 1.25, MostRatio)) : (low, high);
        var (from, to) = ratio ? (Math.Log(low), Math.Log(high)) : (low, high);
        var room = (to - from) * 0.06;
        double X(double value) => Left + ((Math.Clamp(ratio ? Math.Log(Math.Max(value, 1e-9)) : value, from, to) - from + room) / (to - from + (2 * room)) * (Right - Left));

        var zero = X(none);
        marks.Add(new Words(new(Left, top), ratio ? "times as many" : $"more or less{(report.Trial.Measure.Unit.Length > 0 ? ", " + Safe.Plain(report.Trial.Measure.Unit) : string.Empty)}", 12, Tone.Soft));
        var y = top + 10;
        var bottom = y + (shown.Count * RowHigh);
        marks.Add(new Strokes([(new(zero, y), new(zero, bottom))], Tone.Edge, 1.5));
        foreach (var c in shown)
        {
            var shows = c.Shows(ratio) == true;
            var (l, e, h) = (X(c.Low!.Value), X(c.Estimate!.Value), X(c.High!.Value));
            var middle = y + 30;
            var tone = shows ? Tone.Leaf : Tone.Edge;
            marks.Add(new Group(OneSaid(report, c),
            [
                new Strokes([(new(l, middle), new(h, middle))], tone, shows ? 3 : 2, Dashed: !shows),
                new Strokes([(new(l, middle - 6), new(l, middle + 6)), (new(h, middle - 6), new(h, middle + 6))], tone, 2),
                new Shape([new(e, middle - 8), new(e + 8, middle), new(e, middle + 8), new(e - 8, middle)], shows ? Tone.Leaf : Tone.Sheet, tone, 2),
            ]));
            var figure = $"{TrialAnswer.Figure(c.Estimate.Value)} ({TrialAnswer.Figure(c.Low.Value)} to {TrialAnswer.Figure(c.High.Value)})";
            marks.Add(new Words(new(Left, y + 16), TextWidth.Fit($"{Name(report, c.Feed)} against {Name(report, c.Against)}", 180, 13), 13, Halo: true));
            marks.Add(new Words(new(Right, y + 16), TextWidth.Fit(figure, 148, 12, Face.Bold), 12, Tone.Ink, Anchor.End, Face.Bold, Halo: true));
            y += RowHigh;
        }

        marks.Add(new Words(new(Math.Clamp(zero, Left + 40, Right - 40), y + 13), "no difference", 12, Tone.Soft, Anchor.Middle));
        return y + 34;
    }

    private static double Pots(List<Mark> marks, TrialReport report, double top)
    {
        var (low, high) = (Math.Min(report.IsRatio ? 0 : double.MaxValue, report.Pots.Min(static p => p.Value)), report.Pots.Max(static p => p.Value));
        var span = high - low > 0 ? high - low : 1;
        double X(double value) => Left + 6 + ((value - low) / span * (Right - Left - 12));
        marks.Add(new Words(new(Left, top), TextWidth.Fit($"{Safe.Plain(report.Trial.Measure.Name)}, each pot a ring", Right - Left, 12), 12, Tone.Soft));
        var y = top + 8;
        foreach (var group in report.Groups)
        {
            var middle = y + 32;
            marks.Add(new Words(new(Left, y + 16), TextWidth.Fit(Safe.Plain(group.Name), 180, 13), 13, Halo: true));
            marks.Add(new Words(new(Right, y + 16), $"mean {TrialAnswer.Figure(group.Mean)} of {Whole(group.Pots)}", 12, Tone.Ink, Anchor.End, Face.Bold, Halo: true));
            marks.Add(new Strokes([(new(Left, middle), new(Right, middle))], Tone.Line, 1));
            foreach (var pot in report.Pots.Where(p => p.Treatment == group.Treatment))
            {
                marks.Add(new Group($"{Safe.Plain(pot.Pot)}: {TrialAnswer.Figure(pot.Value)}", [new Disc(new(X(pot.Value), middle), 5, Tone.None, Tone.Water, 1.5)]));
            }

            marks.Add(new Strokes([(new(X(group.Mean), middle - 9), new(X(group.Mean), middle + 9))], Tone.Ember, 3));
            y += 50;
        }

        marks.Add(new Words(new(Left, y + 12), TrialAnswer.Figure(low), 12, Tone.Soft));
        marks.Add(new Words(new(Right, y + 12), TrialAnswer.Figure(high), 12, Tone.Soft, Anchor.End));
        return y + 22;
    }

    private static string Said(TrialReport report) => string.Join(' ', [
        .. report.Comparisons.Where(static c => c.Estimate is not null).Select(c => OneSaid(report, c)),
        .. report.Groups.Select(static g => $"{Safe.Plain(g.Name)}: mean {TrialAnswer.Figure(g.Mean)} of {Whole(g.Pots)} pots, from {TrialAnswer.Figure(g.Least)} to {TrialAnswer.Figure(g.Most)}."),
    ]);

    private static string OneSaid(TrialReport report, Comparison c) =>
        $"{Name(report, c.Feed)} against {Name(report, c.Against)}: {TrialAnswer.Figure(c.Estimate!.Value)}, interval {TrialAnswer.Figure(c.Low!.Value)} to {TrialAnswer.Figure(c.High!.Value)}, {(c.Shows(report.IsRatio) == true ? "which leaves out no difference." : "which holds no difference.")}";

    private static string Name(TrialReport report, string id) => Safe.Plain(report.Trial.Find(id)?.Name ?? id);

    private static string Whole(int n) => n.ToString(CultureInfo.InvariantCulture);
}
