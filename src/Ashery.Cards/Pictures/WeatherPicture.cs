using System.Globalization;
using Ashery.Cards.Drawing;
using Ashery.Climate;

namespace Ashery.Cards.Pictures;

/// <summary>
/// The usual year of a place: above, the band between the mean lowest and highest temperature; below, rain as bars and what grass would use as a line
/// with a dot each month. Where the line stands above the bar, the month wants watering.
/// </summary>
public static class WeatherPicture
{
    private const double Wide = 360;
    private const double High = 330;
    private const double Left = 40;
    private const double Right = Wide - 12;
    private const double WarmTop = 26;
    private const double WarmBottom = 140;
    private const double WetTop = 184;
    private const double WetBottom = 294;

    /// <summary>As SVG, for a page or a file; 360 wide, scales freely.</summary>
    public static string Svg(IReadOnlyList<WeatherMonth> months, string place, SvgFor use = SvgFor.Page, string id = "weather") => SvgWriter.Write(Draw(months, place, id), use);

    /// <summary>As a picture for any surface.</summary>
    public static Picture Draw(IReadOnlyList<WeatherMonth> months, string place, string id = "weather")
    {
        var marks = new List<Mark>();
        var warm = Axis.Over(months.Min(static m => m.MeanMin), months.Max(static m => m.MeanMax), WarmTop, WarmBottom);
        var wet = Axis.Over(0, Math.Max(20, months.Max(static m => Math.Max(m.RainMm, m.ReferenceEtMm))), WetTop, WetBottom);
        marks.Add(new Words(new(6, WarmTop - 11), "°C, day's highest and lowest", 13, Tone.Ink, Face: Face.Bold));
        Grid(marks, warm);
        Band(marks, months, warm);
        marks.Add(new Words(new(6, WetTop - 11), "mm a month: rain in bars, use of grass as line", 13, Tone.Ink, Face: Face.Bold));
        Grid(marks, wet);
        Bars(marks, months, wet);
        Line(marks, months, wet);
        foreach (var m in months)
        {
            marks.Add(new Words(new(X(m.Month), WetBottom + 18), Name(m.Month)[..1], 13, Tone.Ink, Anchor.Middle));
        }

        return new(id, Wide, High - 12, $"The usual year of {Safe.Plain(place)}", Describe(months), marks);
    }

    private static void Grid(List<Mark> marks, Axis axis)
    {
        var lines = new List<(Spot, Spot)>();
        foreach (var tick in axis.Ticks)
        {
            lines.Add((new(Left, axis.Y(tick)), new(Right, axis.Y(tick))));
            marks.Add(new Words(new(Left - 6, axis.Y(tick) + 4), Figures.Short(tick, 0), 12, Tone.Ink, Anchor.End));
        }

        marks.Add(new Strokes(lines, Tone.Line, 0.75));
        if (axis.Low < 0 && axis.High > 0)
        {
            marks.Add(new Strokes([(new(Left, axis.Y(0)), new(Right, axis.Y(0)))], Tone.Edge, 1.25));
        }
    }

    private static void Band(List<Mark> marks, IReadOnlyList<WeatherMonth> months, Axis axis)
    {
        Spot[] top = [.. months.Select(m => new Spot(X(m.Month), axis.Y(m.MeanMax)))];
        Spot[] low = [.. months.Select(m => new Spot(X(m.Month), axis.Y(m.MeanMin)))];
        marks.Add(new Shape([.. top, .. low.Reverse()], Tone.EmberWash));
        marks.Add(new Strokes(Joined(top), Tone.Ember, 2));
        marks.Add(new Strokes(Joined(low), Tone.Water, 2, Dashed: true));
        foreach (var m in months)
        {
            marks.Add(new Group(
                string.Create(CultureInfo.InvariantCulture, $"{Name(m.Month)}: {m.MeanMin:0} to {m.MeanMax:0} °C"),
                [new Disc(new(X(m.Month), axis.Y(m.MeanMax)), 2.5, Tone.Ember), new Disc(new(X(m.Month), axis.Y(m.MeanMin)), 2.5, Tone.Water)]));
        }
    }

    private static void Bars(List<Mark> marks, IReadOnlyList<WeatherMonth> months, Axis axis)
    {
        foreach (var m in months.Where(static m => m.RainMm > 0))
        {
            var (x, y) = (X(m.Month), axis.Y(m.RainMm));
            Spot[] bar = [new(x - 8, y), new(x + 8, y), new(x + 8, axis.Y(0)), new(x - 8, axis.Y(0))];
            marks.Add(new Group(string.Create(CultureInfo.InvariantCulture, $"{Name(m.Month)}: {m.RainMm:0} mm of rain"), [new Shape(bar, Tone.WaterWash, Tone.Water, 1.25)]));
        }
    }

    private static void Line(List<Mark> marks, IReadOnlyList<WeatherMonth> months, Axis axis)
    {
        Spot[] spots = [.. months.Select(m => new Spot(X(m.Month), axis.Y(m.ReferenceEtMm)))];
        marks.Add(new Strokes(Joined(spots), Tone.Leaf, 2));
        for (var i = 0; i < spots.Length; i++)
        {
            marks.Add(new Group(
                string.Create(CultureInfo.InvariantCulture, $"{Name(months[i].Month)}: grass would use {months[i].ReferenceEtMm:0} mm"),
                [new Disc(spots[i], 3.5, Tone.Sheet, Tone.Leaf, 1.75)]));
        }
    }

    private static List<(Spot From, Spot To)> Joined(Spot[] spots) => [.. spots.Zip(spots.Skip(1))];

    private static double X(int month) => Left + ((month - 0.5) / 12 * (Right - Left));

    private static string Name(int month) => CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month);

    private static string Describe(IReadOnlyList<WeatherMonth> months)
    {
        var (hot, cold) = (months.MaxBy(static m => m.MeanMax)!, months.MinBy(static m => m.MeanMin)!);
        var dry = months.Where(static m => m.ReferenceEtMm > m.RainMm).Select(static m => Name(m.Month)).ToList();
        return string.Create(CultureInfo.InvariantCulture, $"Hottest days in {Name(hot.Month)}, {hot.MeanMax:0} °C; coldest nights in {Name(cold.Month)}, {cold.MeanMin:0} °C. Rain {months.Sum(static m => m.RainMm):0} mm and use of grass {months.Sum(static m => m.ReferenceEtMm):0} mm a year. ")
            + (dry.Count == 0 ? "Rain covers every month." : $"Grass would use more than it rains in {string.Join(", ", dry)}.");
    }

    private sealed record Axis(double Low, double High, double Step, double Top, double Bottom)
    {
        public IEnumerable<double> Ticks => Enumerable.Range(0, (int)Math.Round((High - Low) / Step) + 1).Select(i => Low + (i * Step));

        /// <summary>Whole steps of 1, 2 or 5 of a power of ten, three to six of them.</summary>
        public static Axis Over(double least, double most, double top, double bottom)
        {
            var rough = Math.Max(most - least, 1) / 4;
            var power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
            var step = rough / power <= 1 ? power : rough / power <= 2 ? 2 * power : rough / power <= 5 ? 5 * power : 10 * power;
            return new(Math.Floor(least / step) * step, Math.Ceiling(most / step) * step, step, top, bottom);
        }

        public double Y(double value) => Bottom - ((value - Low) / (High - Low) * (Bottom - Top));
    }
}
