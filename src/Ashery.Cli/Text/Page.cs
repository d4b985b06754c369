using Ashery.Cli.Frame;

namespace Ashery.Cli.Text;

/// <summary>The parts a text answer is made of: a first line, titles, facts with a name before them, bullets.</summary>
internal sealed class Page(Terminal terminal)
{
    private const int FactColumn = 24;

    private TextWriter Output => terminal.Output;

    /// <summary>The answer in a line, bold where the terminal can.</summary>
    public void Heading(string text)
    {
        foreach (var line in Paragraph.Lines(text, terminal.Width))
        {
            Output.WriteLine(Bold(line));
        }
    }

    /// <summary>A title with a blank line before it.</summary>
    public void Title(string text)
    {
        Output.WriteLine();
        Output.WriteLine(Bold(text));
    }

    /// <summary>A name and what is known; nothing is written when nothing is known.</summary>
    public void Fact(string name, string? value)
    {
        if (string.IsNullOrEmpty(value))
        {
            return;
        }

        var lines = Paragraph.Lines(value, terminal.Width - FactColumn);
        for (var i = 0; i < lines.Count; i++)
        {
            Output.WriteLine((i == 0 ? "  " + name : string.Empty).PadRight(FactColumn) + lines[i]);
        }
    }

    /// <summary>A title and a list under it; nothing when the list is empty.</summary>
    public void Bullets(string title, IReadOnlyList<string> items)
    {
        if (items.Count == 0)
        {
            return;
        }

        Title(title);
        foreach (var item in items)
        {
            Bullet(item);
        }
    }

    public void Bullet(string item) => Paragraph.Write(Output, "  - " + SafeText.Of(item), terminal.Width, hanging: 4);

    public void Text(string text, int indent = 0) => Text(text, indent, indent);

    public void Text(string text, int indent, int hanging) => Paragraph.Write(Output, new string(' ', indent) + text, terminal.Width, hanging);

    public void Blank() => Output.WriteLine();

    private string Bold(string text) => terminal.Styled ? $"\u001b[1m{text}\u001b[0m" : text;
}
