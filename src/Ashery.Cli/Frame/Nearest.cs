namespace Ashery.Cli.Frame;

/// <summary>The known word that a misspelt one was meant to be, by the fewest changed signs (Levenshtein 1966).</summary>
internal static class Nearest
{
    /// <summary>Null when nothing is near: at most a third of the signs may differ.</summary>
    public static string? To(string word, IEnumerable<string> known)
    {
        if (word.Length > 64)
        {
            return null;
        }

        string? best = null;
        var fewest = Math.Max(1, word.Length / 3) + 1;
        foreach (var candidate in known)
        {
            var changes = Math.Abs(candidate.Length - word.Length) < fewest ? Changes(word, candidate) : fewest;
            if (changes < fewest)
            {
                (best, fewest) = (candidate, changes);
            }
        }

        return best;
    }

    private static int Changes(string a, string b)
    {
        var row = new int[b.Length + 1];
        for (var j = 0; j <= b.Length; j++)
        {
            row[j] = j;
        }

        for (var i = 1; i <= a.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var replaced = diagonal + (a[i - 1] == b[j - 1] ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(replaced, Math.Min(row[j], row[j - 1]) + 1);
            }
        }

        return row[b.Length];
    }
}
