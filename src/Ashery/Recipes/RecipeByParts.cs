using Ashery.Compatibility;
using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Problems;

namespace Ashery.Recipes;

/// <summary>Judges a recipe that is already known, such as one handed down in scoops: grade, salt, pairs, cautions. Nothing is searched.</summary>
public static class RecipeByParts
{
    /// <summary>A recipe in grams.</summary>
    /// <param name="parts">Materials with their grams.</param>
    /// <param name="wish">What the ratio error is measured against; null for the recipe's own ratio, when it is zero.</param>
    /// <param name="use">What becomes of it.</param>
    public static Result<Recipe> Weighed(
        IReadOnlyList<(Offer Offer, double Grams)> parts, Wish? wish = null, BlendUse use = BlendUse.DryToday)
    {
        var problems = Check([.. parts.Select(static p => (p.Offer, p.Grams))], "g");
        return problems.Count > 0
            ? Result.Fail<Recipe>(problems)
            : Make([.. parts.Select(static p => new PartAmount(p.Offer, p.Grams))], wish, use);
    }

    /// <summary>A recipe in level scoops, by the grower's calibration or the bulk density.</summary>
    public static Result<Recipe> Scooped(
        IReadOnlyList<(Offer Offer, int Scoops)> parts, Scoop scoop, Wish? wish = null, BlendUse use = BlendUse.DryToday)
    {
        var problems = Check([.. parts.Select(static p => (p.Offer, (double)p.Scoops))], "scoops");
        var amounts = new List<PartAmount>();
        foreach (var (offer, scoops) in parts)
        {
            if (ScoopMass.Of(scoop, offer.Material) is { } mass)
            {
                amounts.Add(new PartAmount(offer, scoops * mass.Typical, scoops));
            }
            else
            {
                problems.Add(new Problem(
                    $"scoop, {offer.Material.Id}",
                    $"Nobody knows what a {Say.Quoted(scoop.Name)} of {offer.Material.Name} weighs.",
                    "Weigh ten level scoops together and enter a tenth of it."));
            }
        }

        return problems.Count > 0 ? Result.Fail<Recipe>(problems) : Make(amounts, wish, use);
    }

    /// <summary>Grams in so many scoops of the finished mix, when it was measured by scoop.</summary>
    public static double? GramsOf(Recipe recipe, double scoops)
    {
        var all = 0;
        foreach (var part in recipe.Parts)
        {
            if (part.Scoops is not { } count)
            {
                return null;
            }

            all += count;
        }

        return all > 0 ? recipe.BatchGrams * scoops / all : null;
    }

    private static Result<Recipe> Make(IReadOnlyList<PartAmount> amounts, Wish? wish, BlendUse use)
    {
        var own = RecipeMaker.Grade(amounts);
        return Result.Of(RecipeMaker.Make(amounts, wish ?? OwnRatio(own), use, CompatibilityChart.Default));
    }

    private static Wish OwnRatio(LabelAnalysis grade) => new(
        new Dictionary<Nutrient, double> { [Nutrient.N] = grade[Nutrient.N], [Nutrient.P] = grade[Nutrient.P], [Nutrient.K] = grade[Nutrient.K] },
        IsGrade: false,
        "its own ratio");

    private static List<Problem> Check(IReadOnlyList<(Offer Offer, double Amount)> parts, string unit)
    {
        var problems = new List<Problem>();
        if (parts.Count == 0)
        {
            problems.Add(new Problem("recipe", "It has no parts.", "Name at least one material with its amount."));
        }

        var seen = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var (offer, amount) in parts)
        {
            if (!seen.Add(offer.Material.Id))
            {
                problems.Add(new Problem($"recipe, {offer.Material.Id}", "It is given twice.", "Give each material once."));
            }

            if (!(double.IsFinite(amount) && amount is > 0 and <= RequestCheck.LargestBatch))
            {
                problems.Add(new Problem(
                    $"recipe, {offer.Material.Id}", $"The amount is not a number of {unit} above zero.", "Write how much goes in, or leave the material out."));
            }
        }

        return problems;
    }
}
