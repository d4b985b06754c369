using Ashery.Gardens;
using Ashery.Journal;
using Ashery.Problems;

namespace Ashery.Stock;

/// <summary>Makes the entry of a batch from what was really weighed.</summary>
public static class BatchMaker
{
    /// <summary>The entry, with the next lot number of its day and the use-by that follows from storage and dates.</summary>
    /// <param name="garden">The garden.</param>
    /// <param name="ledger">Its book before this batch.</param>
    /// <param name="order">What was weighed.</param>
    public static Result<Entry> Make(Garden garden, StockLedger ledger, BatchOrder order)
    {
        var weighed = order.Weighings.Where(static w => w.Grams > 0).ToList();
        var report = BatchReport.Of(garden, order.FeedId, weighed);
        if (!report.Ok)
        {
            return Result.Fail<Entry>(report.Problems);
        }

        if (report.Value.AsMade.Pairs.FirstOrDefault(static p => p.DryToday.IsHardStop) is { } never)
        {
            return Result.Fail<Entry>("weighings", $"{never.A} with {never.B} must never be mixed: {never.DryToday.Reason}", "Leave one of them out; give it apart.");
        }

        var entry = new Entry
        {
            Id = order.Id,
            Day = order.Day,
            Time = order.Time,
            Note = order.Note,
            Facts = new BatchMade(
                order.Lot ?? LotNumber.Next(order.Day, ledger.Batches.Batches), order.FeedId, weighed,
                order.UseBy ?? UseBy.Of(order.Day, report.Value.AsMade.Storage, ledger, weighed).Day),
        };
        return EntryRules.Check(entry) is { Count: > 0 } problems ? Result.Fail<Entry>(problems) : Result.Of(entry, report.Value.Notes);
    }
}

/// <summary>A batch as it was weighed.</summary>
public sealed record BatchOrder
{
    public required Guid Id { get; init; }

    public required DateOnly Day { get; init; }

    public TimeOnly? Time { get; init; }

    public required string FeedId { get; init; }

    /// <summary>What lay on the scale; nothing of a bag that was not used.</summary>
    public required IReadOnlyList<Weighing> Weighings { get; init; }

    /// <summary>Lot number it already has, when an entry is mended; null for the next one.</summary>
    public string? Lot { get; init; }

    /// <summary>Typed by hand; null for the one that follows.</summary>
    public DateOnly? UseBy { get; init; }

    public string Note { get; init; } = "";
}
