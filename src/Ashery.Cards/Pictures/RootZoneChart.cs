using System.Globalization;
using Ashery.Cards.Drawing;
using Ashery.Feeds;
using Ashery.Planning;
using Ashery.Planning.Fit;

namespace Ashery.Cards.Pictures;

/// <summary>
/// A pot's root zone through the year: salts above, nitrogen below, each with the safe band shaded, the median as a line between the edges of nine made years
/// in ten; feeds as marks, rain as strokes from the top of their lane.
/// </summary>
public static class RootZoneChart
{
    private const double Left = 40, Margin = 12, PanelHigh = 128, LaneHigh = 22, RainHigh = 34, MarkRadius = 5;

    // Rain of a usual day that fills its lane, mm.
    private const double MostRain = 12;

    /// <summary>As SVG.</summary>
    public static string Svg(RootZoneView view, double width = 360, SvgFor use = SvgFor.Page, string id = "root-zone") => SvgWriter.Write(Draw(view, width, id), use);

    /// <summary>As a picture for any surface.</summary>
    public static Picture Draw(RootZoneView view, double width = 360, string id = "root-zone")
    {
        var to = view.From.AddDays(view.Course.Days.Count - 1);
        var scale = new Scale(view.From, to, Left, Math.Max(width, 240) - Margin);
        var marks = new List<Mark>();
        var y = Months(marks, scale);
        y = Feeds(marks, view, scale, y + 4);
        y = Rain(marks, view, scale, y);
        y = Panel(marks, view, scale, y + 8, Salts(view));
        y = Panel(marks, view, scale, y + 8, Nitrogen(view));
        Today(marks, view, scale, y);
        return new(id, scale.Right + Margin, y + 6, $"Root zone of {view.Name}", Describe(view), marks);
    }

    private static Figure Salts(RootZoneView view) => new(
        "EC of the saturated extract, mS/cm", view.Course.Limits.MostEc, static d => d.Ec, [.. view.Measured.Where(static m => m.IsEc).Select(static m => (m.Date, m.Value))]);

    private static Figure Nitrogen(RootZoneView view) => new(
        "Nitrogen in the pore water, mg/L", view.Course.Limits.MostNitrogen, static d => d.Nitrogen, [.. view.Measured.Where(static m => !m.IsEc).Select(static m => (m.Date, m.Value))]);

    private static double Months(List<Mark> marks, Scale scale)
    {
        const double y = 20;
        foreach (var (from, to) in scale.Months())
        {
            var (x1, x2) = (scale.X(from), scale.X(to));
            var name = from.ToString("MMM", CultureInfo.InvariantCulture);

            // The stub of a month at either end has no name where whole months have theirs in full.
            var text = TextWidth.Of(name, 11) <= x2 - x1 - 1 ? name : name[..1];
            if (TextWidth.Of(text, 11) <= x2 - x1 && (text == name || to.DayNumber - from.DayNumber >= 27))
            {
                marks.Add(new Words(new((x1 + x2) / 2, y - 5), text, 11, Tone.Ink, Anchor.Middle));
            }
        }

        marks.Add(new Strokes([(new(scale.Left, y), new(scale.Right, y))], Tone.Edge, 1.25));
        return y;
    }

    private static double Feeds(List<Mark> marks, RootZoneView view, Scale scale, double y)
    {
        var rows = new Rows();
        foreach (var feed in view.Feeds.DistinctBy(static f => (f.Date, f.Kind)).OrderBy(static f => f.Date))
        {
            var x = Math.Clamp(scale.X(feed.Date), scale.Left + MarkRadius, scale.Right - MarkRadius);
            var row = rows.Take(x - MarkRadius, x + MarkRadius, 0.5);
            marks.Add(new Group($"{Figures.Day(feed.Date)}: {feed.FeedName}", FeedMarks.Draw(feed.Kind, new(x, y + 8 + (row * 14)), MarkRadius)));
        }

        marks.Add(new Words(new(scale.Left - 4, y + 12), "feeds", 11, Tone.Soft, Anchor.End));
        return y + LaneHigh + (Math.Max(0, rows.Count - 1) * 14);
    }

    private static double Rain(List<Mark> marks, RootZoneView view, Scale scale, double y)
    {
        var days = view.Course.Days;
        List<(Spot, Spot)> strokes = [];
        const int week = 7;
        for (var i = 0; i < days.Count; i += week)
        {
            var mean = days.Skip(i).Take(week).Average(static d => d.RainMm);
            var x = scale.X(view.From.AddDays(Math.Min(i + (week / 2), days.Count - 1)));
            strokes.Add((new(x, y), new(x, y + (RainHigh * Math.Min(1, mean / MostRain)))));
        }

        marks.Add(new Strokes(strokes, Tone.Water, 3));
        marks.Add(new Strokes([(new(scale.Left, y), new(scale.Right, y))], Tone.Line));
        marks.Add(new Words(new(scale.Left - 4, y + 12), "rain", 11, Tone.Soft, Anchor.End));
        return y + RainHigh;
    }

    private static double Panel(List<Mark> marks, RootZoneView view, Scale scale, double y, Figure figure)
    {
        var days = view.Course.Days;
        var top = Math.Max(figure.Most * 1.15, days.Count > 0 ? days.Max(d => figure.Of(d).High) * 1.05 : 0);
        top = Math.Max(top, figure.Measured.Count > 0 ? figure.Measured.Max(static m => m.Value) * 1.05 : 0);
        y += 16;
        marks.Add(new Words(new(scale.Left, y - 4), figure.Name, 12, Tone.Ink, Face: Face.Bold));
        var floor = y + PanelHigh;
        double Y(double value) => floor - (PanelHigh * Math.Clamp(value / top, 0, 1));

        marks.Add(new Shape([new(scale.Left, Y(figure.Most)), new(scale.Right, Y(figure.Most)), new(scale.Right, floor), new(scale.Left, floor)], Tone.LeafWash));
        List<Spot> edge = [];
        List<Spot> back = [];
        List<(Spot, Spot)> median = [];
        Spot? last = null;
        for (var i = 0; i < days.Count; i += 3)
        {
            var x = scale.X(view.From.AddDays(i));
            var band = figure.Of(days[i]);
            edge.Add(new(x, Y(band.High)));
            back.Insert(0, new(x, Y(band.Low)));
            var at = new Spot(x, Y(band.Median));
            if (last is { } before)
            {
                median.Add((before, at));
            }

            last = at;
        }

        marks.Add(new Group("Nine made years in ten lie within", [new Shape([.. edge, .. back], Tone.WaterWash, Tone.Water, 0.75)]));
        marks.Add(new Group("Median of the made years", [new Strokes(median, Tone.Ink, 2)]));
        marks.Add(new Strokes([(new(scale.Left, Y(figure.Most)), new(scale.Right, Y(figure.Most)))], Tone.Ember, 1.5, Dashed: true));
        marks.Add(new Words(new(scale.Right - 2, Y(figure.Most) - 4), "limit " + Short(figure.Most), 11, Tone.Ember, Anchor.End, Halo: true));
        marks.Add(new Strokes([(new(scale.Left, floor), new(scale.Right, floor)), (new(scale.Left, y), new(scale.Left, floor))], Tone.Edge));
        marks.Add(new Words(new(scale.Left - 4, floor), "0", 11, Tone.Soft, Anchor.End));
        if (floor - Y(figure.Most) > 18)
        {
            marks.Add(new Words(new(scale.Left - 4, Y(figure.Most) + 4), Short(figure.Most), 11, Tone.Soft, Anchor.End));
        }

        foreach (var (date, value) in figure.Measured)
        {
            marks.Add(new Group(FormattableString.Invariant($"Measured on {Figures.Day(date)}: {value:0.##}"), [new Disc(new(scale.X(date), Y(value)), 4, Tone.Sheet, Tone.Ember, 2)]));
        }

        return floor;
    }

    private static void Today(List<Mark> marks, RootZoneView view, Scale scale, double y)
    {
        if (view.Today is { } day && day >= scale.From && day <= scale.To)
        {
            var x = scale.X(day);
            marks.Add(new Group("Today", [new Strokes([(new(x, 20), new(x, y))], Tone.Ember, 1.25, Dashed: true)]));
        }
    }

    private static string Short(double most) => most.ToString(most >= 100 ? "0" : "0.#", CultureInfo.InvariantCulture);

    private static string Describe(RootZoneView view)
    {
        var (course, days) = (view.Course, view.Course.Days);
        return FormattableString.Invariant(
            $"Median EC between {days.Min(static d => d.Ec.Median):0.0} and {days.Max(static d => d.Ec.Median):0.0} mS/cm, limit {course.Limits.MostEc:0.0}; largest chance to pass it on a day {course.WorstOdds * 100:0} %. Median nitrogen between {days.Min(static d => d.Nitrogen.Median):0} and {days.Max(static d => d.Nitrogen.Median):0} mg/L, limit {course.Limits.MostNitrogen:0}. {view.Feeds.Select(static f => f.Date).Distinct().Count()} days of feeding.");
    }

    private sealed record Figure(string Name, double Most, Func<FitDay, FitBand> Of, IReadOnlyList<(DateOnly Date, double Value)> Measured);
}

/// <summary>What a chart of a root zone shows.</summary>
/// <param name="Name">Of the pot.</param>
/// <param name="From">First day.</param>
/// <param name="Course">Bands and bounds.</param>
/// <param name="Feeds">What the pot is given.</param>
public sealed record RootZoneView(string Name, DateOnly From, FitPotCourse Course, IReadOnlyList<PlannedFeed> Feeds)
{
    public DateOnly? Today { get; init; }

    /// <summary>What the grower measured.</summary>
    public IReadOnlyList<MeasuredPoint> Measured { get; init; } = [];
}

/// <summary>A measurement on a pot.</summary>
/// <param name="Date">When.</param>
/// <param name="IsEc">EC of the saturated extract, mS/cm; else nitrogen in the pore water, mg/L.</param>
/// <param name="Value">The figure.</param>
public sealed record MeasuredPoint(DateOnly Date, bool IsEc, double Value);
