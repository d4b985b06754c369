using Ashery.Feeds;
using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Problems;

namespace Ashery.Planning;

/// <summary>What a grower should know about the plan as a whole.</summary>
internal static class PlanProblems
{
    public static IEnumerable<Problem> Of(PlanContext context, PlanRun run)
    {
        if (context.Garden.Pots.Count == 0)
        {
            yield return new("pots", "There are no pots, so there is nothing to feed.", "Add a pot with its crop and volume.", Severity.Warning);
        }

        if (!context.Rules["alternate-kinds"].IsOn)
        {
            yield return new("rule alternate-kinds", "It is switched off, so neither mineral nor organic feed is planned.", "Set it to alternate, mineralOnly or organicOnly.", Severity.Warning);
        }

        if (!context.Kept.Contains(FeedKind.Mineral) && !context.Kept.Contains(FeedKind.Organic))
        {
            yield return new("feeds", "Neither a mineral nor an organic feed is kept.", "Mix one with `ashery mix` and keep it.", Severity.Warning);
        }
        else if (context.Rules["alternate-kinds"].Choice == "alternate" && context.Kept.Contains(FeedKind.Mineral) != context.Kept.Contains(FeedKind.Organic))
        {
            yield return new("feeds", $"Only {(context.Kept.Contains(FeedKind.Mineral) ? "mineral" : "organic")} feed is kept, so it takes every turn.", "Keep one of the other kind to let them alternate.", Severity.Note);
        }

        if (context.Seasons.Calendar.GrowingIsGuess)
        {
            yield return new("place", "No seasons were named and no climate table given: growth was guessed from the latitude.", "Name the seasons, or give twelve months of usual weather.", Severity.Warning);
        }

        if (context.Kept.Contains(FeedKind.Foliar) && FeedChoice.For(context.Pots.Count > 0 ? context.Pots[0].Crop : null!, FeedKind.Foliar, context.Garden.Feeds) is { } leaf && leaf.Label[Nutrient.Mg] <= 0)
        {
            yield return new("feed " + leaf.Id, $"{leaf.Name} holds no magnesium, which the monthly leaf feed is for.", "Keep a feed of Epsom salt for leaves.", Severity.Note);
        }

        // What was replaced is told with the replacements; here only what was not.
        foreach (var (material, day) in run.Stock.RunsOut.OrderBy(static r => r.Value).ThenBy(static r => r.Key, StringComparer.Ordinal))
        {
            if (!run.Replacements.Exists(r => r.MaterialId == material))
            {
                yield return new(FormattableString.Invariant($"{day:yyyy-MM-dd}"), $"The shelf has too little {NameOf(context, material)} from then on, and nothing there can take its place.", "It is on the shopping list: buy it before that day.", Severity.Note);
            }
        }

        foreach (var note in run.Feeds.SelectMany(static f => f.Doses).SelectMany(static d => d.Notes).DistinctBy(static n => (n.Field, n.WayOut)).Take(20))
        {
            yield return note;
        }
    }

    private static string NameOf(PlanContext context, string material) =>
        context.Garden.Shelf.FirstOrDefault(b => b.Material.Id == material)?.Material.Name ?? MaterialCatalogue.Default.Find(material)?.Name ?? material;
}
