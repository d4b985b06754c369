using Ashery.Journal;

namespace Ashery.Stock;

/// <summary>A mixed batch: what went in, what came out, what is left. Made + over = given + discarded + left, always.</summary>
public sealed record Batch
{
    /// <summary>Its entry: what a label's code opens.</summary>
    public required Guid Id { get; init; }

    public required string Lot { get; init; }

    public required string FeedId { get; init; }

    /// <summary>Name of the feed; its id where the garden no longer has it.</summary>
    public required string FeedName { get; init; }

    public required DateOnly Made { get; init; }

    public DateOnly? UseBy { get; init; }

    public string Note { get; init; } = "";

    /// <summary>As they stand in the entry.</summary>
    public required IReadOnlyList<Weighing> Weighings { get; init; }

    /// <summary>Which bags that came from; of a weighing without a named bag by first-expired-first-out.</summary>
    public required IReadOnlyList<StockMove> Draws { get; init; }

    /// <summary>g as weighed.</summary>
    public required double Grams { get; init; }

    /// <summary>g given to pots.</summary>
    public required double Given { get; init; }

    public required double Discarded { get; init; }

    public required double Left { get; init; }

    /// <summary>g given or thrown away beyond what was made: a slip somewhere.</summary>
    public double Over { get; init; }
}

/// <summary>Feed that one pot (or each of a row of equal pots) got.</summary>
/// <param name="Entry">Entry that tells of it.</param>
/// <param name="Day">When.</param>
/// <param name="FeedId">Which feed.</param>
/// <param name="PotId">Which pot.</param>
/// <param name="GramsEach">g for one pot.</param>
/// <param name="Pots">How many equal pots got as much.</param>
/// <param name="Batch">Batch it came from; null when it was mixed on the spot.</param>
/// <param name="Assumed">True when nobody named the batch and the open batch of that feed was taken.</param>
public sealed record FeedUse(Guid Entry, DateOnly Day, string FeedId, string PotId, double GramsEach, int Pots, Guid? Batch, bool Assumed)
{
    /// <summary>g for all of them.</summary>
    public double Grams => GramsEach * Pots;
}
