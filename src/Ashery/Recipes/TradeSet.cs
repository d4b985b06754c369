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

    /// <summary>The unbeaten blends, whether every set of materials was looked at, and how many more there were.</summary>
    public static Trade Of(Kitchen kitchen)
    {
        if (kitchen.Request.Measuring is Measuring.Freely)
        {
            var free = BlendSearch.TradeOffs(kitchen.Model.Search);
            return new Trade([.. free.Blends.Select(kitchen.Freely)], free.Exact, free.Left);
        }

        // In whole steps: the best of each number of materials, of which the beaten ones are dropped.
        var recipes = new List<Recipe>();
        var exact = true;
        for (var count = 1; count <= Math.Min(kitchen.Request.AtMost, kitchen.Model.Offers.Count); count++)
        {
            var found = WholeSteps.Find(kitchen, kitchen.Model.Search with { AtMost = count });
            recipes.AddRange(found.Recipes);
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
