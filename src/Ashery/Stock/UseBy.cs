using Ashery.Compatibility;

namespace Ashery.Stock;

/// <summary>
/// Until when a batch should be used: the day it is made where its parts may not be kept together, else the earliest best-before of its bags.
/// No months are made up where neither says a day.
/// </summary>
/// <param name="Day">Last day; null when nothing gives one.</param>
/// <param name="Why">In a sentence.</param>
public sealed record UseBy(DateOnly? Day, string Why)
{
    /// <summary>From how the mix keeps and the dates of its bags.</summary>
    public static UseBy Of(DateOnly made, Storage storage, IEnumerable<StockBag> bags)
    {
        if (storage.Class is StorageClass.OnTheDay or StorageClass.Never)
        {
            return new(made, "The day it is mixed: " + storage.Reason);
        }

        StockBag? first = null;
        foreach (var bag in bags)
        {
            first = bag.BestBefore is { } day && !(day >= first?.BestBefore) ? bag : first;
        }

        return first is { BestBefore: { } earliest }
            ? new(earliest, FormattableString.Invariant($"The earliest best-before of its bags ({first.LineId}, {earliest:yyyy-MM-dd})."))
            : new(null, "No bag has a date, and how it keeps names none: good as long as it is dry and runs freely.");
    }
}
