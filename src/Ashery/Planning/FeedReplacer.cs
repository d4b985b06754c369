using Ashery.Feeds;

namespace Ashery.Planning;

/// <summary>When a bag runs out: another kept feed of the same kind at equal nitrogen, from what is on the shelf.</summary>
internal sealed class FeedReplacer(PlanContext context)
{
    private readonly HashSet<(string, string)> told = [];

    public List<Replacement> Made { get; } = [];

    public List<Feed> Substitutes { get; } = [];

    /// <summary>A feed to give instead, and the note that goes with it; null when the shelf has none.</summary>
    public (Feed Feed, string Words)? Instead(Feed feed, string material, DateOnly day, double grams, StockBook stock)
    {
        // Only feeds with nitrogen can stand in for one another at equal nitrogen.
        if (feed.Kind is not (FeedKind.Mineral or FeedKind.Organic) || feed.Label[Nutrients.Nutrient.N] <= 0)
        {
            return null;
        }

        foreach (var other in context.Garden.Feeds.OrderBy(static f => f.Name, StringComparer.Ordinal))
        {
            var n = other.Label[Nutrients.Nutrient.N];
            if (other.Kind == feed.Kind && other.Id != feed.Id && n > 0 && stock.Covers(other, grams * feed.Label[Nutrients.Nutrient.N] / n))
            {
                return (other, Note(feed, material, day, other));
            }
        }

        return null;
    }

    private string Note(Feed feed, string material, DateOnly day, Feed other)
    {
        var ratio = feed.Label[Nutrients.Nutrient.N] / other.Label[Nutrients.Nutrient.N];
        var words = FormattableString.Invariant(
            $"{material} runs out on {day:yyyy-MM-dd}: {other.Name} takes the place of {feed.Name}, {ratio:0.##} g for each gram, the same nitrogen. Buy {material} before then to stay with {feed.Name}.");
        if (told.Add((feed.Id, other.Id)))
        {
            Made.Add(new(day, material, feed.Id, other.Id, words));
        }

        return words;
    }
}
