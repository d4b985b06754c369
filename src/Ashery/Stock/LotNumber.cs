using System.Globalization;

namespace Ashery.Stock;

/// <summary>
/// Lot number of a batch: the day it was made and which batch of that day it is, <c>261125-01</c>. Short enough for a lid and a telephone. Two
/// people who make a batch at the same moment may get the same; the label's code holds the batch's own key, which never repeats.
/// </summary>
public static class LotNumber
{
    /// <summary>The next free number of a day.</summary>
    public static string Next(DateOnly day, IEnumerable<Batch> batches)
    {
        var start = day.ToString("yyMMdd", CultureInfo.InvariantCulture) + "-";
        var last = 0;
        foreach (var batch in batches)
        {
            if (batch.Lot.StartsWith(start, StringComparison.Ordinal)
                && int.TryParse(batch.Lot.AsSpan(start.Length), NumberStyles.None, CultureInfo.InvariantCulture, out var number))
            {
                last = Math.Max(last, number);
            }
        }

        return start + (last + 1).ToString("00", CultureInfo.InvariantCulture);
    }
}
