using Ashery.Feeds;
using Ashery.Gardens;
using Ashery.Materials;
using Ashery.Pots;
using Ashery.RootZone;
using Ashery.RootZone.Feeding;

namespace Ashery.Planning.Fit;

/// <summary>Doses of a plan as events of the model, each feed worked out once.</summary>
public sealed class FeedEvents
{
    // A dose spread over several cans: one at every watering, taken as every third day (ours).
    private const int DaysBetweenCans = 3;

    private readonly Dictionary<string, FeedContents> contents = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Material> shelf = new(StringComparer.Ordinal);

    public FeedEvents(Garden garden)
    {
        foreach (var bag in garden.Shelf)
        {
            shelf.TryAdd(bag.Material.Id, bag.Material);
        }
    }

    /// <summary>What a gram of a feed gives.</summary>
    public FeedContents Of(Feed feed)
    {
        if (!contents.TryGetValue(feed.Id, out var made))
        {
            contents.Add(feed.Id, made = FeedBuilder.Of(feed, id => shelf.GetValueOrDefault(id) ?? MaterialCatalogue.Default.Find(id)));
        }

        return made;
    }

    /// <summary>
    /// The events of a dose: strewn, or from the can in place of plain water. A feed for leaves stays on the leaves and an inoculant feeds
    /// nothing: no event.
    /// </summary>
    public IEnumerable<PotEvent> Of(Dose dose, Feed feed, DateOnly day)
    {
        if (dose.Grams <= 0 || feed.Kind is FeedKind.Foliar or FeedKind.Inoculant || dose.Method == DoseMethod.Spray)
        {
            yield break;
        }

        if (dose is { Method: DoseMethod.Can, Can: { LitresPerPot: > 0 } can })
        {
            var perLitre = FeedBuilder.Liquid(Of(feed), dose.Grams / can.Waterings / can.LitresPerPot);
            for (var i = 0; i < can.Waterings; i++)
            {
                yield return new LiquidFeedEvent(day.AddDays(i * DaysBetweenCans), perLitre, can.LitresPerPot);
            }

            yield break;
        }

        yield return new DryFeedEvent(day, Of(feed), dose.Grams);
    }
}
