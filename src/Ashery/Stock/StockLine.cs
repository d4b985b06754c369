using Ashery.Gardens;

namespace Ashery.Stock;

/// <summary>A line of the shelf with the bags the book knows of it.</summary>
public sealed record StockLine
{
    /// <summary>Id of the line (<see cref="Bag.Id"/>).</summary>
    public required string Id { get; init; }

    public required string Name { get; init; }

    /// <summary>Material by which feeds ask for it; null when the line is no longer on the shelf and no weighing named it.</summary>
    public required string? MaterialId { get; init; }

    /// <summary>The shelf's own line; null when it was taken off the shelf.</summary>
    public Bag? Shelf { get; init; }

    /// <summary>What stood there before the book, then the bags bought, in the order in which they are to be used up.</summary>
    public required IReadOnlyList<StockBag> Bags { get; init; }

    /// <summary>g in all its bags; null when it holds as much as wanted.</summary>
    public double? Left => Bags.Any(static b => b.Left is null) ? null : Bags.Sum(static b => b.Left!.Value);

    /// <summary>True when something of it was bought, weighed or thrown away: then the book knows better than the shelf's figure.</summary>
    public required bool IsKept { get; init; }

    /// <summary>What the rest is worth, as far as prices are known; null when nothing with a price is left.</summary>
    public double? Value => Bags.Any(static b => b.Value is > 0) ? Bags.Sum(static b => b.Value ?? 0) : Left == 0 ? 0 : null;
}
