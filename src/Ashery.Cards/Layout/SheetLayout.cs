using Ashery.Cards.Drawing;
using Ashery.Cards.Fonts;

namespace Ashery.Cards.Layout;

/// <summary>Lays a card out on its paper. A label that does not fit is set smaller, down to a size still readable, then runs on.</summary>
internal static class SheetLayout
{
    private const double LeastLabelText = 5;
    private const string LostSigns = "□ stands for a sign this print cannot draw; the page and the plain text have it.";

    /// <summary>The pages, each a list of marks in points.</summary>
    public static IReadOnlyList<IReadOnlyList<Mark>> Pages(CardDocument card, bool endless = false)
    {
        var pen = Write(card, card.Paper.TextSize, endless);
        for (var size = card.Paper.TextSize; pen.IsLabel && pen.Pages.Count > 1 && size > LeastLabelText;)
        {
            // The largest size that takes the fewest pieces.
            size = Math.Max(LeastLabelText, size * 0.95);
            var smaller = Write(card, size, endless);
            pen = smaller.Pages.Count < pen.Pages.Count ? smaller : pen;
        }

        return endless ? pen.Pages : [.. pen.Pages.Select((page, i) => Numbered(page, pen, card, i, pen.Pages.Count))];
    }

    /// <summary>Height the endless layout takes, margins included.</summary>
    public static double Height(IReadOnlyList<Mark> page, Paper paper) =>
        page.Max(m => m switch { Words w => w.At.Y + (w.Size * 0.3), Shape s => s.Corners.Max(c => c.Y), Strokes s => s.Lines.Max(l => Math.Max(l.From.Y, l.To.Y)), _ => 0 }) + paper.PointsMargin;

    private static Pen Write(CardDocument card, double size, bool endless)
    {
        var pen = new Pen(card.Paper, size, card.RunningHead, endless);
        SheetHeader.Write(pen, card);
        foreach (var section in card.Sections)
        {
            Section(pen, section);
        }

        var foot = pen.LostSigns ? card.Foot.Append(LostSigns).ToList() : card.Foot;
        if (foot.Count > 0)
        {
            Foot(pen, foot);
        }

        return pen;
    }

    private static void Section(Pen pen, CardSection section)
    {
        var caution = section.Weight == SectionWeight.Caution;
        var indent = caution ? pen.TextSize * 1.1 : 0;
        pen.Skip(pen.TextSize * (pen.IsLabel ? 0.35 : 1.5));
        KeepTogether(pen, section);
        Body(pen, section, caution, indent);
    }

    /// <summary>
    /// A short section goes over to the next page whole, when little of this one is left: it is set once on an endless sheet to see
    /// how tall it is.
    /// </summary>
    private static void KeepTogether(Pen pen, CardSection section)
    {
        if (double.IsPositiveInfinity(pen.Bottom))
        {
            return;
        }

        var trial = pen.Endless();
        var top = trial.Y;
        Body(trial, section, section.Weight == SectionWeight.Caution, pen.TextSize);
        var page = pen.Bottom - pen.Left;
        var left = pen.Bottom - pen.Y;
        if (trial.Y - top < 0.42 * page && left < 0.16 * page)
        {
            pen.Need(trial.Y - top);
        }
    }

    private static void Body(Pen pen, CardSection section, bool caution, double indent)
    {
        if (section.Heading.Length > 0)
        {
            var size = pen.TextSize * 1.25;
            // A heading never stands alone at the foot: three lines of what follows go with it, a picture whole.
            pen.Need((size * 1.6) + BlockWriter.LeastHeight(pen, section.Blocks[0]));
            if (caution)
            {
                SheetHeader.WarningSign(pen, pen.Left + indent, size);
            }

            pen.Lines(pen.Break(section.Heading, pen.Width - indent - (1.5 * size), size, Face.Head), pen.Left + indent + (caution ? 1.45 * size : 0), size, Face.Head, caution ? Tone.Ember : Tone.Ink, caution ? () => Bar(pen, size) : null);
            pen.Skip(pen.TextSize * 0.35);
        }

        else
        {
            pen.Need(3 * pen.Leading);
        }

        foreach (var block in section.Blocks)
        {
            pen.Skip(block == section.Blocks[0] || pen.IsLabel ? 0 : pen.TextSize * 0.8);
            BlockWriter.Write(pen, block, section.Heading, indent, caution ? () => Bar(pen, pen.TextSize) : null);
        }
    }

    /// <summary>A piece of the bar down the left of a caution, as tall as a line; drawn line by line, so it turns the page with them.</summary>
    private static void Bar(Pen pen, double size)
    {
        var (x, y, height) = (pen.Left, pen.Y - (size * 0.05), size * 1.75);
        var bottom = Math.Min(y + height, pen.Bottom);
        pen.Draw(new Shape([new(x, y), new(x + 2.2, y), new(x + 2.2, bottom), new(x, bottom)], Tone.Ember));
    }

    private static void Foot(Pen pen, IReadOnlyList<string> foot)
    {
        pen.Skip(pen.TextSize * 1.6);
        pen.Need(4 * pen.Leading);
        pen.Rule(pen.Left, pen.Right, Tone.Edge, 0.6);
        pen.Skip(pen.TextSize * 0.5);
        foreach (var line in foot)
        {
            var size = Math.Max(5.5, pen.Small * 0.86);
            pen.Lines(pen.Break(line, pen.Width, size), pen.Left, size, tone: Tone.Soft);
            pen.Skip(size * 0.25);
        }
    }

    private static IReadOnlyList<Mark> Numbered(IReadOnlyList<Mark> page, Pen pen, CardDocument card, int index, int count)
    {
        if (pen.IsLabel)
        {
            return page;
        }

        var y = card.Paper.PointsHigh - card.Paper.PointsMargin - (pen.Small * 0.3);
        var number = FormattableString.Invariant($"{index + 1} of {count}");
        var room = pen.Width - Typeface.Width(number, pen.Small, Face.Text) - (2 * pen.Small);
        var name = pen.Fit(index == 0 ? card.Kind : card.Title, room, pen.Small);
        return [.. page, new Words(new(pen.Left, y), name, pen.Small, Tone.Soft), new Words(new(pen.Right, y), number, pen.Small, Tone.Soft, Anchor.End)];
    }
}
