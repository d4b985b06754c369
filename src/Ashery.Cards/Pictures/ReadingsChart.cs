using System.Globalization;
using Ashery.Cards.Drawing;
using Ashery.Journal;

namespace Ashery.Cards.Pictures;

/// <summary>
/// A pot's readings over time, a panel a kind, one under the other on the same days: dots joined by a line, the crop's band shaded, feeds as
/// marks above, what happened to the pot as dashed lines through all.
/// </summary>
public static class ReadingsChart
{
    private const double Left = 46, Margin = 12, PanelHigh = 92, MarkRadius = 5;

    /// <summary>As SVG.</summary>
    public static string Svg(ReadingsView view, double width = 360, SvgFor use = SvgFor.Page, string id = "readings") => SvgWriter.Write(Draw(view, width, id), use);

    /// <summary>As a picture for any surface.</summary>
    public static Picture Draw(ReadingsView view, double width = 360, string id = "readings")
    {
        var scale = new Scale(view.From, view.To, Left, Math.Max(width, 240) - Margin);
        var marks = new List<Mark>();
        var y = Months(marks, scale);
        y = Feeds(marks, view, scale, y + 4);
        var top = y;
        foreach (var panel in view.Panels)
        {
            y = Panel(marks, panel, scale, y + 8);
        }

        Events(marks, view, scale, top, y);
        return new(id, scale.Right + Margin, y + 8, $"Readings of {Safe.Plain(view.Name)}", Describe(view), marks);
    }

    private static double Months(List<Mark> marks, Scale scale)
    {
        const double y = 20;
        List<(Spot, Spot)> ticks = [];
        foreach (var (from, to) in scale.Months())
        {
            var (x1, x2) = (scale.X(from), scale.X(to));
            var name = from.ToString("MMM", CultureInfo.InvariantCulture);
            var text = TextWidth.Of(name, 12) <= x2 - x1 - 1 ? name : name[..1];
            if (TextWidth.Of(text, 12) <= x2 - x1 - 1)
            {
                marks.Add(new Words(new((x1 + x2) / 2, y - 5), text, 12, Tone.Ink, Anchor.Middle));
            }

            ticks.Add((new(x1, y - 3), new(x1, y + 3)));
        }

        marks.Add(new Strokes([(new(scale.Left, y), new(scale.Right, y)), .. ticks], Tone.Edge, 1.25));
        return y;
    }

    private static double Feeds(List<Mark> marks, ReadingsView view, Scale scale, double y)
    {
        if (view.Feeds.Count == 0)
        {
            return y;
        }

        var rows = new Rows();
        foreach (var feed in view.Feeds.DistinctBy(static f => (f.Day, f.Kind)).OrderBy(static f => f.Day))
        {
            var x = Math.Clamp(scale.X(feed.Day), scale.Left + MarkRadius, scale.Right - MarkRadius);
            var row = rows.Take(x - MarkRadius, x + MarkRadius, 0.5);
            marks.Add(new Group($"{Figures.Day(feed.Day, year: true)}: {Safe.Plain(feed.Name)}", FeedMarks.Draw(feed.Kind, new(x, y + 8 + (row * 13)), MarkRadius)));
        }

        marks.Add(new Words(new(scale.Left - 4, y + 12), "feeds", 12, Tone.Soft, Anchor.End));
        return y + 16 + (Math.Max(0, rows.Count - 1) * 13);
    }

    private static double Panel(List<Mark> marks, ReadingPanel panel, Scale scale, double y)
    {
        y += 16;
        var (series, band) = (panel.Series, panel.Band);
        var unit = MeasuredWords.Unit(series.What);
        marks.Add(new Words(new(4, y - 5), MeasuredWords.Name(series.What) + (unit.Length > 0 ? $", {unit}" : ""), 13, Tone.Ink, Face: Face.Bold));
        var axis = ValueAxis.Over(Math.Min(series.Least, band?.Low ?? double.MaxValue), Math.Max(series.Most, band?.High ?? double.MinValue), y + 4, y + PanelHigh);
        if (band is not null)
        {
            var (high, low) = (axis.Y(band.High), axis.Y(band.Low));
            marks.Add(new Group($"{MeasuredWords.Figure(Math.Round(band.Low, 2))} to {MeasuredWords.Figure(Math.Round(band.High, 2))}: {Safe.Plain(band.Words)}", [new Shape([new(scale.Left, high), new(scale.Right, high), new(scale.Right, low), new(scale.Left, low)], Tone.LeafWash, Tone.Leaf, 0.75)]));
        }

        List<(Spot, Spot)> grid = [];
        foreach (var tick in axis.Ticks)
        {
            grid.Add((new(scale.Left, axis.Y(tick)), new(scale.Right, axis.Y(tick))));
            marks.Add(new Words(new(scale.Left - 5, axis.Y(tick) + 4), Figures.Short(tick, 2), 12, Tone.Soft, Anchor.End));
        }

        marks.Add(new Strokes(grid, Tone.Line, 0.75));
        Spot[] spots = [.. series.Points.Select(p => new Spot(scale.X(p.Day), axis.Y(p.Value)))];
        marks.Add(new Strokes([.. spots.Zip(spots.Skip(1))], Tone.Ink, 1.75));
        for (var i = 0; i < spots.Length; i++)
        {
            var (point, inside) = (series.Points[i], band is null || band.Holds(series.Points[i].Value));
            IReadOnlyList<Mark> dot = inside
                ? [new Disc(spots[i], 4, Tone.Sheet, Tone.Ink, 2)]

                // Outside is told by the shape, not by the colour alone.
                : [new Shape([new(spots[i].X, spots[i].Y - 6), new(spots[i].X + 6, spots[i].Y), new(spots[i].X, spots[i].Y + 6), new(spots[i].X - 6, spots[i].Y)], Tone.Ember, Tone.Sheet, 1)];
            marks.Add(new Group($"{Figures.Day(point.Day, year: true)}: {MeasuredWords.Value(series.What, point.Value)}{(inside ? "" : ", outside the band")}", dot));
        }

        return y + PanelHigh;
    }

    private static void Events(List<Mark> marks, ReadingsView view, Scale scale, double top, double bottom)
    {
        foreach (var day in view.Events.GroupBy(static e => e.Day))
        {
            var x = scale.X(day.Key);
            marks.Add(new Group($"{Figures.Day(day.Key, year: true)}: {Safe.Plain(string.Join("; ", day.Select(static e => e.Words)))}", [new Strokes([(new(x, top), new(x, bottom))], Tone.Water, 1.5, Dashed: true)]));
        }
    }

    private static string Describe(ReadingsView view)
    {
        var kinds = view.Panels.Select(static p => FormattableString.Invariant(
            $"{MeasuredWords.Name(p.Series.What)}: {p.Series.Points.Count} readings from {p.Series.Least:0.##} to {p.Series.Most:0.##} {MeasuredWords.Unit(p.Series.What)}").TrimEnd()
            + (p.Band is null ? "." : FormattableString.Invariant($", band {p.Band.Low:0.#} to {p.Band.High:0.#}, {p.Series.Points.Count(r => !p.Band.Holds(r.Value))} outside.")));
        return string.Join(' ', kinds) + FormattableString.Invariant($" {view.Feeds.Select(static f => f.Day).Distinct().Count()} days of feeding.");
    }
}
