namespace Ashery.Stock;

/// <summary>
/// One bag in the book: a bag that was bought, or what stood on the shelf before the book began. Opening (or bought) + corrected = left + in batches +
/// given + discarded, always.
/// </summary>
public sealed record StockBag
{
    /// <summary>Line of the shelf it fills.</summary>
    public required string LineId { get; init; }

    /// <summary>Entry by which it was bought; null for what stood on the shelf before.</summary>
    public Guid? Bought { get; init; }

    /// <summary>Day it was bought; null for what stood there before.</summary>
    public DateOnly? BoughtOn { get; init; }

    /// <summary>The maker's lot.</summary>
    public string? Lot { get; init; }

    public DateOnly? BestBefore { get; init; }

    /// <summary>In the garden's currency; null when neither the bag nor its line of the shelf has a price.</summary>
    public double? PricePerGram { get; init; }

    /// <summary>True when the price is that of the shelf's line, none being written with the bag.</summary>
    public bool IsShelfPrice { get; init; }

    /// <summary>g it came with.</summary>
    public required double Opening { get; init; }

    /// <summary>g weighed into batches.</summary>
    public required double InBatches { get; init; }

    /// <summary>g that went into feed given without a batch.</summary>
    public required double Given { get; init; }

    /// <summary>g thrown away.</summary>
    public required double Discarded { get; init; }

    /// <summary>g by which weighing what is left set the book right; negative where some was missing.</summary>
    public required double Corrected { get; init; }

    /// <summary>g in it now; null when nobody ever said how much there is.</summary>
    public required double? Left { get; init; }

    /// <summary>What the rest is worth; null without a price, 0 when empty.</summary>
    public double? Value => Left is not { } g ? null : g <= 0 ? 0 : PricePerGram * g;
}
