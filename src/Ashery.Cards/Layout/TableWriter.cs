using Ashery.Cards.Drawing;
using Ashery.Cards.Fonts;

namespace Ashery.Cards.Layout;

/// <summary>Writes a table: hairlines between rows, figures to the right, the heading again on every page it runs over.</summary>
internal static class TableWriter
{
    public static void Write(Pen pen, TableBlock table, string heading, double indent = 0, bool barred = false)
    {
        var t = pen.TextSize;
        var left = pen.Left + indent;
        if (!CardText.Same(table.Caption, heading))
        {
            pen.Skip(t * 0.5);
            pen.Need(4 * pen.Leading);
            Barred(pen, barred, () => pen.Lines(pen.Break(table.Caption, pen.Width - indent, pen.Small), left, pen.Small, tone: Tone.Soft));
        }

        var (lefts, widths) = Columns(pen, table, indent);
        var right = lefts[^1] + widths[^1];
        void Head() => Barred(pen, barred, () =>
        {
            Row(pen, table, [.. table.Columns.Select(c => c.Heading)], lefts, widths, Face.Bold, Tone.Soft, pen.Small);
            pen.Rule(left, right, Tone.Edge, 0.8);
            pen.Skip(t * 0.25);
        });

        Head();
        var outer = pen.OnNewPage;
        pen.OnNewPage = Head;
        for (var i = 0; i < table.Rows.Count; i++)
        {
            var last = i == table.Rows.Count - 1;
            if (table.Rows[i].Count < table.Columns.Count)
            {
                Group(pen, table.Rows[i][0], right, i + 1 < table.Rows.Count ? Height(pen, table.Rows[i + 1], widths) : 0);
                continue;
            }

            // The last row takes the sum with it, so that no sum stands alone on a page.
            pen.Need(last && table.Total.Count > 0 ? 2.6 * pen.Leading : 0);
            var row = table.Rows[i];
            Barred(pen, barred, () =>
            {
                Row(pen, table, row, lefts, widths, Face.Text, Tone.Ink, t);
                pen.Rule(left, right, last && table.Total.Count > 0 ? Tone.Edge : Tone.Line, last && table.Total.Count > 0 ? 0.8 : 0.5);
                pen.Skip(t * 0.25);
            });
        }

        if (table.Total.Count > 0)
        {
            Row(pen, table, table.Total, lefts, widths, Face.Bold, Tone.Ink, t);
        }

        pen.OnNewPage = outer;
        if (table.Note is { } note)
        {
            pen.Skip(t * 0.2);
            pen.Lines(pen.Break(note, pen.Width, pen.Small), pen.Left, pen.Small, tone: Tone.Soft);
        }
    }

    /// <summary>Draws the bar of a caution beside what is written, unless the page was turned in it.</summary>
    private static void Barred(Pen pen, bool barred, Action write)
    {
        pen.Need(barred ? 2 * pen.Leading : 0);
        var (page, top) = (pen.Pages.Count, pen.Y);
        write();
        if (barred && pen.Pages.Count == page)
        {
            pen.Draw(new Shape([new(pen.Left, top), new(pen.Left + 2.2, top), new(pen.Left + 2.2, pen.Y), new(pen.Left, pen.Y)], Tone.Ember));
        }
    }

    /// <summary>A heading within the table, never the last thing on a page.</summary>
    private static void Group(Pen pen, string heading, double right, double next)
    {
        pen.Need((2.2 * pen.Leading) + next);
        pen.Skip(pen.TextSize * 0.5);
        pen.Lines(pen.Break(heading, right - pen.Left, pen.TextSize, Face.Head), pen.Left, pen.TextSize, Face.Head);
        pen.Rule(pen.Left, right, Tone.Edge, 0.5);
        pen.Skip(pen.TextSize * 0.25);
    }

    /// <summary>Room to begin a table in: its caption and heading with the first row, and the heading over that.</summary>
    public static double LeastHeight(Pen pen, TableBlock table)
    {
        var (_, widths) = Columns(pen, table, 0);
        var first = table.Rows.FirstOrDefault(r => r.Count == table.Columns.Count);
        return (5 * pen.Leading) + (first is null ? 0 : Height(pen, first, widths));
    }

    /// <summary>Height of a row that stays whole; three lines of one that will be cut.</summary>
    private static double Height(Pen pen, IReadOnlyList<string> cells, double[] widths)
    {
        if (cells.Count < widths.Length)
        {
            return pen.Leading;
        }

        var height = cells.Select((c, i) => pen.Break(c, widths[i], pen.TextSize).Count).Max() * pen.Leading;
        return height < (pen.Bottom - pen.Left) / 3 ? height : 3 * pen.Leading;
    }

    private static (double[] Lefts, double[] Widths) Columns(Pen pen, TableBlock table, double indent)
    {
        var t = pen.TextSize;
        var gap = t * (table.Columns.Count > 5 ? 1 : 1.3);
        var rows = table.Rows.Append(table.Total).Where(r => r.Count == table.Columns.Count).ToList();
        double Bold(string text, double size) => Typeface.Width(Typeface.Printable(text, Face.Bold), size, Face.Bold);
        var natural = table.Columns.Select((c, i) => rows.Select(r => Bold(r[i], t)).Append(Bold(c.Heading, pen.Small)).Max() + 0.1).ToList();
        var words = table.Columns.Select((c, i) => rows.SelectMany(r => r[i].Split(' ')).Select(w => Bold(w, t)).Concat(c.Heading.Split(' ').Select(w => Bold(w, pen.Small))).Max() + 0.1).ToList();
        var room = pen.Width - indent - (gap * (natural.Count - 1));
        var widths = ColumnWidths.Share(natural, words, [.. table.Columns.Select(c => c.IsFigure)], room);

        // What is left goes to the text columns by their need, so that the table fills the sheet; one much narrower than the sheet is
        // only let out by half, for the eye has to find the figure that belongs to a name.
        var spare = Math.Min(room - widths.Sum(), Math.Max(widths.Sum() * 0.5, (0.7 * (pen.Width - indent)) - widths.Sum()));
        var texts = Enumerable.Range(0, widths.Length).Where(i => !table.Columns[i].IsFigure).ToList();
        var need = texts.Sum(i => widths[i]);
        foreach (var i in texts)
        {
            widths[i] += spare * widths[i] / need;
        }

        var lefts = new double[widths.Length];
        for (var i = 0; i < widths.Length; i++)
        {
            lefts[i] = i == 0 ? pen.Left + indent : lefts[i - 1] + widths[i - 1] + gap;
        }

        return (lefts, widths);
    }

    private static void Row(Pen pen, TableBlock table, IReadOnlyList<string> cells, double[] lefts, double[] widths, Face face, Tone tone, double size)
    {
        var wrapped = cells.Select((c, i) => pen.Break(c, widths[i], size, face)).ToList();
        var line = size * 1.36;
        var height = (wrapped.Max(w => w.Count) * line) + (pen.TextSize * 0.2);

        // A row stays whole while it is not taller than a third of a page; a taller one is cut between lines.
        var page = double.IsPositiveInfinity(pen.Bottom) ? double.PositiveInfinity : pen.Bottom - pen.Left;
        if (height < page / 3)
        {
            pen.Need(height);
            for (var i = 0; i < cells.Count; i++)
            {
                Cell(pen, wrapped[i], lefts[i], widths[i], table.Columns[i].IsFigure, face, tone, size, line);
            }

            pen.Skip(height);
            return;
        }

        for (var from = 0; from < wrapped.Max(w => w.Count);)
        {
            pen.Need(2 * line);
            var fits = Math.Max(1, (int)((pen.Bottom - pen.Y) / line));
            for (var i = 0; i < cells.Count; i++)
            {
                Cell(pen, [.. wrapped[i].Skip(from).Take(fits)], lefts[i], widths[i], table.Columns[i].IsFigure, face, tone, size, line);
            }

            pen.Skip(Math.Min(fits, wrapped.Max(w => w.Count) - from) * line);
            from += fits;
        }

        pen.Skip(pen.TextSize * 0.2);
    }

    private static void Cell(Pen pen, IReadOnlyList<string> lines, double left, double width, bool isFigure, Face face, Tone tone, double size, double line)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            var at = new Spot(isFigure ? left + width : left, pen.Y + size + (i * line));
            pen.Draw(new Words(at, lines[i], size, tone, isFigure ? Anchor.End : Anchor.Start, face));
        }
    }
}
