using System.Text;

namespace Ashery.Cli.Tests.Frame;

/// <summary>Splits a line as a shell does: blanks part words, double and single quotes hold them together.</summary>
internal static class Shell
{
    public static string[] Split(string line)
    {
        var words = new List<string>();
        var word = new StringBuilder();
        var quote = '\0';
        var inWord = false;
        foreach (var c in line)
        {
            if (quote != '\0')
            {
                if (c == quote)
                {
                    quote = '\0';
                }
                else
                {
                    word.Append(c);
                }
            }
            else if (c is '"' or '\'')
            {
                quote = c;
                inWord = true;
            }
            else if (c == ' ')
            {
                if (inWord)
                {
                    words.Add(word.ToString());
                    word.Clear();
                    inWord = false;
                }
            }
            else
            {
                word.Append(c);
                inWord = true;
            }
        }

        if (inWord)
        {
            words.Add(word.ToString());
        }

        return [.. words];
    }
}
