using Ashery.Cautions;
using Ashery.Exchange.Json;
using Ashery.Solutions;
using Ashery.Solutions.Can;
using Ashery.Solutions.Targets;

namespace Ashery.Exchange.Solutions;

/// <summary>The shape of a target's answer from the library's value.</summary>
public static class TargetJsonFrom
{
    public static TargetJson Answer(TargetAnswer answer)
    {
        var request = answer.Request;
        return new(
            request.WaterName,
            request.Litres,
            request.Celsius,
            request.Air == Air.Open ? "open" : "closed",
            new([.. request.Target.Wishes.Select(static w => w.Words)], request.Target.Ec, request.Target.PH),
            answer.Proved,
            answer.Bound,
            answer.OutOfReach is { } reach ? ProblemJson.From(reach) : null,
            [.. answer.WaterExceeds.Select(static e => new TargetExcessJson(e.Item.Symbol, e.Water, e.Most, e.Replace))],
            [.. answer.Recipes.Select(Recipe)],
            answer.Assumed,
            ProblemJson.From(answer.Problems));
    }

    private static TargetRecipeJson Recipe(TargetRecipe recipe) => new(
        recipe.Error,
        recipe.LargestDeviation,
        recipe.Strength,
        recipe.Ec25,
        recipe.PH,
        recipe.Tuned,
        recipe.CostPerLitre,
        [.. recipe.Parts.Select(static p => new TargetPartJson(p.Material.Id, p.Material.Name, p.GramsPerLitre, p.Grams, p.Millilitres, p.IsAgent, p.Steps))],
        [.. recipe.Rows.Select(static r => new TargetNutrientJson(r.Item.Symbol, r.Low > 0 ? r.Low : null, Finite(r.High), r.Water, r.ByPart, r.Total, Finite(r.Deviation)))],
        State(recipe.Can.Closed),
        State(recipe.Can.Open),
        recipe.Can.Minerals.Where(static m => m.Millimoles > 0).ToDictionary(static m => m.Mineral.Id, static m => m.Millimoles, StringComparer.Ordinal),
        [.. recipe.Can.Minerals.Where(static m => m.Mineral.Slow && m.Index > 0).Select(static m => m.Mineral.Id)],
        [.. recipe.CautionIds.Select(static id => CautionIndex.Default.Find(id)!.Words)]);

    private static CanStateJson State(CanState state) => new(state.PH, state.Ec25, state.Ec, state.Alkalinity, state.FreeAmmonia);

    private static double? Finite(double value) => double.IsFinite(value) ? value : null;
}
