using Ashery.Gardens;

namespace Ashery.Journal;

/// <summary>What a gram of feed costs: of its own batch where the books know, else by the prices of the shelf.</summary>
public sealed class FeedPrices(Garden garden, IReadOnlyDictionary<Guid, double> batches)
{
    private readonly Dictionary<string, double?> byShelf = new(StringComparer.Ordinal);

    /// <summary>Price a gram in the garden's currency; null when a part has none.</summary>
    public double? Of(FeedGiven given) =>
        given.Batch is { } batch && batches.TryGetValue(batch, out var price) ? price : ByShelf(given.FeedId);

    /// <summary>Price of a gram by the bags as they stand on the shelf.</summary>
    public double? ByShelf(string feedId)
    {
        if (byShelf.TryGetValue(feedId, out var known))
        {
            return known;
        }

        double? sum = null;
        if (garden.Feeds.FirstOrDefault(f => f.Id == feedId) is { } feed)
        {
            sum = 0;
            foreach (var (material, share) in feed.Parts)
            {
                sum += garden.Shelf.FirstOrDefault(b => b.Material.Id == material)?.PricePerKg / 1000 * share;
            }
        }

        return byShelf[feedId] = sum;
    }
}
