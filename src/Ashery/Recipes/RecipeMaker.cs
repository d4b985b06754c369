using Ashery.Cautions;
using Ashery.Compatibility;
using Ashery.Materials;
using Ashery.Nutrients;

namespace Ashery.Recipes;

/// <summary>So many grams of an offered material.</summary>
internal readonly record struct PartAmount(Offer Offer, double Grams, int? Scoops = null);

/// <summary>Works out everything that is shown of a blend from what is in it.</summary>
internal static class RecipeMaker
{
    private static readonly Nutrient[] Nutrients = Enum.GetValues<Nutrient>();

    public static Recipe Make(IReadOnlyList<PartAmount> amounts, Wish wish, BlendUse use, CompatibilityChart chart)
    {
        var total = amounts.Sum(static a => a.Grams);
        var parts = new List<RecipePart>(amounts.Count);
        var materials = new List<(Material Material, double Share)>(amounts.Count);
        foreach (var (offer, grams, scoops) in amounts)
        {
            var material = offer.Material;
            parts.Add(new RecipePart(
                material, grams / total, grams, scoops, ScoopMass.Millilitres(material, grams), offer.PricePerKg * grams / 1000));
            materials.Add((material, grams / total));
        }

        var grade = Grade(materials);
        var (mean, largest) = RatioMeasure.Of(n => grade[n], wish);
        var cost = Sum(amounts, a => a.Offer.PricePerKg, total);
        var nutrient = wish.Shares.Where(static s => s.Value > 0).Sum(s => grade[s.Key]);
        var recipe = new Recipe
        {
            Parts = parts,
            BatchGrams = total,
            Grade = grade,
            Elements = grade.ToElements(),
            Nitrogen = Forms(materials),
            RatioError = mean,
            LargestDeviation = largest,
            Strength = grade[Nutrient.N] + grade[Nutrient.P] + grade[Nutrient.K],
            CostPerKg = cost,
            CostPerKgNutrient = nutrient > 0 ? cost / nutrient : null,
            SaltIndex = Sum(amounts, static a => a.Offer.Material.SaltIndex?.Value, total),

            // One gram dissolved: osmoles a kg are milliosmoles a gram.
            OsmolalityPerGram = Sum(amounts, static a => a.Offer.Material.OsmolesPerKg, total),
            LimeEquivalent = Sum(amounts, static a => a.Offer.Material.LimeEquivalent?.Value, total),
            Storage = StorageJudge.Judge(materials, chart),
            Pairs = Pairs(parts, chart),
            CautionIds = CautionIndex.Default.CautionsFor(parts.Select(static p => p.Material), Uses(use)),
            Notes = [],
        };

        return recipe with { Notes = RecipeNotes.Of(recipe, use) };
    }

    /// <summary>Contents of a mix on the label's basis.</summary>
    public static LabelAnalysis Grade(IReadOnlyList<(Material Material, double Share)> parts)
    {
        var contents = new Dictionary<Nutrient, double>();
        foreach (var nutrient in Nutrients)
        {
            double sum = 0;
            foreach (var (material, share) in parts)
            {
                sum += material.Label[nutrient] * share;
            }

            contents[nutrient] = sum;
        }

        return new LabelAnalysis(contents);
    }

    private static NitrogenForms Forms(IReadOnlyList<(Material Material, double Share)> parts)
    {
        var forms = default(NitrogenForms);
        foreach (var (material, share) in parts)
        {
            forms += material.Nitrogen * share;
        }

        return forms;
    }

    // Mass-weighted mean of a figure; unknown as soon as one part's is.
    private static double? Sum(IReadOnlyList<PartAmount> amounts, Func<PartAmount, double?> figure, double total)
    {
        double? sum = 0;
        foreach (var amount in amounts)
        {
            sum += figure(amount) * (amount.Grams / total);
        }

        return sum;
    }

    private static List<PairVerdict> Pairs(List<RecipePart> parts, CompatibilityChart chart)
    {
        var pairs = new List<PairVerdict>();
        for (var a = 0; a < parts.Count; a++)
        {
            for (var b = a + 1; b < parts.Count; b++)
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
