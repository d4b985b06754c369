namespace Ashery.Journal;

/// <summary>Words as beginnings: every word that is asked for must begin some word of the text; letters in any case, marks off.</summary>
public static class WordSearch
{
    /// <summary>The words of a text, in small letters, without accents, in their order.</summary>
    public static IReadOnlyList<string> Words(string text)
    {
        List<string> words = [];
        var from = -1;
        var plain = Plain(text);
        for (var i = 0; i <= plain.Length; i++)
        {
            if (i < plain.Length && char.IsLetterOrDigit(plain[i]))
            {
                from = from < 0 ? i : from;
            }
            else if (from >= 0)
            {
                words.Add(plain[from..i]);
                from = -1;
            }
        }

        return words;
    }

    /// <summary>True when every word begins a word of one of the texts; nothing asked for finds nothing.</summary>
    public static bool Matches(IReadOnlyList<string> asked, params ReadOnlySpan<string> texts)
    {
        if (asked.Count == 0)
        {
            return false;
        }

        List<string> words = [];
        foreach (var text in texts)
        {
            words.AddRange(Words(text));
        }

        foreach (var word in asked)
        {
            if (!words.Exists(w => w.StartsWith(word, StringComparison.Ordinal)))
            {
                return false;
            }
        }

        return true;
    }

    private static string Plain(string text)
    {
        var apart = text.IsNormalized(System.Text.NormalizationForm.FormD) ? text : Apart(text);
        var kept = new System.Text.StringBuilder(apart.Length);
        foreach (var c in apart)
        {
            if (System.Globalization.CharUnicodeInfo.GetUnicodeCategory(c) != System.Globalization.UnicodeCategory.NonSpacingMark)
            {
                kept.Append(char.ToLowerInvariant(c));
            }
        }

        return kept.ToString();
    }

    private static string Apart(string text)
    {
        try
        {
            return text.Normalize(System.Text.NormalizationForm.FormD);
        }
        catch (ArgumentException)
        {
            // Half a sign, as a cut paste leaves it: taken as it is.
            return text;
        }
    }
}
