using Ashery.Compatibility;
using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Problems;

namespace Ashery.Recipes;

/// <summary>Replaces a bag that has run out by another at equal nitrogen: g_new = g_old N_old / N_new.</summary>
public static class Substitution
{
    /// <summary>Grams of the new material that bring the nitrogen of so many grams of the old.</summary>
    public static Result<double> GramsAtEqualNitrogen(Material old, double grams, Material replacement)
    {
        var from = old.Label[Nutrient.N];
        var to = replacement.Label[Nutrient.N];
        if (from <= 0)
        {
            return Result.Fail<double>(
                "replace", $"{old.Name} brings no nitrogen, so equal nitrogen says nothing.", "Search for a new blend from what you have.");
        }

        if (to <= 0)
        {
            return Result.Fail<double>("replace with", $"{replacement.Name} brings no nitrogen.", "Choose a material that does, such as the one with the nearest label.");
        }

        return Result.Of(grams * from / to, Changes(old, replacement));
    }

    /// <summary>The recipe with one part replaced at equal nitrogen; the batch grows or shrinks with it.</summary>
    public static Result<Recipe> AtEqualNitrogen(Recipe recipe, string materialId, Offer replacement, Wish wish, BlendUse use)
    {
        var part = recipe.Parts.FirstOrDefault(p => p.Material.Id == materialId);
        if (part is null)
        {
            return Result.Fail<Recipe>(
                "replace", $"{Say.Quoted(materialId)} is not in the recipe.", $"It has {Say.List([.. recipe.Parts.Select(static p => p.Material.Id)])}.");
        }

        var grams = GramsAtEqualNitrogen(part.Material, part.Grams, replacement.Material);
        if (!grams.Ok)
        {
            return Result.Fail<Recipe>(grams.Problems);
        }

        var amounts = new List<PartAmount>();
        foreach (var other in recipe.Parts)
        {
            if (other.Material.Id == materialId)
            {
                continue;
            }

            // The new material may be in the recipe already; it then takes both amounts.
            var more = other.Material.Id == replacement.Material.Id ? grams.Value : 0;
            amounts.Add(new PartAmount(new Offer(other.Material, other.Cost * 1000 / other.Grams), other.Grams + more));
        }

        if (!amounts.Exists(a => a.Offer.Material.Id == replacement.Material.Id))
        {
            amounts.Add(new PartAmount(replacement, grams.Value));
        }

        var made = RecipeMaker.Make(amounts, wish, use, CompatibilityChart.Default);
        var stops = made.Pairs.Where(p => PairRule.Forbids(p, use)).ToList();
        return stops.Count > 0
            ? Result.Fail<Recipe>([.. stops.Select(p => new Problem(
                "replace with", $"{p.A} and {p.B} must not be together: {PairRule.For(p, use).Reason}", "Choose another material, or give it apart."))])
            : Result.Of(made, grams.Problems);
    }

    // What equal nitrogen leaves unequal.
    private static List<Problem> Changes(Material old, Material replacement)
    {
        var notes = new List<Problem>();
        var ratio = old.Label[Nutrient.N] / replacement.Label[Nutrient.N];
        foreach (var nutrient in (ReadOnlySpan<Nutrient>)[Nutrient.P, Nutrient.K])
        {
            var before = old.Label[nutrient];
            var after = replacement.Label[nutrient] * ratio;
            if (Math.Abs(after - before) > 0.01)
            {
                notes.Add(new Problem(
                    "replace",
                    $"{(after > before ? "More" : "Less")} {LabelBasis.Symbol(nutrient)}: {Say.Number(Math.Round(100 * after, 1))} g instead of {Say.Number(Math.Round(100 * before, 1))} g for 100 g of {old.Name}.",
                    "Weigh this into the next feeds, or search for a new blend.",
                    Severity.Note));
            }
        }

        if (replacement.IsOrganic != old.IsOrganic)
        {
            notes.Add(new Problem(
                "replace",
                replacement.IsOrganic ? "Organic nitrogen is set free slowly, and little of it in the cold." : "Mineral nitrogen acts at once, organic over weeks.",
                replacement.IsOrganic ? "Expect a later and longer effect." : "Give it in smaller and more frequent portions.",
                Severity.Warning));
        }

        return notes;
    }
}
