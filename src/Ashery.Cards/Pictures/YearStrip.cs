using System.Globalization;
using Ashery.Cards.Drawing;
using Ashery.Climate;
using Ashery.Feeds;
using Ashery.Planning;

namespace Ashery.Cards.Pictures;

/// <summary>
/// The year as a strip: months across, seasons as bands told by pattern and name, below them a lane for each kind of feed
/// with a mark on every day one is given. Marks too near each other step down a row, so none hides another.
/// </summary>
public static class YearStrip
{
    private const double Margin = 12;
    private const double BandHigh = 20;
    private const double RowHigh = 15;
    private const double MarkRadius = 5;

    /// <summary>As SVG, for a page or a file. 360 suits a phone, 720 a wide page or paper.</summary>
    public static string Svg(YearPlan plan, DateOnly? today = null, double width = 360, SvgFor use = SvgFor.Page, string id = "year-strip") =>
        SvgWriter.Write(Draw(plan, today, width, id), use);

    /// <summary>As a picture for any surface.</summary>
    public static Picture Draw(YearPlan plan, DateOnly? today = null, double width = 360, string id = "year-strip")
    {
        var scale = new Scale(plan.From, plan.To, Margin, Math.Max(width, 240) - Margin);
        var front = new List<Mark>();
        var y = Months(front, scale, 22);
        y = Seasons(front, plan.Seasons, scale, y);
        y = Lanes(front, plan.Feeds, scale, y + 6);
        var marks = new List<Mark>();
        marks.Add(new Strokes(scale.MonthStarts().Select(d => (new Spot(scale.X(d), 28), new Spot(scale.X(d), y))).ToList(), Tone.Line, 0.75));
        y = Today(marks, today, scale, y);
        marks.AddRange(front);
        return new(id, scale.Right + Margin, y + 4, Title(plan), Describe(plan), marks);
    }

    private static double Months(List<Mark> marks, Scale scale, double y)
    {
        foreach (var (from, to) in scale.Months())
        {
            var (x1, x2) = (scale.X(from), scale.X(to));
            var name = from.ToString("MMM", CultureInfo.InvariantCulture);
            var size = Math.Min(13, Math.Max(11, (x2 - x1) * 0.45));
            var text = TextWidth.Of(name, size) <= x2 - x1 - 1 ? name : name[..1];
            if (TextWidth.Of(text, size) <= x2 - x1)
            {
                marks.Add(new Words(new((x1 + x2) / 2, y - 6), text, size, Tone.Ink, Anchor.Middle));
            }
        }

        marks.Add(new Strokes([(new(scale.Left, y), new(scale.Right, y))], Tone.Edge, 1.25));
        return y + 6;
    }

    private static double Seasons(List<Mark> marks, IReadOnlyList<DatedSeason> seasons, Scale scale, double y)
    {
        var rows = new Rows();
        foreach (var s in seasons.OrderBy(s => s.From).ThenBy(s => s.Kind))
        {
            var (x1, x2) = (scale.X(s.From), scale.X(s.To.AddDays(1)));
            if (x2 <= x1)
            {
                continue;
            }

            var top = y + (rows.Take(x1, x2, 0) * (BandHigh + 3));
            Spot[] band = [new(x1, top), new(x2, top), new(x2, top + BandHigh), new(x1, top + BandHigh)];
            var inner = new List<Mark> { new Shape(band, Wash(s.Kind)), new Strokes(Pattern(s.Kind, band), Tone.Edge, 0.75), new Shape(band, Tone.None, Tone.Edge, 1) };
            Name(inner, SeasonName(s.Kind), x1, x2, top);
            marks.Add(new Group($"{SeasonName(s.Kind)} season, {Figures.Day(s.From)} to {Figures.Day(s.To)}", inner));
        }

        return y + (rows.Count * (BandHigh + 3));
    }

    /// <summary>The season's name on a clear patch; smaller, then its first letter alone, where the band is short.</summary>
    private static void Name(List<Mark> marks, string name, double x1, double x2, double top)
    {
        (string Text, double Size, Face Face)[] tries = [(name, 12, Face.Bold), (name, 11, Face.Text), (name[..1], 12, Face.Bold)];
        foreach (var (text, size, face) in tries)
        {
            var half = (TextWidth.Of(text, size, face) / 2) + 2;
            if (2 * half <= x2 - x1 - 2)
            {
                var middle = (x1 + x2) / 2;
                var bottom = top + BandHigh - 2.5;
                marks.Add(new Shape([new(middle - half, top + 2.5), new(middle + half, top + 2.5), new(middle + half, bottom), new(middle - half, bottom)], Tone.Sheet));
                marks.Add(new Words(new(middle, top + 14.5), text, size, Tone.Ink, Anchor.Middle, face));
                return;
            }
        }
    }

    private static double Lanes(List<Mark> marks, IReadOnlyList<PlannedFeed> feeds, Scale scale, double y)
    {
        foreach (var kind in Enum.GetValues<FeedKind>())
        {
            var days = feeds.Where(f => f.Kind == kind).GroupBy(f => f.Date).OrderBy(g => g.Key).ToList();
            if (days.Count == 0)
            {
                continue;
            }

            marks.Add(new Words(new(scale.Left, y + 12), $"{FeedMarks.Name(kind)}, {Days(days.Count)}", 12, Tone.Soft, Halo: true));
            y += 17;
            var rows = new Rows();
            foreach (var day in days)
            {
                var x = Math.Clamp(scale.X(day.Key), scale.Left, scale.Right);
                var row = rows.Take(x - MarkRadius, x + MarkRadius, 0.5);
                var at = new Spot(x, y + (row * RowHigh) + (RowHigh / 2));
                var what = string.Join("; ", day.Select(f => $"{f.FeedName} for {string.Join(", ", f.Pots)}"));
                marks.Add(new Group($"{Figures.Day(day.Key)}: {what}", FeedMarks.Draw(kind, at, MarkRadius)));
            }

            y += (rows.Count * RowHigh) + 5;
        }

        return y;
    }

    private static double Today(List<Mark> marks, DateOnly? today, Scale scale, double y)
    {
        if (today is not { } day || day < scale.From || day > scale.To)
        {
            return y;
        }

        var x = scale.X(day);
        var half = TextWidth.Of("today", 12, Face.Bold) / 2;
        marks.Add(new Strokes([(new(x, 22), new(x, y + 2))], Tone.Ember, 1.5, Dashed: true));
        marks.Add(new Words(new(Math.Clamp(x, scale.Left + half, scale.Right - half), y + 14), "today", 12, Tone.Ember, Anchor.Middle, Face.Bold));
        return y + 18;
    }

    internal static string SeasonName(SeasonKind kind) => kind switch
    {
        SeasonKind.Growing => "Growing",
        SeasonKind.Hot => "Hot",
        SeasonKind.Rainy => "Rainy",
        SeasonKind.Resting => "Resting",
        _ => kind.ToString(),
    };

    private static Tone Wash(SeasonKind kind) => kind switch
    {
        SeasonKind.Growing => Tone.LeafWash,
        SeasonKind.Hot => Tone.EmberWash,
        SeasonKind.Rainy => Tone.WaterWash,
        _ => Tone.Ground,
    };

    /// <summary>Growing plain, hot rising strokes, rain falling upright, rest level strokes.</summary>
    private static IReadOnlyList<(Spot From, Spot To)> Pattern(SeasonKind kind, Spot[] band) => kind switch
    {
        SeasonKind.Hot => Hatch.Inside(band, 8, -1),
        SeasonKind.Rainy => Hatch.Upright(band, 5),
        SeasonKind.Resting => Hatch.Inside(band, 5, 0),
        _ => [],
    };

    private static string Days(int count) => count == 1 ? "1 day" : FormattableString.Invariant($"{count} days");

    private static string Title(YearPlan plan) => $"Year of feeds, {Figures.Day(plan.From, year: true)} to {Figures.Day(plan.To, year: true)}";

    private static string Describe(YearPlan plan)
    {
        var seasons = plan.Seasons.Select(s => $"{SeasonName(s.Kind)}: {Figures.Day(s.From)} to {Figures.Day(s.To)}.");
        var feeds = Enum.GetValues<FeedKind>()
            .Select(k => (Kind: k, Count: plan.Feeds.Where(f => f.Kind == k).Select(f => f.Date).Distinct().Count()))
            .Where(k => k.Count > 0).Select(k => $"{FeedMarks.Name(k.Kind)} feed on {Days(k.Count)}.");
        return string.Join(' ', seasons.Concat(feeds));
    }
}
