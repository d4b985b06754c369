namespace Ashery.Materials;

/// <summary>Finds what was meant: by edit distance (Damerau 1964, Levenshtein 1966; from memory), and by words that begin or hold what was typed.</summary>
public static class NearestName
{
    /// <summary>Ids whose names are nearest to what was typed, best first, each once.</summary>
    public static IReadOnlyList<string> Find(string typed, IEnumerable<(string Id, string Name)> names, int count)
    {
        var wanted = Plain(typed);
        if (wanted.Length is 0 or > 60)
        {
            return [];
        }

        var best = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var (id, name) in names)
        {
            var score = Score(wanted, Plain(name));
            if (score <= 1 && score < best.GetValueOrDefault(id, double.MaxValue))
            {
                best[id] = score;
            }
        }

        return [.. best.OrderBy(static b => b.Value).ThenBy(static b => b.Key, StringComparer.Ordinal).Take(count).Select(static b => b.Key)];
    }

    // 0 = the same, up to 1 = about a third of the letters differ; more is not near.
    private static double Score(string wanted, string name)
    {
        if (string.Equals(wanted, name, StringComparison.Ordinal))
        {
            return 0;
        }

        if (wanted.Length >= 3 && name.Contains(wanted, StringComparison.Ordinal))
        {
            return 0.3 + (0.4 * (1 - ((double)wanted.Length / name.Length)));
        }

        var allowed = Math.Max(1, Math.Max(wanted.Length, name.Length) * 0.35);
        return Distance(wanted, name) / allowed;
    }

    private static string Plain(string text) => text.Trim().ToLowerInvariant().Replace(' ', '-').Replace('_', '-').Replace("sulph", "sulf", StringComparison.Ordinal);

    // Optimal string alignment: two neighbours swapped, the commonest slip, count as one change.
    private static int Distance(string a, string b)
    {
        var (before, above, row) = (new int[b.Length + 1], new int[b.Length + 1], new int[b.Length + 1]);
        for (var j = 0; j <= b.Length; j++)
        {
            row[j] = j;
        }

        for (var i = 1; i <= a.Length; i++)
        {
            (before, above, row) = (above, row, before);
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var change = above[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                row[j] = Math.Min(change, Math.Min(above[j], row[j - 1]) + 1);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    row[j] = Math.Min(row[j], before[j - 2] + 1);
                }
            }
        }

        return row[b.Length];
    }
}
