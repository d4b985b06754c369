using Ashery.Feeds;
using Ashery.Materials;
using Ashery.Problems;
using Ashery.Quantities;
using Ashery.Solutions.Can;

namespace Ashery.Gardens;

/// <summary>What of a garden goes into a can: its bags, by their labels, and its kept feeds.</summary>
public static class GardenCan
{
    /// <summary>The material of a bag by the bag's own id or its material's; null when there is none.</summary>
    public static Material? Bag(Garden? garden, string id)
    {
        foreach (var bag in garden?.Shelf ?? [])
        {
            if (bag.Id == id)
            {
                return bag.Material;
            }
        }

        foreach (var bag in garden?.Shelf ?? [])
        {
            if (bag.Material.Id == id)
            {
                return bag.Material;
            }
        }

        return null;
    }

    /// <summary>A bag by its label, else the catalogue's material as the pure salt.</summary>
    public static Result<MaterialInWater> Material(Garden garden, string id) => Bag(garden, id) is { } bag ? MaterialInWater.OfBag(bag)
        : MaterialCatalogue.Default.Find(id) is { } material ? MaterialInWater.Of(material)
        : Result.Fail<MaterialInWater>("add", $"'{NumberReader.Shown(id)}' is neither on the shelf nor in the catalogue.", "Add the bag to the shelf, or take another material.");

    /// <summary>The parts of a kept feed, largest first, with their shares for grams; problems where a part is not for the can.</summary>
    public static Result<IReadOnlyList<CanAddition>> Parts(Garden garden, Feed feed)
    {
        var parts = new List<CanAddition>();
        var problems = new List<Problem>();
        foreach (var (id, share) in feed.Parts.OrderByDescending(static p => p.Value).ThenBy(static p => p.Key, StringComparer.Ordinal))
        {
            var material = Material(garden, id);
            problems.AddRange(material.Ok ? [] : material.Problems);
            if (material.Ok)
            {
                parts.Add(new(material.Value, share));
            }
        }

        return problems.Count > 0 ? Result.Fail<IReadOnlyList<CanAddition>>(problems) : Result.Of<IReadOnlyList<CanAddition>>(parts);
    }

    /// <summary>Adds so many grams of a kept feed to a list, each material once; what is wrong with them.</summary>
    public static IReadOnlyList<Problem> Add(List<CanAddition> additions, Garden garden, Feed feed, string grams)
    {
        var amount = NumberReader.Positive(grams.EndsWith('g') ? grams[..^1] : grams, $"add {feed.Id}", CanMaker.MostGrams, "1");
        var parts = Parts(garden, feed);
        if (!amount.Ok || !parts.Ok)
        {
            return [.. amount.Problems, .. parts.Problems];
        }

        foreach (var part in parts.Value)
        {
            var at = additions.FindIndex(a => a.Material.Id == part.Material.Id);
            if (at < 0)
            {
                additions.Add(part with { Grams = part.Grams * amount.Value });
            }
            else
            {
                additions[at] = additions[at] with { Grams = additions[at].Grams + (part.Grams * amount.Value) };
            }
        }

        return [];
    }
}
