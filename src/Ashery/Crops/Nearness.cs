namespace Ashery.Crops;

/// <summary>How near a typed name is to a known one: a part of it counts as nearest, then letters to change.</summary>
internal static class Nearness
{
    /// <summary>The largest rank still worth suggesting.</summary>
    public const int Far = 3;

    private const int LongestCompared = 64;

    public static int Rank(string typed, params ReadOnlySpan<string> names)
    {
        var best = int.MaxValue;
        if (typed.Length is 0 or > LongestCompared)
        {
            return best;
        }

        foreach (var name in names)
        {
            var rank = typed.Length >= 3 && name.Contains(typed, StringComparison.OrdinalIgnoreCase) ? 0 : Distance(typed, name);
            best = Math.Min(best, rank);
        }

        return best;
    }

    /// <summary>Levenshtein distance, ignoring case.</summary>
    private static int Distance(string a, string b)
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
                var substitution = diagonal + (char.ToUpperInvariant(a[i - 1]) == char.ToUpperInvariant(b[j - 1]) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(substitution, Math.Min(row[j], row[j - 1]) + 1);
            }
        }

        return row[b.Length];
    }
}
