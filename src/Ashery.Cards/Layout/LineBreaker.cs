using System.Globalization;
using System.Text;

namespace Ashery.Cards.Layout;

/// <summary>
/// Breaks text into lines no wider than allowed, whatever the measure (points or columns). Breaks at spaces; a word wider than a
/// line is broken after a hyphen or slash where it has one, else between signs, so that nothing ever runs off the paper. A figure
/// and its unit stay on one line, and so do a thing and how often.
/// </summary>
internal static class LineBreaker
{
    private static readonly HashSet<string> Units = new(StringComparer.Ordinal) { "g", "kg", "mL", "L", "gal", "%", "°C", "mm", "mOsm/kg", "fl" };

    public static IReadOnlyList<string> Break(string text, double width, Func<string, double> measure)
    {
        var lines = new List<string>();
        var line = "";
        foreach (var word in Words(text))
        {
            var longer = line.Length == 0 ? word : line + " " + word;
            if (measure(longer) <= width)
            {
                line = longer;
                continue;
            }

            if (line.Length > 0)
            {
                lines.Add(line);
            }

            line = word;
            while (measure(line) > width)
            {
                var head = Head(line, width, measure);
                if (head.Length == line.Length)
                {
                    break;
                }

                lines.Add(head.TrimEnd());
                line = line[head.Length..].TrimStart();
            }
        }

        if (line.Length > 0 || lines.Count == 0)
        {
            lines.Add(line);
        }

        return lines;
    }

    /// <summary>Words, with a unit joined to the figure before it, and × to both sides.</summary>
    private static List<string> Words(string text)
    {
        var words = new List<string>();
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (words.Count > 0 && (word == "×" || words[^1].EndsWith('×') || (char.IsAsciiDigit(words[^1][^1]) && Units.Contains(word.TrimEnd('.', ',', ';', ':', ')')))))
            {
                words[^1] += " " + word;
            }
            else
            {
                words.Add(word);
            }
        }

        return words;
    }

    /// <summary>As much of a word as fits; at least one sign, so that it always gets on.</summary>
    private static string Head(string word, double width, Func<string, double> measure)
    {
        var head = new StringBuilder();
        var hyphen = 0;
        var signs = StringInfo.GetTextElementEnumerator(word);
        while (signs.MoveNext())
        {
            var sign = signs.GetTextElement();
            if (head.Length > 0 && measure(head + sign) > width)
            {
                break;
            }

            head.Append(sign);
            hyphen = sign is "-" or "/" or " " ? head.Length : hyphen;
        }

        return hyphen > 1 ? word[..hyphen] : head.ToString();
    }
}
