using Ashery.Crops;
using Ashery.Gardens;
using Ashery.Materials;

namespace Ashery.Journal;

/// <summary>Something of the garden that was found.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Id">Its key.</param>
/// <param name="Name">Its name.</param>
/// <param name="More">A word on it.</param>
public sealed record Found(FoundKind Kind, string Id, string Name, string More);

public enum FoundKind
{
    Pot,
    Feed,
    Bag,
}

/// <summary>Finds pots, feeds and bags by the beginnings of words.</summary>
public static class GardenFinder
{
    public static IReadOnlyList<Found> Find(Garden garden, string words)
    {
        var asked = WordSearch.Words(words);
        List<Found> found = [];
        foreach (var pot in garden.Pots)
        {
            var crop = CropCatalogue.Default.Find(pot.CropId);
            if (WordSearch.Matches(asked, pot.Name, pot.Id, pot.Place ?? "", crop?.Name ?? "", crop?.Latin ?? "", "pot"))
            {
                found.Add(new(FoundKind.Pot, pot.Id, pot.Name, string.Join(", ", new[] { crop?.Name ?? pot.CropId, pot.Place ?? "" }.Where(static t => t.Length > 0))));
            }
        }

        foreach (var feed in garden.Feeds)
        {
            if (WordSearch.Matches(asked, feed.Name, feed.Id, feed.Kind.ToString(), string.Join(' ', feed.Parts.Keys), "feed"))
            {
                found.Add(new(FoundKind.Feed, feed.Id, feed.Name, string.Join(", ", feed.Parts.OrderByDescending(static p => p.Value).Select(p => MaterialName(garden, p.Key)))));
            }
        }

        foreach (var bag in garden.Shelf)
        {
            if (WordSearch.Matches(asked, bag.Material.Name, bag.Id, bag.Material.Formula ?? "", string.Join(' ', bag.Material.OtherNames), "bag"))
            {
                found.Add(new(FoundKind.Bag, bag.Id, bag.Material.Name, bag.Material.Formula ?? ""));
            }
        }

        return found;
    }

    private static string MaterialName(Garden garden, string id) =>
        garden.Shelf.FirstOrDefault(b => b.Material.Id == id)?.Material.Name ?? MaterialCatalogue.Default.Find(id)?.Name ?? id;
}
