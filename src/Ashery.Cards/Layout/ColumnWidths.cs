namespace Ashery.Cards.Layout;

/// <summary>
/// Shares a table's width among its columns: figures get what they need; text columns share the rest by the root of their need, so
/// that a long one gets more but does not starve the others, and one that needs less than its share leaves the remainder. No text
/// column is narrower than its longest word while there is room. If even that is too wide, all shrink alike and words are broken.
/// </summary>
internal static class ColumnWidths
{
    /// <param name="natural">Width of the widest cell, unbroken.</param>
    /// <param name="word">Width of the longest word.</param>
    /// <param name="isFigure">Columns that should not be broken.</param>
    /// <param name="available">Width for all, gaps left out.</param>
    public static double[] Share(IReadOnlyList<double> natural, IReadOnlyList<double> word, IReadOnlyList<bool> isFigure, double available)
    {
        var widths = natural.ToArray();
        if (widths.Sum() <= available)
        {
            return widths;
        }

        // A word of more than a third of the table (somebody's joke) does not count: it will be broken.
        var all = Enumerable.Range(0, widths.Length).ToList();
        var least = all.Select(i => isFigure[i] ? natural[i] : Math.Min(Math.Min(word[i], natural[i]), available / 3)).ToArray();
        if (least.Sum() > available)
        {
            var shrink = available / least.Sum();
            return [.. least.Select(w => w * shrink)];
        }

        // Every column has its least; what is left goes by the root of what it still lacks, the least needy settled first.
        least.CopyTo(widths, 0);
        var rest = available - least.Sum();
        var open = all.Where(i => natural[i] > least[i]).OrderBy(i => natural[i] - least[i]).ToList();
        while (open.Count > 0)
        {
            var i = open[0];
            var share = rest * Math.Sqrt(natural[i] - least[i]) / open.Sum(o => Math.Sqrt(natural[o] - least[o]));
            var more = Math.Min(natural[i] - least[i], share);
            widths[i] += more;
            rest -= more;
            open.RemoveAt(0);
        }

        return widths;
    }
}
