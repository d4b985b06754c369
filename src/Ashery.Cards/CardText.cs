using System.Text;
using Ashery.Cards.Drawing;
using Ashery.Cards.Layout;

namespace Ashery.Cards;

/// <summary>A card as plain text of 72 columns, for a terminal, a mail or a printer that knows nothing else.</summary>
public static class CardText
{
    public const int Columns = 72;
    private const int Gap = 2;

    public static string Write(CardDocument card)
    {
        var text = new StringBuilder();
        Lines(text, card.Kind.ToUpperInvariant(), 0);
        Lines(text, card.Title, 0);
        text.Append('=', Columns).Append('\n');
        foreach (var fact in card.Lead is { } lead ? card.Particulars.Prepend(lead) : card.Particulars)
        {
            Hanging(text, $"{fact.Name}: ", Whole(fact));
        }

        if (card.Address is { } address)
        {
            Hanging(text, "Its page: ", address);
        }

        if (card.First is { } first)
        {
            text.Append('\n');
            Hanging(text, "! ", first);
        }

        foreach (var section in card.Sections)
        {
            text.Append('\n');
            if (section.Heading.Length > 0)
            {
                Lines(text, (section.Weight == SectionWeight.Caution ? "! " : "") + section.Heading.ToUpperInvariant(), 0);
            }

            foreach (var block in section.Blocks)
            {
                Block(text, block, section.Heading);
            }
        }

        if (card.Foot.Count > 0)
        {
            text.Append('\n').Append('-', Columns).Append('\n');
            foreach (var line in card.Foot)
            {
                Hanging(text, "", line);
            }
        }

        return text.ToString();
    }

    private static void Block(StringBuilder text, CardBlock block, string heading)
    {
        switch (block)
        {
            case Paragraph p:
                Lines(text, p.Text, 0);
                break;
            case Listing list:
                for (var i = 0; i < list.Items.Count; i++)
                {
                    Hanging(text, list.Numbered ? FormattableString.Invariant($"{i + 1}. ") : "- ", list.Items[i]);
                }

                break;
            case FactList facts:
                foreach (var fact in facts.Facts)
                {
                    Hanging(text, $"{fact.Name}: ", Whole(fact));
                }

                break;
            case TableBlock table:
                Table(text, table, heading);
                break;
            case PictureBlock:
                // The facts of a picture stand in a table of the same card.
                break;
            default:
                throw new NotSupportedException(block.GetType().Name);
        }
    }

    private static void Table(StringBuilder text, TableBlock table, string heading)
    {
        if (!Same(table.Caption, heading))
        {
            Lines(text, table.Caption, 0);
        }

        var all = table.Rows.Prepend([.. table.Columns.Select(c => c.Heading)]).Concat(table.Total.Count > 0 ? [table.Total] : []).ToList();
        var figures = table.Columns.Select(c => c.IsFigure).ToList();
        var natural = figures.Select((_, i) => all.Where(r => r.Count > 1 || figures.Count == 1).Max(r => Width(Safe.Plain(r[i])))).ToList();
        var words = figures.Select((_, i) => all.Where(r => r.Count > 1 || figures.Count == 1).SelectMany(r => Safe.Plain(r[i]).Split(' ')).Max(Width)).ToList();
        var widths = ColumnWidths.Share(natural, words, figures, Columns - (Gap * (figures.Count - 1))).Select(w => Math.Max(1, Math.Floor(w))).ToArray();
        var rule = (int)(widths.Sum() + (Gap * (widths.Length - 1)));
        Row(text, all[0], widths, figures);
        text.Append('-', rule).Append('\n');
        foreach (var row in table.Rows)
        {
            if (row.Count < widths.Length)
            {
                text.Append('\n');
                Lines(text, row[0], 0);
                continue;
            }

            Row(text, row, widths, figures);
        }

        if (table.Total.Count > 0)
        {
            text.Append('-', rule).Append('\n');
            Row(text, table.Total, widths, figures);
        }

        if (table.Note is { } note)
        {
            Lines(text, note, 0);
        }
    }

    private static void Row(StringBuilder text, IReadOnlyList<string> cells, double[] widths, List<bool> figures)
    {
        var wrapped = cells.Select((c, i) => LineBreaker.Break(Safe.Plain(c), widths[i], Width)).ToList();
        for (var line = 0; line < wrapped.Max(w => w.Count); line++)
        {
            var row = new StringBuilder();
            for (var i = 0; i < wrapped.Count; i++)
            {
                var cell = line < wrapped[i].Count ? wrapped[i][line] : "";
                var pad = new string(' ', Math.Max(0, (int)(widths[i] - Width(cell))));
                row.Append(i > 0 ? new string(' ', Gap) : "").Append(figures[i] ? pad + cell : cell + pad);
            }

            text.Append(row.ToString().TrimEnd()).Append('\n');
        }
    }

    private static void Lines(StringBuilder text, string words, int indent)
    {
        foreach (var line in LineBreaker.Break(Safe.Plain(words), Columns - indent, Width))
        {
            text.Append(' ', indent).Append(line).Append('\n');
        }
    }

    private static void Hanging(StringBuilder text, string lead, string words)
    {
        var indent = Math.Min((int)Width(lead), 4);
        var lines = LineBreaker.Break(Safe.Plain(lead + words), Columns - indent, Width);
        for (var i = 0; i < lines.Count; i++)
        {
            // The first line has the indent's room too, but one width for all keeps the edge straight.
            text.Append(' ', i == 0 ? 0 : indent).Append(lines[i]).Append('\n');
        }
    }

    private static string Whole(Fact fact) => fact.Note is { } note ? $"{fact.Value} ({note})" : fact.Value;

    internal static bool Same(string caption, string heading) => string.Equals(caption, heading, StringComparison.OrdinalIgnoreCase);

    /// <summary>Columns of a terminal: two for the wide signs of East Asia and emoji, none for marks that combine.</summary>
    private static double Width(string text)
    {
        var columns = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            columns += rune.Value switch
            {
                >= 0x0300 and <= 0x036F => 0,
                (>= 0x1100 and <= 0x115F) or (>= 0x2E80 and <= 0xA4CF) or (>= 0xAC00 and <= 0xD7A3) or (>= 0xF900 and <= 0xFAFF)
                    or (>= 0xFE30 and <= 0xFE6F) or (>= 0xFF00 and <= 0xFF60) or (>= 0xFFE0 and <= 0xFFE6) or (>= 0x1F300 and <= 0x1FAFF) or (>= 0x20000 and <= 0x3FFFD) => 2,
                _ => 1,
            };
        }

        return columns;
    }
}
