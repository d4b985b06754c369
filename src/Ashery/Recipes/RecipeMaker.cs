using Ashery.Cautions;
using Ashery.Compatibility;
using Ashery.Materials;
using Ashery.Nutrients;

namespace Ashery.Recipes;

/// <summary>So many grams of an offered material.</summary>
internal sealed record PartAmount(Offer Offer, double Grams, int? Scoops = null);

/// <summary>Works out everything that is shown of a blend from what is in it.</summary>
internal static class RecipeMaker
{
    public static Recipe Make(IReadOnlyList<PartAmount> amounts, Wish wish, BlendUse use, CompatibilityChart chart)
    {
        var total = Total(amounts);
        var parts = new RecipePart[amounts.Count];
        var materials = new (Material Material, double Share)[amounts.Count];
        for (var i = 0; i < parts.Length; i++)
        {
            var (offer, grams, scoops) = amounts[i];
            var material = offer.Material;
            parts[i] = new RecipePart(
                material, grams / total, grams, scoops, ScoopMass.Millilitres(material, grams), offer.PricePerKg * grams / 1000);
            materials[i] = (material, grams / total);
        }

        var grade = Grade(amounts);
        var wanted = Wanted.Of(wish);
        var (mean, largest) = RatioMeasure.Of(grade, wanted);
        var cost = Mean(amounts, a => a.Offer.PricePerKg, total);
        var nutrient = wanted.Held(grade);
        var recipe = new Recipe
        {
            Parts = parts,
            BatchGrams = total,
            Grade = grade,
            Elements = grade.ToElements(),
            Nitrogen = Forms(amounts, total),
            RatioError = mean,
            LargestDeviation = largest,
            Strength = grade[Nutrient.N] + grade[Nutrient.P] + grade[Nutrient.K],
            CostPerKg = cost,
            CostPerKgNutrient = nutrient > 0 ? cost / nutrient : null,
            SaltIndex = Mean(amounts, static a => a.Offer.Material.SaltIndex?.Value, total),

            // One gram dissolved: osmoles a kg are milliosmoles a gram.
            OsmolalityPerGram = Mean(amounts, static a => a.Offer.Material.OsmolesPerKg, total),
            LimeEquivalent = Mean(amounts, static a => a.Offer.Material.LimeEquivalent?.Value, total),
            Storage = StorageJudge.Judge(materials, chart),
            Pairs = Pairs(parts, chart),
            CautionIds = CautionIndex.Default.CautionsFor(parts.Select(static p => p.Material), Uses(use)),
            Notes = [],
        };

        return recipe with { Notes = RecipeNotes.Of(recipe, use) };
    }

    /// <summary>Contents of a mix on the label's basis.</summary>
    public static LabelAnalysis Grade(IReadOnlyList<PartAmount> amounts)
    {
        var total = Total(amounts);
        var contents = new double[Analysis.Count];
        foreach (var amount in amounts)
        {
            for (var n = 0; n < contents.Length; n++)
            {
                contents[n] += amount.Offer.Material.Label[(Nutrient)n] * (amount.Grams / total);
            }
        }

        return LabelAnalysis.FromArray(contents);
    }

    private static double Total(IReadOnlyList<PartAmount> amounts)
    {
        double total = 0;
        foreach (var amount in amounts)
        {
            total += amount.Grams;
        }

        return total;
    }

    private static NitrogenForms Forms(IReadOnlyList<PartAmount> amounts, double total)
    {
        var forms = default(NitrogenForms);
        foreach (var amount in amounts)
        {
            forms += amount.Offer.Material.Nitrogen * (amount.Grams / total);
        }

        return forms;
    }

    // Mass-weighted mean of a figure; unknown as soon as one part's is.
    private static double? Mean(IReadOnlyList<PartAmount> amounts, Func<PartAmount, double?> figure, double total)
    {
        double? sum = 0;
        foreach (var amount in amounts)
        {
            sum += figure(amount) * (amount.Grams / total);
        }

        return sum;
    }

    private static List<PairVerdict> Pairs(RecipePart[] parts, CompatibilityChart chart)
    {
        var pairs = new List<PairVerdict>();
        for (var a = 0; a < parts.Length; a++)
        {
            for (var b = a + 1; b < parts.Length; b++)
            {
                pairs.Add(chart.Judge(parts[a].Material, parts[b].Material));
            }
        }

        return pairs;
    }

    private static CautionUse[] Uses(BlendUse use) => use switch
    {
        BlendUse.Dissolved => [CautionUse.Mixing, CautionUse.Dissolving],
        BlendUse.DryStored => [CautionUse.Mixing, CautionUse.Storing],
        _ => [CautionUse.Mixing],
    };
}
