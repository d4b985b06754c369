namespace Ashery.Cli.Text;

/// <summary>
/// A plain table: headings, a rule under them, columns two blanks apart, figures to the right. When it is wider than the
/// line, columns of words are broken into several lines, the last one first.
/// </summary>
internal sealed class Table
{
    private const int Gap = 2;
    private const int Narrowest = 8;
    private const int Comfortable = 16;

    private readonly (string Heading, bool Right)[] columns;
    private readonly List<string[]> rows = [];

    /// <param name="headings">A heading that starts with <c>&gt;</c> stands over figures, to the right.</param>
    public Table(params IReadOnlyList<string> headings) =>
        columns = [.. headings.Select(static h => h.StartsWith('>') ? (h[1..], true) : (h, false))];

    public int Count => rows.Count;

    public void Add(params IReadOnlyList<string> cells)
    {
        if (cells.Count != columns.Length)
        {
            throw new ArgumentException($"{cells.Count} cells for {columns.Length} columns", nameof(cells));
        }

        rows.Add([.. cells]);
    }

    public void Write(TextWriter output, int width, int indent = 0)
    {
        var widths = Widths(width - indent);
        WriteRow(output, [.. columns.Select(static c => c.Heading)], widths, indent);
        WriteRow(output, [.. widths.Select(static w => new string('-', w))], widths, indent);
        foreach (var row in rows)
        {
            WriteRow(output, row, widths, indent);
        }
    }

    private int[] Widths(int room)
    {
        var widths = new int[columns.Length];
        for (var c = 0; c < widths.Length; c++)
        {
            widths[c] = columns[c].Heading.Length;
            foreach (var row in rows)
            {
                widths[c] = Math.Max(widths[c], row[c].Length);
            }
        }

        for (var over = widths.Sum() + (Gap * (widths.Length - 1)) - room; over > 0; over--)
        {
            var widest = ToNarrow(widths);
            if (widest < 0)
            {
                break;
            }

            widths[widest]--;
        }

        return widths;
    }

    // The last column of words gives way first, since it is a name or a reason; the first holds what is typed again.
    private int ToNarrow(int[] widths)
    {
        for (var c = columns.Length - 1; c > 0; c--)
        {
            if (!columns[c].Right)
            {
                if (widths[c] > Comfortable)
                {
                    return c;
                }

                break;
            }
        }

        var widest = -1;
        for (var c = 1; c < widths.Length; c++)
        {
            if (!columns[c].Right && widths[c] > Narrowest && (widest < 0 || widths[c] > widths[widest]))
            {
                widest = c;
            }
        }

        return widest < 0 && !columns[0].Right && widths[0] > Narrowest ? 0 : widest;
    }

    private void WriteRow(TextWriter output, string[] cells, int[] widths, int indent)
    {
        var lines = new IReadOnlyList<string>[cells.Length];
        var height = 1;
        for (var c = 0; c < cells.Length; c++)
        {
            lines[c] = cells[c].Length <= widths[c] ? [cells[c]] : Broken(cells[c], widths[c]);
            height = Math.Max(height, lines[c].Count);
        }

        for (var l = 0; l < height; l++)
        {
            var text = new string(' ', indent);
            for (var c = 0; c < cells.Length; c++)
            {
                var cell = l < lines[c].Count ? lines[c][l] : string.Empty;
                text += columns[c].Right ? cell.PadLeft(widths[c]) : cell.PadRight(widths[c]);
                text += c < cells.Length - 1 ? "  " : string.Empty;
            }

            output.WriteLine(text.TrimEnd());
        }
    }

    private static List<string> Broken(string text, int width)
    {
        var lines = new List<string>();
        foreach (var line in Paragraph.Lines(text, width))
        {
            // A word longer than the column, such as a pasted address, is cut.
            for (var at = 0; at < line.Length; at += width)
            {
                lines.Add(line.Substring(at, Math.Min(width, line.Length - at)));
            }
        }

        return lines;
    }
}
