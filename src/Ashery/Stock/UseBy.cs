using Ashery.Compatibility;
using Ashery.Journal;

namespace Ashery.Stock;

/// <summary>
/// Until when a batch should be used: the day it is made where its parts may not be kept together, else the earliest best-before of its bags.
/// No months are made up where neither says a day.
/// </summary>
/// <param name="Day">Last day; null when nothing gives one.</param>
/// <param name="Why">In a sentence.</param>
public sealed record UseBy(DateOnly? Day, string Why)
{
    /// <summary>Of what was weighed: where a weighing names no bag, of those that expire first.</summary>
    public static UseBy Of(DateOnly made, Storage storage, StockLedger ledger, IEnumerable<Weighing> weighings) =>
        Of(made, storage, weighings.Where(static w => w.Grams > 0).SelectMany(w => FirstExpired.Bags(ledger, w, made)));

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
            : new(null, "No bag of it has a date, and how it keeps names none: good as long as it is dry and runs freely.");
    }
}
