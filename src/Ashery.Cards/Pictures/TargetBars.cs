using System.Globalization;
using Ashery.Cards.Drawing;
using Ashery.Solutions.Targets;

namespace Ashery.Cards.Pictures;

/// <summary>
/// Who brings what to a solution: a bar for each wished nutrient from the water's share on, the materials' shares after it with their letters, all drawn to the wish, so
/// that one upright line stands for what is wished. A bar that ends outside has a diamond at its end.
/// </summary>
public static class TargetBars
{
    private const double Wide = 360;
    private const double Left = 10;
    private const double Right = Wide - 10;
    private const double Top = 30;
    private const double RowHigh = 46;
    private const double KeyHigh = 20;

    // Drawn as a part of what is wished; a longer bar is cut and its figure says how far it goes.
    private const double Most = 1.6;
    private const double Near = 0.02;

    private static readonly (Tone Fill, double Slope, Tone Letter)[] Looks =
    [
        (Tone.Leaf, 0, Tone.OnLeaf), (Tone.LeafWash, 1, Tone.Ink), (Tone.Sheet, 0, Tone.Ink), (Tone.LeafWash, 0, Tone.Ink), (Tone.Sheet, -1, Tone.Ink), (Tone.Edge, 0, Tone.Sheet),
    ];

    public static string Svg(TargetRecipe recipe, SvgFor use = SvgFor.Page, string id = "target") => SvgWriter.Write(Draw(recipe, id), use);

    public static Picture Draw(TargetRecipe recipe, string id = "target")
    {
        var rows = recipe.Rows.Where(r => r.Wish is not null).ToList();
        var marks = new List<Mark>();
        var bottom = Top + (rows.Count * RowHigh);
        var at = X(1);
        marks.Add(new Words(new(at, Top - 14), "wished", 12, Tone.Soft, Anchor.Middle));
        marks.Add(new Words(new(Right, Top - 14), "mg/L", 12, Tone.Soft, Anchor.End));
        var y = Top;
        foreach (var row in rows)
        {
            Row(marks, row, y);
            y += RowHigh;
        }

        // Over the bars only, so that no text is struck through.
        marks.Add(new Strokes([.. rows.Select((_, i) => (new Spot(at, Top + (i * RowHigh) + 17), new Spot(at, Top + (i * RowHigh) + 37)))], Tone.Ink, 2));
        Key(marks, recipe, bottom + 4);
        var high = bottom + 8 + ((recipe.Parts.Count + 1) * KeyHigh);
        return new(id, Wide, high, "What the water and each material bring, against what is wished", Describe(rows), marks);
    }

    /// <summary>The letter of a part: A for the first.</summary>
    public static string Letter(int part) => ((char)('A' + part)).ToString();

    /// <summary>What is wished of a nutrient, in words.</summary>
    public static string Wished(TargetRow row) => row switch
    {
        { Wish: null } => "",
        { Low: var low, High: var high } when low == high => Figure(low),
        { Low: 0, High: var high } => "at most " + Figure(high),
        { High: double.PositiveInfinity, Low: var low } => "at least " + Figure(low),
        { Low: var low, High: var high } => $"{Figure(low)} to {Figure(high)}",
    };

    private static void Row(List<Mark> marks, TargetRow row, double y)
    {
        var unit = double.IsFinite(row.High) ? row.High : row.Low;
        var off = Math.Abs(row.Deviation) > Near;
        var figure = Figure(row.Total) + (off ? double.IsFinite(row.Deviation) ? $", {(row.Deviation > 0 ? "+" : "−")}{Figures.Number(Math.Abs(row.Deviation) * 100, 0)} %" : ", too much" : "");
        var width = TextWidth.Of(figure, 13, Face.Bold);
        marks.Add(new Words(new(Left, y + 12), TextWidth.Fit($"{row.Item.Symbol}: {Wished(row)} wished", Right - Left - width - 10, 13), 13));
        marks.Add(new Words(new(Right, y + 12), figure, 13, Tone.Ink, Anchor.End, Face.Bold));
        var (top, low) = (y + 19, y + 35);
        var from = 0.0;
        Segment(marks, "the water", "W", row.Water, -1);
        for (var k = 0; k < row.ByPart.Count; k++)
        {
            Segment(marks, Letter(k), Letter(k), row.ByPart[k], k);
        }

        marks.Add(new Strokes([(new(Left, low + 1), new(Right, low + 1))], Tone.Line, 1));
        if (off)
        {
            var end = X(Part(row.Total));
            marks.Add(new Shape([new(end, top - 1), new(end + 9, (top + low) / 2), new(end, low + 1), new(end - 9, (top + low) / 2)], Tone.Ember, Tone.Sheet, 1));
        }

        double Part(double amount) => unit > 0 ? amount / unit : amount > 0 ? Most : 0;

        void Segment(List<Mark> into, string who, string letter, double amount, int part)
        {
            var (a, b) = (X(Part(from)), X(Part(from + amount)));
            from += amount;
            if (b - a < 0.5)
            {
                return;
            }

            into.Add(new Group($"{row.Item.Symbol} from {who}: {Figure(amount)} mg/L", Look([new(a, top), new(b, top), new(b, low), new(a, low)], part)));
            if (b - a > 16)
            {
                into.Add(new Words(new((a + b) / 2, low - 4), letter, 12, LetterOf(part), Anchor.Middle, Face.Bold, Halo: IsHatched(part)));
            }
        }
    }

    private static List<Mark> Look(Spot[] box, int part)
    {
        var (fill, slope, _) = part < 0 ? (Tone.WaterWash, -1, Tone.Ink) : Looks[part % Looks.Length];
        var marks = new List<Mark> { new Shape(box, fill, Tone.Edge, 1) };
        if (slope != 0)
        {
            marks.Add(new Strokes(Hatch.Inside(box, part < 0 ? 5 : 7, slope), part < 0 ? Tone.Water : Tone.Edge, 0.75));
        }

        return marks;
    }

    private static Tone LetterOf(int part) => part < 0 ? Tone.Ink : Looks[part % Looks.Length].Letter;

    private static bool IsHatched(int part) => part < 0 || Looks[part % Looks.Length].Slope != 0;

    private static void Key(List<Mark> marks, TargetRecipe recipe, double y)
    {
        for (var k = -1; k < recipe.Parts.Count; k++, y += KeyHigh)
        {
            marks.Add(new Group(k < 0 ? "the water" : Letter(k), Look([new(Left, y + 3), new(Left + 22, y + 3), new(Left + 22, y + 17), new(Left, y + 17)], k)));
            var text = k < 0 ? "W  the water" : $"{Letter(k)}  {recipe.Parts[k].Material.Name}{(recipe.Parts[k].IsAgent ? ", for the pH" : "")}";
            marks.Add(new Words(new(Left + 30, y + 14), TextWidth.Fit(text, Right - Left - 30, 13), 13));
        }
    }

    private static double X(double part) => Left + (Math.Clamp(part, 0, Most) / Most * (Right - Left - 10));

    private static string Figure(double amount) => amount.ToString(amount >= 99.95 ? "0" : amount >= 0.995 ? "0.#" : "0.###", CultureInfo.InvariantCulture);

    private static string Describe(List<TargetRow> rows) => string.Join(' ', rows.Select(r =>
        $"{r.Item.Symbol}: {Figure(r.Total)} mg/L, of which {Figure(r.Water)} from the water; {Wished(r)} wished."));
}
