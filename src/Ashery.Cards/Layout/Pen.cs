using Ashery.Cards.Drawing;
using Ashery.Cards.Fonts;

namespace Ashery.Cards.Layout;

/// <summary>
/// Writes down a sheet and turns to the next when it is full. Everything is in points, measured with the shipped fonts, so that
/// what is laid out here is what PDF and SVG show.
/// </summary>
internal sealed class Pen
{
    private readonly List<List<Mark>> pages = [];
    private readonly Paper paper;
    private readonly double top;

    /// <param name="paper">The sheet.</param>
    /// <param name="textSize">Size of running text.</param>
    /// <param name="runningHead">Stands at the head of every page after the first.</param>
    /// <param name="endless">One page as long as it takes.</param>
    public Pen(Paper paper, double textSize, string runningHead, bool endless)
    {
        this.paper = paper;
        TextSize = textSize;
        RunningHead = runningHead;
        Left = top = paper.PointsMargin;
        Right = paper.PointsWide - paper.PointsMargin;
        IsLabel = paper.Height < 100;
        // The foot line with the page number takes a line and a half.
        Bottom = endless ? double.PositiveInfinity : paper.PointsHigh - paper.PointsMargin - (IsLabel ? 0 : 1.8 * textSize);
        pages.Add([]);
        Y = top;
    }

    public double TextSize { get; }

    public double Small => TextSize * 0.86;

    public double Leading => TextSize * 1.36;

    public double Left { get; }

    public double Right { get; }

    public double Width => Right - Left;

    public double Bottom { get; }

    public bool IsLabel { get; }

    /// <summary>Where the next thing begins.</summary>
    public double Y { get; private set; }

    public string RunningHead { get; }

    public IReadOnlyList<IReadOnlyList<Mark>> Pages => pages;

    /// <summary>Called at the head of every further page, to repeat what runs over.</summary>
    public Action? OnNewPage { get; set; }

    /// <summary>A pen of the same kind on an endless sheet, to try out how tall something gets.</summary>
    public Pen Endless() => new(paper, TextSize, RunningHead, endless: true);

    /// <summary>Goes to a new page unless so much room is left; never twice for what is taller than a page.</summary>
    public void Need(double height)
    {
        if (Y + height > Bottom && Y > top + (4 * TextSize))
        {
            NewPage();
        }
    }

    public void Skip(double height) => Y += height;

    public void Draw(Mark mark) => pages[^1].Add(mark);

    public void Rule(double x1, double x2, Tone tone, double width) => Draw(new Strokes([(new(x1, Y), new(x2, Y))], tone, width));

    /// <summary>True once a sign had to be printed as a box.</summary>
    public bool LostSigns { get; private set; }

    public IReadOnlyList<string> Break(string text, double width, double size, Face face = Face.Text)
    {
        var printable = Typeface.Printable(text, face);
        LostSigns |= printable.Contains(Typeface.Missing, StringComparison.Ordinal) && !text.Contains(Typeface.Missing, StringComparison.Ordinal);
        return LineBreaker.Break(printable, width, t => Typeface.Width(t, size, face));
    }

    /// <summary>One line, cut with an ellipsis where it is too long.</summary>
    public string Fit(string text, double width, double size)
    {
        var lines = Break(text, width, size);
        return lines.Count == 1 ? lines[0] : Break(text, width - Typeface.Width("…", size, Face.Text), size)[0] + "…";
    }

    /// <summary>Lines one under the other, turning the page between lines where it must; <paramref name="before"/> is called for each.</summary>
    public void Lines(IReadOnlyList<string> lines, double x, double size, Face face = Face.Text, Tone tone = Tone.Ink, Action? before = null)
    {
        foreach (var line in lines)
        {
            if (Y + (size * 1.36) > Bottom)
            {
                NewPage();
            }

            before?.Invoke();
            Line(line, x, size, face, tone);
            Y += size * 1.36;
        }
    }

    /// <summary>One line at the present height, which stays.</summary>
    public void Line(string line, double x, double size, Face face = Face.Text, Tone tone = Tone.Ink, Anchor anchor = Anchor.Start) =>
        Draw(new Words(new(x, Y + size), line, size, tone, anchor, face));

    private void NewPage()
    {
        pages.Add([]);
        Y = top;
        Line(Fit(RunningHead, Width, Small), Left, Small, Face.Text, Tone.Soft);
        Y += Small * 1.5;
        Rule(Left, Right, Tone.Line, 0.5);
        Y += Small;
        OnNewPage?.Invoke();
    }
}
