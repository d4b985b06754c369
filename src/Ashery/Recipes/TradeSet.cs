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

    public static IReadOnlyList<Recipe> Of(Kitchen kitchen)
    {
        if (kitchen.Request.Measuring is Measuring.Freely)
        {
            return Unbeaten([.. PlainSteps.Many(kitchen.Model.Search).Select(kitchen.Freely)]);
        }

        // In whole steps: the best of each number of materials, of which the beaten ones are dropped.
        var recipes = new List<Recipe>();
        for (var count = 1; count <= Math.Min(kitchen.Request.AtMost, kitchen.Model.Offers.Count); count++)
        {
            recipes.AddRange(WholeSteps.Find(kitchen, kitchen.Model.Search with { AtMost = count }).Recipes);
        }

        return Unbeaten(recipes);
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
