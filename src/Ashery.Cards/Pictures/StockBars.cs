using Ashery.Cards.Drawing;
using Ashery.Stock;

namespace Ashery.Cards.Pictures;

/// <summary>
/// A bar for each bag, as wide as what it came with: what is left is filled, of that hatched what the planned year takes. At the right the day
/// the line runs out.
/// </summary>
public static class StockBars
{
    private const double Wide = 360;
    private const double Left = 10;
    private const double Right = Wide - 10;
    private const double RowHigh = 56;

    /// <summary>Bags drawn; the others stand in the table.</summary>
    public const int MostRows = 24;

    /// <summary>As SVG, for a page or a file; 360 wide, scales freely.</summary>
    public static string Svg(StockLedger ledger, StockForecast forecast, SvgFor use = SvgFor.Page, string id = "stock") => SvgWriter.Write(Draw(ledger, forecast, id), use);

    /// <summary>Bags that are drawn: first those of lines that run out first.</summary>
    public static IReadOnlyList<(StockLine Line, LineForecast Forecast, BagForecast Bag)> Shown(StockLedger ledger, StockForecast forecast) =>
        [.. ledger.Lines.Zip(forecast.Lines).OrderBy(static l => l.Second.RunsOut ?? DateOnly.MaxValue)
            .SelectMany(static l => l.Second.Bags.Where(static b => b.Bag.Left is null or > 0 || b.Bag.Bought is null).Select(b => (l.First, l.Second, b))).Take(MostRows)];

    public static Picture Draw(StockLedger ledger, StockForecast forecast, string id = "stock")
    {
        var marks = new List<Mark>();
        var shown = Shown(ledger, forecast);
        for (var i = 0; i < shown.Count; i++)
        {
            Row(marks, shown[i].Line, shown[i].Forecast, shown[i].Bag, forecast.From, i * RowHigh);
        }

        return new(id, Wide, Math.Max(1, shown.Count) * RowHigh, "What each bag holds and when it runs out", string.Join(' ', shown.Select(static s => Describe(s.Line, s.Forecast, s.Bag))), marks);
    }

    private static void Row(List<Mark> marks, StockLine line, LineForecast forecast, BagForecast f, DateOnly today, double y)
    {
        var (top, low) = (y + 20, y + 34);
        var until = Until(forecast);
        var soon = forecast.RunsOut is { } day && day <= today.AddDays(30);
        var room = Right - Left - TextWidth.Of(until, 12, Face.Bold) - 10;
        marks.Add(new Words(new(Left, y + 14), TextWidth.Fit(Name(line, f.Bag), room, 12), 12));
        marks.Add(new Words(new(Right, y + 14), until, 12, soon ? Tone.Ember : Tone.Leaf, Anchor.End, Face.Bold));
        var inner = new List<Mark> { new Shape(Band(Left, top, Right, low), Tone.Sheet) };
        if (f.Bag.Left is { } left)
        {
            var full = Math.Max(Math.Max(f.Bag.Opening, left), 1e-9);
            double X(double grams) => Left + (Math.Clamp(grams / full, 0, 1) * (Right - Left));
            inner.Add(new Shape(Band(Left, top, X(left), low), Tone.LeafWash));
            if (f.UsedGrams > 0)
            {
                inner.Add(new Strokes(Hatch.Inside(Band(Left, top, X(Math.Min(left, f.UsedGrams)), low), 6, 1), Tone.Leaf, 1));
            }

            inner.Add(new Strokes([(new(X(left), top), new(X(left), low))], Tone.Leaf, 2.5));
            inner.Add(new Shape(Band(Left, top, Right, low), Tone.None, Tone.Edge, 1));
        }
        else
        {
            inner.Add(new Shape(Band(Left, top, Right, low), Tone.None, Tone.Edge, 1, Dashed: true));
        }

        marks.Add(new Group(Describe(line, forecast, f), inner));
        marks.Add(new Words(new(Left, y + 48), TextWidth.Fit(Holds(f), Right - Left, 12), 12, Tone.Soft));
    }

    private static string Name(StockLine line, StockBag bag) =>
        bag.Bought is null ? line.Name : bag.Lot is { } lot ? $"{line.Name}, lot {lot}" : $"{line.Name}, bought {Figures.Day(bag.BoughtOn!.Value)}";

    private static string Until(LineForecast f) => f.RunsOut is { } day ? "until " + Figures.Day(day) : f.UsedGrams > 0 ? "lasts the year" : "not planned";

    private static string Holds(BagForecast f)
    {
        var words = f.Bag.Left is not { } left ? "as much as wanted: never weighed" : $"{Figures.Stock(left)} of {Figures.Stock(f.Bag.Opening)}";
        return f.Bag.BestBefore is { } day ? $"{words}, best before {Figures.Day(day, year: true)}" : words;
    }

    private static string Describe(StockLine line, LineForecast forecast, BagForecast f) =>
        $"{Name(line, f.Bag)}: {Holds(f)}, {Until(forecast)}{(f.UsedGrams > 0 ? $"; the planned year takes {Figures.Stock(f.UsedGrams)}" : "")}.";

    private static Spot[] Band(double x1, double y1, double x2, double y2) => [new(x1, y1), new(x2, y1), new(x2, y2), new(x1, y2)];
}
