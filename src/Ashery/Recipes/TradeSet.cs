using Ashery.Blending;

namespace Ashery.Recipes;

/// <summary>
/// Blends none of which is worse than another in error, cost, number of materials and strength all at once. An unknown
/// cost counts as worse than any known one.
/// </summary>
internal static class TradeSet
{
    /// <summary>Differences below this are none: a tenth of a thousandth of a per cent.</summary>
    private const double Same = 1e-6;

    /// <summary>Blends further off than this trade nothing that a grower would take, unless no other has as few materials.</summary>
    private const double LargestError = 0.25;

    /// <summary>The unbeaten blends, whether every set of materials was looked at, and how many more there were.</summary>
    public static Trade Of(Kitchen kitchen, Found found)
    {
        var most = Math.Min(kitchen.Request.AtMost, kitchen.Model.Offers.Count);
        return kitchen.Request.Measuring is Measuring.Freely ? Freely(kitchen, most) : InSteps(kitchen, most, found);
    }

    private static Trade Freely(Kitchen kitchen, int most)
    {
        var search = kitchen.Model.Search;
        var trade = BlendSearch.TradeOffs(search, LargestError);
        var recipes = new List<Recipe>(trade.Blends.Count + most);
        for (var count = 1; count < most; count++)
        {
            recipes.AddRange(BlendSearch.Find(search with { AtMost = count, Best = 1 }).Blends.Select(kitchen.Freely));
        }

        recipes.AddRange(trade.Blends.Select(kitchen.Freely));
        return new Trade(Unbeaten(recipes), trade.Exact, trade.Left);
    }

    // The best of each number of materials, of which the beaten ones are dropped.
    private static Trade InSteps(Kitchen kitchen, int most, Found all)
    {
        var recipes = new List<Recipe>();
        var exact = true;
        for (var count = 1; count <= most; count++)
        {
            // What was found with the full number is at hand.
            var found = count == most ? all : WholeSteps.Find(kitchen, kitchen.Model.Search with { AtMost = count });
            recipes.AddRange(found.Recipes.Where((r, i) => i == 0 || r.RatioError <= LargestError));
            exact &= found.Proved;
        }

        return new Trade(Unbeaten(recipes), exact, Left: 0);
    }

    /// <summary>The unbeaten ones, fewest materials first, each composition once.</summary>
    internal static IReadOnlyList<Recipe> Unbeaten(IReadOnlyList<Recipe> recipes)
    {
        var kept = new List<Recipe>();
        foreach (var recipe in recipes.OrderBy(static r => r.Parts.Count).ThenBy(static r => r.RatioError).ThenBy(static r => r.CostPerKg ?? double.MaxValue))
        {
            if (!kept.Exists(k => IsAtLeastAsGood(k, recipe)))
            {
                kept.RemoveAll(k => IsAtLeastAsGood(recipe, k));
                kept.Add(recipe);
            }
        }

        return kept;
    }

    private static bool IsAtLeastAsGood(Recipe a, Recipe b) =>
        a.RatioError <= b.RatioError + Same
        && a.Parts.Count <= b.Parts.Count
        && a.Strength >= b.Strength - Same
        && (a.CostPerKgNutrient ?? double.MaxValue) <= (b.CostPerKgNutrient ?? double.MaxValue) + Same;
}

/// <summary>What blends trade.</summary>
internal sealed record Trade(IReadOnlyList<Recipe> Recipes, bool Exact, int Left);
