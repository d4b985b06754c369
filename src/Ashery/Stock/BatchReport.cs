using Ashery.Feeds;
using Ashery.Gardens;
using Ashery.Journal;
using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Problems;
using Ashery.Recipes;

namespace Ashery.Stock;

/// <summary>What a batch became: its grade by the weighings as they were made, beside what the feed was to be.</summary>
public sealed record BatchReport
{
    /// <summary>The mix as weighed.</summary>
    public required Recipe AsMade { get; init; }

    /// <summary>The feed it was to be; null when the garden no longer has it, and then there is nothing to compare.</summary>
    public Feed? Feed { get; init; }

    /// <summary>Weighed against wanted, part by part.</summary>
    public required IReadOnlyList<PartDifference> Parts { get; init; }

    /// <summary>The nutrients of either, label basis.</summary>
    public required IReadOnlyList<NutrientDifference> Nutrients { get; init; }

    /// <summary>The batch judged as an analysis of a bag with the feed's label, by each rule of law known; the first is the one for this kind of feed.</summary>
    public required IReadOnlyList<ToleranceResult> Tolerances { get; init; }

    /// <summary>Materials that nobody knows any more: they are left out of the grade.</summary>
    public required IReadOnlyList<Problem> Notes { get; init; }

    /// <summary>Works out the report; problems when not one of its materials is known.</summary>
    public static Result<BatchReport> Of(Garden garden, string feedId, IReadOnlyList<Weighing> weighings)
    {
        var parts = BatchMaterials.Parts(weighings).ToList();
        var made = RecipeByParts.Weighed(BatchMaterials.Offers(garden, parts), use: BlendUse.DryStored);
        if (!made.Ok)
        {
            return Result.Fail<BatchReport>(made.Problems);
        }

        var feed = garden.Feeds.FirstOrDefault(f => f.Id == feedId);
        return Result.Of(new BatchReport
        {
            AsMade = made.Value,
            Feed = feed,
            Parts = Differences(garden, parts, feed),
            Nutrients = feed is null ? [] : Compare(made.Value.Grade, feed.Label),
            Tolerances = feed is null ? [] : [.. Rules(feed.Kind).Select(r => LabelTolerance.Check(made.Value.Grade, feed.Label, r))],
            Notes = [.. parts.Where(p => BatchMaterials.Find(garden, p.BagId, p.MaterialId) is null).Select(static p => new Problem(
                p.BagId, FormattableString.Invariant($"{p.Grams:0.##} g of '{p.MaterialId}' are not in the grade: nobody knows this material any more."), "Put it back on the shelf with its label.", Severity.Warning))],
        });
    }

    /// <summary>The rule for organic or for mineral feeds first.</summary>
    private static IEnumerable<ToleranceRule> Rules(FeedKind kind)
    {
        var first = kind == FeedKind.Organic ? "eu2019-organic" : "eu2019-mineral";
        return ToleranceRules.All.OrderByDescending(r => r.Id == first);
    }

    private static List<PartDifference> Differences(Garden garden, List<(string BagId, string MaterialId, double Grams)> parts, Feed? feed)
    {
        var total = parts.Sum(static p => p.Grams);
        List<PartDifference> all = [];
        foreach (var group in parts.GroupBy(static p => p.MaterialId, StringComparer.Ordinal))
        {
            var grams = group.Sum(static p => p.Grams);
            all.Add(new(group.Key, Name(garden, group.First().BagId, group.Key), grams, feed is null ? null : feed.Parts.GetValueOrDefault(group.Key) * total));
        }

        foreach (var (material, share) in feed?.Parts ?? new Dictionary<string, double>())
        {
            if (!all.Exists(p => p.MaterialId == material))
            {
                all.Add(new(material, Name(garden, material, material), 0, share * total));
            }
        }

        return [.. all.OrderByDescending(static p => Math.Max(p.Grams, p.Wanted ?? 0)).ThenBy(static p => p.MaterialId, StringComparer.Ordinal)];
    }

    private static List<NutrientDifference> Compare(LabelAnalysis made, LabelAnalysis wanted) =>
        [.. Enum.GetValues<Nutrient>().Where(n => made[n] > 0 || wanted[n] > 0).Select(n => new NutrientDifference(n, made[n], wanted[n]))];

    private static string Name(Garden garden, string bagId, string materialId) => BatchMaterials.Find(garden, bagId, materialId)?.Name ?? materialId;
}

/// <summary>One material of a batch.</summary>
/// <param name="MaterialId">Which.</param>
/// <param name="Name">Its name.</param>
/// <param name="Grams">g weighed.</param>
/// <param name="Wanted">g the feed asks for in a batch of this weight; null when the feed is unknown.</param>
public sealed record PartDifference(string MaterialId, string Name, double Grams, double? Wanted);

/// <summary>One nutrient of a batch, mass fractions on the label's basis.</summary>
/// <param name="Nutrient">Which.</param>
/// <param name="Made">As weighed.</param>
/// <param name="Wanted">As the feed was to be.</param>
public sealed record NutrientDifference(Nutrient Nutrient, double Made, double Wanted);
