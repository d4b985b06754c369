using Ashery.Compatibility;
using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Problems;
using Ashery.Recipes;

namespace Ashery.Feeds;

/// <summary>Makes feeds from recipes and from parts: what one gram holds is the weighted sum of what its parts hold.</summary>
public static class FeedMaker
{
    /// <summary>A recipe kept as a feed.</summary>
    public static Result<Feed> FromRecipe(Recipe recipe, string name)
    {
        var parts = recipe.Parts.GroupBy(static p => p.Material.Id).ToDictionary(static g => g.Key, static g => g.Sum(static p => p.Share));
        var materials = recipe.Parts.GroupBy(static p => p.Material.Id).ToDictionary(static g => g.Key, static g => g.First().Material);
        var kind = materials.Values.All(static m => m.IsOrganic) ? FeedKind.Organic : FeedKind.Mineral;
        return FromParts(FeedId(name), name, kind, parts, materials.GetValueOrDefault, "feed");
    }

    /// <summary>A feed from materials by mass fraction.</summary>
    /// <param name="id">Key within the garden.</param>
    /// <param name="name">What the grower calls it.</param>
    /// <param name="kind">What kind of feed it is.</param>
    /// <param name="parts">Mass fractions by material id; add up to 1 within a thousandth.</param>
    /// <param name="find">Where materials come from: the shelf first, then the catalogue.</param>
    /// <param name="field">What to call it in problems.</param>
    /// <param name="dissolves">Whether it goes into a can, where known; worked out from the parts when null.</param>
    public static Result<Feed> FromParts(
        string id, string name, FeedKind kind, IReadOnlyDictionary<string, double> parts, Func<string, Material?> find, string field, bool? dissolves = null)
    {
        var problems = CheckShares(parts, field);
        List<(Material Material, double Share)> found = [];
        foreach (var (materialId, share) in parts.OrderBy(static p => p.Key, StringComparer.Ordinal))
        {
            if (find(materialId) is { } material)
            {
                found.Add((material, share));
            }
            else
            {
                problems.Add(new($"{field}.parts.{materialId}", "This material is neither on the shelf nor in the catalogue.", "List materials with `ashery materials`, or add the bag to the shelf."));
            }
        }

        return problems.Count > 0 ? Result.Fail<Feed>(problems) : Result.Of(Sum(id, name, kind, parts, found, dissolves));
    }

    /// <summary>What is wrong with shares that must be fractions and add up to 1.</summary>
    public static List<Problem> CheckShares(IReadOnlyDictionary<string, double> parts, string field)
    {
        List<Problem> problems = [];
        foreach (var (materialId, share) in parts.OrderBy(static p => p.Key, StringComparer.Ordinal))
        {
            if (!(share is > 0 and <= 1))
            {
                problems.Add(new($"{field}.parts.{materialId}", FormattableString.Invariant($"A share of {share} cannot be."), "Shares are fractions above 0, at most 1, such as 0.25."));
            }
        }

        var sum = parts.Values.Sum();
        if (!(Math.Abs(sum - 1) <= 0.001))
        {
            problems.Add(new(field + ".parts", FormattableString.Invariant($"The shares add up to {sum:0.####}, not to 1."), "Divide each part by the sum of the parts."));
        }

        return problems;
    }

    private static Feed Sum(string id, string name, FeedKind kind, IReadOnlyDictionary<string, double> parts, List<(Material Material, double Share)> found, bool? dissolves)
    {
        var label = new Dictionary<Nutrient, double>();
        var nitrogen = default(NitrogenForms);
        foreach (var (material, share) in found)
        {
            nitrogen += material.Nitrogen * share;
            foreach (var nutrient in material.Label.Present)
            {
                label[nutrient] = label.GetValueOrDefault(nutrient) + (material.Label[nutrient] * share);
            }
        }

        return new Feed
        {
            Id = id,
            Name = name,
            Kind = kind,
            Parts = parts,
            Label = new LabelAnalysis(label),
            Nitrogen = nitrogen,
            SaltIndex = SumOrUnknown(found, static m => m.SaltIndex?.Value),
            LimeEquivalent = SumOrUnknown(found, static m => m.LimeEquivalent?.Value),

            // Volumes add, so densities add by their inverses.
            BulkDensity = SumOrUnknown(found, static m => m.BulkDensity is { Typical: > 0 } d ? 1 / d.Typical : null) is { } v ? 1 / v : null,
            Dissolves = dissolves ?? (found.TrueForAll(static p => p.Material.Dissolves) && StayDissolved(found)),
        };
    }

    /// <summary>Parts that dissolve alone may fall out together (calcium with phosphate or sulfate): such a feed is never given by the can.</summary>
    private static bool StayDissolved(List<(Material Material, double Share)> found)
    {
        for (var i = 0; i < found.Count; i++)
        {
            for (var j = i + 1; j < found.Count; j++)
            {
                if (CompatibilityChart.Default.Judge(found[i].Material, found[j].Material).InSolution.Verdict == Verdict.Stop)
                {
                    return false;
                }
            }
        }

        return true;
    }

    private static double? SumOrUnknown(List<(Material Material, double Share)> found, Func<Material, double?> figure)
    {
        var sum = 0.0;
        foreach (var (material, share) in found)
        {
            if (figure(material) is not { } value)
            {
                return null;
            }

            sum += value * share;
        }

        return sum;
    }

    /// <summary>Lower-case words joined by hyphens.</summary>
    public static string FeedId(string name)
    {
        var id = string.Concat(name.Select(static c => char.IsAsciiLetterOrDigit(c) ? char.ToLowerInvariant(c) : '-')).Trim('-');
        while (id.Contains("--", StringComparison.Ordinal))
        {
            id = id.Replace("--", "-", StringComparison.Ordinal);
        }

        return id.Length == 0 ? "feed" : id;
    }
}
