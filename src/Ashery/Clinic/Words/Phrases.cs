namespace Ashery.Clinic.Words;

/// <summary>Words as growers write them, taken apart without regard to case or signs.</summary>
internal static class Phrases
{
    /// <summary>Letters, digits and inner hyphens make a word; everything else parts words.</summary>
    public static List<string> Split(string text)
    {
        var words = new List<string>();
        var start = -1;
        for (var i = 0; i <= text.Length; i++)
        {
            var inside = i < text.Length && (char.IsLetterOrDigit(text[i]) || text[i] == '\'' || (text[i] == '-' && start >= 0 && i + 1 < text.Length && char.IsLetterOrDigit(text[i + 1])));
            if (inside && start < 0)
            {
                start = i;
            }
            else if (!inside && start >= 0)
            {
                words.Add(text[start..i].ToLowerInvariant());
                start = -1;
            }
        }

        return words;
    }

    /// <summary>Does the phrase stand in the text, word for word? Plurals in s count.</summary>
    public static bool Has(string text, string phrase)
    {
        var words = Split(text);
        var wanted = Split(phrase);
        for (var i = 0; wanted.Count > 0 && i + wanted.Count <= words.Count; i++)
        {
            var fits = true;
            for (var k = 0; fits && k < wanted.Count; k++)
            {
                fits = words[i + k] == wanted[k] || words[i + k] == wanted[k] + "s";
            }

            if (fits)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Does a word fit a word of the lists, where a star stands for any ending?</summary>
    public static bool Fits(string word, string pattern) =>
        pattern[^1] == '*' ? word.AsSpan().StartsWith(pattern.AsSpan(0, pattern.Length - 1), StringComparison.Ordinal) : word == pattern;
}
