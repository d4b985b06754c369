using Ashery.Cards.Drawing;
using Ashery.Cards.Fonts;

namespace Ashery.Cards.Layout;

/// <summary>Writes one block of a section: text, points, facts, a table or a picture.</summary>
internal static class BlockWriter
{
    /// <summary>Room a block wants before it makes sense to begin it.</summary>
    public static double LeastHeight(Pen pen, CardBlock block) => block switch
    {
        PictureBlock p => Scale(pen, p) * p.Picture.Height,
        TableBlock t => TableWriter.LeastHeight(pen, t),
        _ => 2.5 * pen.Leading,
    };

    public static void Write(Pen pen, CardBlock block, string heading, double indent, Action? bar)
    {
        switch (block)
        {
            case Paragraph p:
                pen.Lines(pen.Break(p.Text, pen.Width - indent, pen.TextSize), pen.Left + indent, pen.TextSize, before: bar);
                break;
            case Listing list:
                List(pen, list, indent, bar);
                break;
            case FactList facts:
                Facts(pen, facts, indent);
                break;
            case TableBlock table:
                TableWriter.Write(pen, table, heading, indent, bar is not null);
                break;
            case PictureBlock picture:
                Picture(pen, picture);
                break;
            default:
                throw new NotSupportedException(block.GetType().Name);
        }
    }

    private static void List(Pen pen, Listing list, double indent, Action? bar)
    {
        var t = pen.TextSize;
        var hang = t * (list.Numbered ? 1.7 : 1.1);
        for (var i = 0; i < list.Items.Count; i++)
        {
            var lines = pen.Break(list.Items[i], pen.Width - indent - hang, t);
            if (lines.Count <= 6)
            {
                pen.Need(lines.Count * pen.Leading);
            }

            var lead = list.Numbered ? FormattableString.Invariant($"{i + 1}.") : null;
            var first = true;
            pen.Lines(lines, pen.Left + indent + hang, t, before: () =>
            {
                bar?.Invoke();
                if (first && lead is not null)
                {
                    pen.Line(lead, pen.Left + indent, t, Face.Bold, Tone.Leaf);
                }
                else if (first)
                {
                    pen.Draw(new Disc(new(pen.Left + indent + (t * 0.3), pen.Y + (t * 0.66)), t * 0.15, bar is null ? Tone.Leaf : Tone.Ember));
                }

                first = false;
            });
            pen.Skip(t * 0.3);
        }
    }

    private static void Facts(Pen pen, FactList list, double indent)
    {
        var t = pen.TextSize;
        var left = pen.Left + indent;
        var width = pen.Width - indent;
        var names = Math.Min(width * 0.34, list.Facts.Max(f => Typeface.Width(Typeface.Printable(f.Name, Face.Text), t, Face.Text)) + t);
        foreach (var fact in list.Facts)
        {
            var name = pen.Break(fact.Name, names - (t * 0.6), t);
            var value = pen.Break(fact.Value, width - names, t, Face.Bold);
            var face = value.Count == 1 ? Face.Bold : Face.Text;
            value = face == Face.Bold ? value : pen.Break(fact.Value, width - names, t);
            var note = fact.Note is { Length: > 0 } n ? pen.Break(n, width - names, pen.Small) : [];
            var beside = Typeface.Width(value[0], t, face) + (t * 0.7);
            var isBeside = value.Count == 1 && note.Count == 1 && beside + Typeface.Width(note[0], pen.Small, Face.Text) <= width - names;
            var height = Math.Max(name.Count * pen.Leading, (value.Count * pen.Leading) + (isBeside ? 0 : note.Count * pen.Small * 1.36));
            pen.Need(Math.Min(height, 8 * pen.Leading));
            var (page, top) = (pen.Pages.Count, pen.Y);
            pen.Lines(name, left, t, tone: Tone.Soft);
            var below = pen.Y;
            if (pen.Pages.Count == page)
            {
                pen.Skip(top - pen.Y);
            }

            if (isBeside)
            {
                pen.Skip(t - pen.Small);
                pen.Line(note[0], left + names + beside, pen.Small, tone: Tone.Soft);
                pen.Skip(pen.Small - t);
                note = [];
            }

            pen.Lines(value, left + names, t, face);
            pen.Lines(note, left + names, pen.Small, tone: Tone.Soft);
            if (pen.Pages.Count == page)
            {
                pen.Skip(Math.Max(0, below - pen.Y));
            }

            pen.Skip(t * (pen.IsLabel ? 0.12 : 0.3));
        }
    }

    private static void Picture(Pen pen, PictureBlock block)
    {
        var k = Scale(pen, block);
        var height = block.Picture.Height * k;
        pen.Need(height);
        var x = pen.Left + ((pen.Width - (block.Picture.Width * k)) / 2);
        foreach (var mark in block.Picture.Marks)
        {
            pen.Draw(MarkMove.To(mark, x, pen.Y, k));
        }

        pen.Skip(height);
    }

    /// <summary>Pictures are made in CSS pixels for a phone; on paper they take their share of the width, and never more than the sheet's height.</summary>
    private static double Scale(Pen pen, PictureBlock block)
    {
        var byWidth = pen.Width * block.Share / block.Picture.Width;
        var room = double.IsPositiveInfinity(pen.Bottom) ? byWidth : (pen.Bottom - (2 * pen.Left)) * 0.8 / block.Picture.Height;
        return Math.Min(byWidth, room);
    }
}
