namespace Ashery.Cards.Layout;

/// <summary>
/// Shares a table's width among its columns: figures get what they need, text columns the rest by need, and a column that needs
/// less than its share gives the remainder to the others. If even the figures are too wide, all shrink alike and cells wrap.
/// </summary>
internal static class ColumnWidths
{
    /// <param name="natural">Width of the widest cell, unbroken.</param>
    /// <param name="isFigure">Columns that should not be broken.</param>
    /// <param name="available">Width for all, gaps left out.</param>
    /// <param name="least">No column below this, while there is room.</param>
    public static double[] Share(IReadOnlyList<double> natural, IReadOnlyList<bool> isFigure, double available, double least)
    {
        var widths = natural.ToArray();
        if (widths.Sum() <= available)
        {
            return widths;
        }

        var fixedSum = Enumerable.Range(0, widths.Length).Where(i => isFigure[i]).Sum(i => natural[i]);
        var texts = Enumerable.Range(0, widths.Length).Where(i => !isFigure[i]).ToList();
        var rest = available - fixedSum;
        if (texts.Count == 0 || rest < texts.Sum(i => Math.Min(natural[i], least)))
        {
            var shrink = available / widths.Sum();
            return [.. widths.Select(w => w * shrink)];
        }

        // Fill from the neediest side: whoever needs less than an even share is settled first.
        foreach (var i in texts.OrderBy(i => natural[i]).ToList())
        {
            widths[i] = Math.Min(natural[i], rest / texts.Count);
            rest -= widths[i];
            texts.Remove(i);
        }

        return widths;
    }
}
