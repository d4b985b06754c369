using Ashery.Feeds;
using Ashery.Gardens;
using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Recipes;

namespace Ashery.Planning;

/// <summary>
/// When a bag runs out: the same blend with another bag of the shelf in its place at equal nitrogen, or else another kept feed of
/// the same kind. Doses go by nitrogen, so that either brings a pot what it was to get.
/// </summary>
internal sealed class FeedReplacer(PlanContext context)
{
    private readonly Dictionary<(string FeedId, string Material, string By), Feed?> made = [];
    private readonly Dictionary<(string FeedId, string By), DateOnly> told = [];

    public List<Replacement> Made { get; } = [];

    /// <summary>Feeds that were made for the plan.</summary>
    public List<Feed> Substitutes { get; } = [];

    /// <summary>A feed to give instead, and the note that goes with it; null when the shelf has none.</summary>
    public (Feed Feed, string Words)? Instead(Feed feed, string material, DateOnly day, double grams, StockBook stock)
    {
        // Only feeds with nitrogen can stand in for one another at equal nitrogen.
        if (feed.Kind is not (FeedKind.Mineral or FeedKind.Organic) || feed.Label[Nutrient.N] <= 0)
        {
            return null;
        }

        if (SameBlend(feed, material, grams, stock) is { } other)
        {
            return (other, Note(feed, material, day, other));
        }

        foreach (var kept in context.Garden.Feeds.OrderBy(static f => f.Name, StringComparer.Ordinal))
        {
            if (kept.Kind == feed.Kind && kept.Id != feed.Id && Covers(kept, feed, grams, stock))
            {
                return (kept, Note(feed, material, day, kept));
            }
        }

        return null;
    }

    private static bool Covers(Feed other, Feed feed, double grams, StockBook stock)
    {
        var n = other.Label[Nutrient.N];
        return n > 0 && stock.Covers(other, grams * feed.Label[Nutrient.N] / n);
    }

    /// <summary>The blend with one material replaced; of those the shelf can make, the one nearest to the blend's ratio.</summary>
    private Feed? SameBlend(Feed feed, string material, double grams, StockBook stock)
    {
        Feed? best = null;
        var bestError = double.PositiveInfinity;
        foreach (var bag in context.Garden.Shelf.DistinctBy(static b => b.Material.Id).OrderBy(static b => b.Material.Id, StringComparer.Ordinal))
        {
            if (bag.Material.Id == material || !MayStandIn(bag.Material, feed))
            {
                continue;
            }

            var key = (feed.Id, material, bag.Material.Id);
            if (!made.TryGetValue(key, out var other))
            {
                made.Add(key, other = Make(feed, material, bag));
            }

            if (other is not null && Covers(other, feed, grams, stock) && Error(other, feed) is var error && error < bestError)
            {
                best = other;
                bestError = error;
            }
        }

        return best;
    }

    private static bool MayStandIn(Material material, Feed feed) =>
        material.Label[Nutrient.N] > 0
        && (feed.Kind == FeedKind.Organic ? material.IsOrganic : material.Kind is MaterialKind.Straight)
        && (material.Dissolves || !feed.Dissolves);

    private Feed? Make(Feed feed, string material, Bag bag)
    {
        List<(Offer Offer, double Grams)> parts = [];
        foreach (var (id, share) in feed.Parts)
        {
            var of = context.Garden.Shelf.FirstOrDefault(b => b.Material.Id == id)?.Material ?? MaterialCatalogue.Default.Find(id);
            if (of is null)
            {
                return null;
            }

            parts.Add((new Offer(of), share * 1000));
        }

        var wish = RatioOf(feed);
        var use = feed.Kind == FeedKind.Organic ? BlendUse.DryToday : BlendUse.DryStored;
        var recipe = RecipeByParts.Weighed(parts, wish, use);
        if (!recipe.Ok)
        {
            return null;
        }

        var changed = Substitution.AtEqualNitrogen(recipe.Value, material, bag.ToOffer(), wish, use);
        if (!changed.Ok)
        {
            return null;
        }

        var name = $"{feed.Name} with {bag.Material.Name} for {NameOf(material)}";
        var other = FeedMaker.FromRecipe(changed.Value, name);
        if (!other.Ok || (feed.Dissolves && !other.Value.Dissolves))
        {
            return null;
        }

        return other.Value with { Id = $"{feed.Id}-with-{bag.Material.Id}", Kind = feed.Kind };
    }

    private static Wish RatioOf(Feed feed) => new(
        new Dictionary<Nutrient, double> { [Nutrient.N] = feed.Label[Nutrient.N], [Nutrient.P] = feed.Label[Nutrient.P], [Nutrient.K] = feed.Label[Nutrient.K] },
        IsGrade: false,
        feed.Name);

    private static double Error(Feed other, Feed feed) => RatioMeasure.Of(other.Label, RatioOf(feed)).Mean;

    private string NameOf(string material) =>
        context.Garden.Shelf.FirstOrDefault(b => b.Material.Id == material)?.Material.Name ?? MaterialCatalogue.Default.Find(material)?.Name ?? material;

    private string Note(Feed feed, string material, DateOnly day, Feed other)
    {
        var ratio = feed.Label[Nutrient.N] / other.Label[Nutrient.N];
        var first = told.GetValueOrDefault((feed.Id, other.Id), day);
        var words = FormattableString.Invariant(
            $"The shelf has too little {NameOf(material)} from {first:yyyy-MM-dd} on: {other.Name} takes the place of {feed.Name}, {ratio:0.##} g for each gram, the same nitrogen. Buy {NameOf(material)} before then to stay with {feed.Name}.");
        if (told.TryAdd((feed.Id, other.Id), day))
        {
            Made.Add(new(day, material, feed.Id, other.Id, words));
            if (!context.Garden.Feeds.Contains(other))
            {
                Substitutes.Add(other);
            }
        }

        return words;
    }
}
