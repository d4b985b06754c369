namespace Ashery.Stock;

/// <summary>The batches of a garden and every feed given from them or mixed on the spot.</summary>
/// <param name="Batches">Newest first.</param>
/// <param name="Uses">Oldest first.</param>
/// <param name="Discards">What was thrown away of batches, oldest first.</param>
public sealed record BatchBook(IReadOnlyList<Batch> Batches, IReadOnlyList<FeedUse> Uses, IReadOnlyList<BatchDiscard> Discards)
{
    /// <summary>The batch of this entry; null when there is none.</summary>
    public Batch? Find(Guid id)
    {
        foreach (var batch in Batches)
        {
            if (batch.Id == id)
            {
                return batch;
            }
        }

        return null;
    }

    /// <summary>Batches with this lot number: one, unless two people made a batch at the same time.</summary>
    public IReadOnlyList<Batch> OfLot(string lot) => [.. Batches.Where(b => string.Equals(b.Lot, lot.Trim(), StringComparison.OrdinalIgnoreCase))];

    /// <summary>What is left of a feed already mixed, first to be used first.</summary>
    public IReadOnlyList<Batch> Open(string feedId) => FirstExpired.Order(Batches.Where(b => b.FeedId == feedId && b.Left > FirstExpired.Dust));

    /// <summary>Feeds given from a batch, oldest first.</summary>
    public IEnumerable<FeedUse> From(Guid batch) => Uses.Where(u => u.Batch == batch);
}

/// <summary>Some of a batch was thrown away.</summary>
public sealed record BatchDiscard(Guid Entry, DateOnly Day, Guid Batch, double Grams, string Why);
