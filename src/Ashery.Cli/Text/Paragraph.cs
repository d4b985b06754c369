namespace Ashery.Cli.Text;

/// <summary>Breaks words into lines.</summary>
internal static class Paragraph
{
    /// <summary>Writes a text in lines of at most <paramref name="width"/> signs; a longer word stands alone.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="text">Blanks at its start are kept as an indent.</param>
    /// <param name="width">Signs in a line.</param>
    /// <param name="hanging">Indent of the second and later lines.</param>
    public static void Write(TextWriter output, string text, int width, int hanging = 0)
    {
        foreach (var line in Lines(text, width, hanging))
        {
            output.WriteLine(line);
        }
    }

    public static IReadOnlyList<string> Lines(string text, int width, int hanging = 0)
    {
        var indent = text.Length - text.TrimStart(' ').Length;
        var lines = new List<string>();
        var line = new string(' ', indent);
        var empty = true;
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (!empty && line.Length + 1 + word.Length > width)
            {
                lines.Add(line);
                line = new string(' ', hanging);
                empty = true;
            }

            line += empty ? word : " " + word;
            empty = false;
        }

        lines.Add(line);
        return lines;
    }
}
