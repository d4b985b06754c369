namespace Ashery.Stock;

/// <summary>One movement in the book, into a bag or out of it.</summary>
/// <param name="Entry">Entry that tells of it; the batch's own entry for what was weighed into a batch.</param>
/// <param name="Day">When.</param>
/// <param name="LineId">Line of the shelf.</param>
/// <param name="Bag">Which bought bag; null for what stood on the shelf before.</param>
/// <param name="Kind">What happened.</param>
/// <param name="Grams">g, positive; of a correction: negative where some was missing.</param>
/// <param name="Assumed">True when nobody named the bag and first-expired-first-out chose between several.</param>
public sealed record StockMove(Guid Entry, DateOnly Day, string LineId, Guid? Bag, StockMoveKind Kind, double Grams, bool Assumed = false)
{
    /// <summary>Pot a feed mixed on the spot went to; null of all other kinds.</summary>
    public string? Pot { get; init; }
}

public enum StockMoveKind
{
    /// <summary>A bag came in.</summary>
    Bought,

    /// <summary>Weighed into a batch.</summary>
    Batch,

    /// <summary>Went into a feed given without a batch.</summary>
    Given,

    /// <summary>Thrown away.</summary>
    Discarded,

    /// <summary>What was left was weighed and differed from the book.</summary>
    Counted,

    /// <summary>More was taken out than the book had: so much must have been there besides.</summary>
    Found,
}
