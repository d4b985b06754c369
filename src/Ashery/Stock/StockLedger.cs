using Ashery.Gardens;
using Ashery.Journal;
using Ashery.Problems;
using Ashery.Quantities;

namespace Ashery.Stock;

/// <summary>
/// The book of the shelf: what each line and each bought bag holds, worked out anew from the entries that stand. The shelf's own figure
/// (<see cref="Bag.Stock"/>) is what was there before the first entry about that line.
/// </summary>
public sealed record StockLedger
{
    /// <summary>Every line of the shelf, in its order, then lines that entries name and the shelf no longer has.</summary>
    public required IReadOnlyList<StockLine> Lines { get; init; }

    /// <summary>Every movement, oldest first.</summary>
    public required IReadOnlyList<StockMove> Moves { get; init; }

    public required BatchBook Batches { get; init; }

    /// <summary>Where entries contradict each other.</summary>
    public required IReadOnlyList<Problem> Notes { get; init; }

    /// <summary>Writes the book from the entries that stand, in any order; other kinds than those about stock and feeds given do not matter.</summary>
    public static StockLedger Of(Garden garden, IReadOnlyList<Entry> entries) => new StockWalk(garden).Run(entries);

    /// <summary>The kinds of entries it is written from, for whoever asks the journal.</summary>
    public static IReadOnlyList<string> Kinds { get; } = [EntryKind.BagBought, EntryKind.StockCounted, EntryKind.BatchMade, EntryKind.Discarded, EntryKind.FeedGiven];

    public StockLine? Line(string id) => Lines.FirstOrDefault(l => l.Id == id);

    /// <summary>The bag of this line; null for the entry means what stood there before.</summary>
    public StockBag? Bag(string lineId, Guid? bought) => Line(lineId)?.Bags.FirstOrDefault(b => b.Bought == bought);

    /// <summary>g left of a material on all its lines; null when a line of it holds as much as wanted, 0 when there is none.</summary>
    public double? Left(string materialId)
    {
        var sum = 0.0;
        foreach (var line in Lines)
        {
            if (line.MaterialId == materialId && line.Shelf is not null)
            {
                if (line.Left is not { } left)
                {
                    return null;
                }

                sum += left;
            }
        }

        return sum;
    }

    /// <summary>The garden with what the book knows as stock, for stages that ask the shelf.</summary>
    public Garden OnShelf(Garden garden) => garden with
    {
        Shelf = [.. garden.Shelf.Select(b => Line(b.Id) is { IsKept: true, Left: { } left } ? b with { Stock = new Mass(left) } : b)],
    };
}
