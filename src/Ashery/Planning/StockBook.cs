using Ashery.Feeds;
using Ashery.Gardens;

namespace Ashery.Planning;

/// <summary>What the plan takes from the shelf, bag by bag, and when a bag runs out.</summary>
internal sealed class StockBook
{
    private readonly Dictionary<string, double> left = new(StringComparer.Ordinal);
    private readonly Dictionary<string, double> needed = new(StringComparer.Ordinal);
    private readonly Dictionary<string, DateOnly> runsOut = new(StringComparer.Ordinal);

    public StockBook(Garden garden)
    {
        foreach (var bag in garden.Shelf)
        {
            // A bag without a stock figure holds as much as wanted.
            left[bag.Material.Id] = left.GetValueOrDefault(bag.Material.Id) + (bag.Stock?.Grams ?? double.PositiveInfinity);
        }

        OnShelf = new Dictionary<string, double>(left, StringComparer.Ordinal);
    }

    /// <summary>g on the shelf at the start, by material.</summary>
    public IReadOnlyDictionary<string, double> OnShelf { get; }

    /// <summary>g the plan took, by material.</summary>
    public IReadOnlyDictionary<string, double> Needed => needed;

    /// <summary>First day a material was short.</summary>
    public IReadOnlyDictionary<string, DateOnly> RunsOut => runsOut;

    /// <summary>g left of a material.</summary>
    public double Left(string materialId) => left.GetValueOrDefault(materialId);

    /// <summary>A part whose bag is on the shelf but does not hold enough for so many g of feed; null when all do.</summary>
    public string? ShortOf(Feed feed, double grams)
    {
        foreach (var (material, share) in feed.Parts)
        {
            if (left.TryGetValue(material, out var has) && has < (share * grams) - 1e-9)
            {
                return material;
            }
        }

        return null;
    }

    /// <summary>True when every part is on the shelf in sufficient amount.</summary>
    public bool Covers(Feed feed, double grams) => feed.Parts.All(p => left.GetValueOrDefault(p.Key) >= (p.Value * grams) - 1e-9);

    public void NoteRunsOut(string materialId, DateOnly day) => runsOut.TryAdd(materialId, day);

    public void Take(Feed feed, double grams, DateOnly day)
    {
        foreach (var (material, share) in feed.Parts)
        {
            var take = share * grams;
            needed[material] = needed.GetValueOrDefault(material) + take;
            var has = left.GetValueOrDefault(material);
            if (has < take - 1e-9)
            {
                NoteRunsOut(material, day);
            }

            left[material] = Math.Max(0, has - take);
        }
    }
}
