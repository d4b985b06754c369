using Ashery.Cards.Drawing;
using Ashery.Cards.Fonts;

namespace Ashery.Cards.Layout;

/// <summary>The head of a sheet: what it is, its title, the grade to be read from afar, lot and date, and the word that comes first.</summary>
internal static class SheetHeader
{
    public static void Write(Pen pen, CardDocument card)
    {
        var t = pen.TextSize;
        pen.Draw(new Shape([new(pen.Left, pen.Y), new(pen.Right, pen.Y), new(pen.Right, pen.Y + (0.28 * t)), new(pen.Left, pen.Y + (0.28 * t))], Tone.Leaf));
        pen.Skip(t * (pen.IsLabel ? 0.55 : 0.9));
        var (right, below) = card.Address is { } address ? CodeCorner.Write(pen, address) : (pen.Right, pen.Y);
        pen.Lines(pen.Break(card.Kind, right - pen.Left, pen.Small), pen.Left, pen.Small, tone: Tone.Soft);
        var title = TitleSize(pen, card.Title, right - pen.Left);
        pen.Lines(pen.Break(card.Title, right - pen.Left, title, Face.Head), pen.Left, title, Face.Head);
        pen.Skip(t * (pen.IsLabel ? 0.15 : 0.5));
        Particulars(pen, card, right);
        pen.Skip(Math.Max(0, below - pen.Y));
        if (card.First is { } first)
        {
            First(pen, first);
        }
    }

    /// <summary>As large as lets the title stand in three lines.</summary>
    private static double TitleSize(Pen pen, string title, double width)
    {
        var size = pen.TextSize * (pen.IsLabel ? 1.7 : 2.3);
        while (size > pen.TextSize * 1.2 && pen.Break(title, width, size, Face.Head).Count > 3)
        {
            size *= 0.9;
        }

        return size;
    }

    /// <summary>Triangle with a stroke and a dot, drawn and not a sign of the font, so that every face has it.</summary>
    public static void WarningSign(Pen pen, double x, double size)
    {
        var (top, bottom, middle) = (pen.Y + (size * 0.16), pen.Y + (size * 1.04), x + (size * 0.52));
        pen.Draw(new Shape([new(middle, top), new(x + (size * 1.04), bottom), new(x, bottom)], Tone.EmberWash, Tone.Ember, size * 0.09));
        pen.Draw(new Strokes([(new(middle, top + (size * 0.3)), new(middle, bottom - (size * 0.3)))], Tone.Ember, size * 0.11));
        pen.Draw(new Disc(new(middle, bottom - (size * 0.16)), size * 0.065, Tone.Ember));
    }

    /// <summary>The lead figure at the left, the others in columns beside it, or under it where there is no room.</summary>
    private static void Particulars(Pen pen, CardDocument card, double right)
    {
        var t = pen.TextSize;
        var leadSize = t * (pen.IsLabel ? 2 : 2.7);
        var x = pen.Left;
        var start = pen.Y;
        var lowest = pen.Y;
        if (card.Lead is { } lead)
        {
            var value = pen.Break(lead.Value, right - pen.Left, leadSize, Face.Head);
            var note = pen.Break(lead.Note is { } more ? $"{lead.Name}, {more}" : lead.Name, right - pen.Left, pen.Small);
            var width = Math.Max(value.Max(v => Typeface.Width(v, leadSize, Face.Head)), note.Max(n => Typeface.Width(n, pen.Small, Face.Text)));
            pen.Lines(value, x, leadSize, Face.Head);
            pen.Skip(-leadSize * 0.1);
            pen.Lines(note, x, pen.Small, tone: Tone.Soft);
            lowest = pen.Y;
            x += width + (t * 2);
            // The small columns stand on the same base as the lead's note.
            pen.Skip(start - pen.Y + Math.Max(0, lowest - start - (pen.Small * 1.36) - (t * 1.36)));
        }

        // Beside the lead if all fit there, else all together in rows of their own.
        double Wide(Fact f) => Math.Max(Typeface.Width(Typeface.Printable(f.Value, Face.Bold), t, Face.Bold), Typeface.Width(Typeface.Printable(f.Name, Face.Text), pen.Small, Face.Text));
        var gap = t * 1.6;
        if (x + card.Particulars.Sum(f => Wide(f) + gap) - gap > right && x > pen.Left)
        {
            x = pen.Left;
            pen.Skip(lowest - pen.Y + (t * 0.3));
        }

        var row = pen.Y;
        foreach (var fact in card.Particulars)
        {
            var width = Wide(fact);
            if (x > pen.Left && x + width > right + 0.01)
            {
                x = pen.Left;
                row = Math.Max(lowest, row + pen.Leading + (pen.Small * 1.36)) + (t * 0.3);
            }

            pen.Skip(row - pen.Y);
            pen.Line(Typeface.Printable(fact.Name, Face.Text), x, pen.Small, tone: Tone.Soft);
            pen.Skip(pen.Small * 1.36);
            pen.Lines(pen.Break(fact.Value, right - x, t, Face.Bold), x, t, Face.Bold);
            lowest = Math.Max(lowest, pen.Y);
            x += width + gap;
        }

        pen.Skip(lowest - pen.Y);
    }

    private static void First(Pen pen, string first)
    {
        var t = pen.TextSize;
        pen.Skip(t * 0.9);
        var lines = pen.Break(first, pen.Width - (2 * t), t);
        var height = (lines.Count * pen.Leading) + (t * 0.9);
        pen.Need(height);
        pen.Draw(new Shape([new(pen.Left, pen.Y), new(pen.Right, pen.Y), new(pen.Right, pen.Y + height), new(pen.Left, pen.Y + height)], Tone.EmberWash));
        pen.Draw(new Shape([new(pen.Left, pen.Y), new(pen.Left + 2.2, pen.Y), new(pen.Left + 2.2, pen.Y + height), new(pen.Left, pen.Y + height)], Tone.Ember));
        pen.Skip(t * 0.4);
        pen.Lines(lines, pen.Left + t, t);
        pen.Skip(t * 0.5);
    }
}
