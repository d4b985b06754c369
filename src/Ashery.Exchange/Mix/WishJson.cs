using System.Text.Json.Serialization;
using Ashery.Exchange.Json;
using Ashery.Nutrients;
using Ashery.Recipes;

namespace Ashery.Exchange.Mix;

/// <summary>What is wanted.</summary>
/// <param name="Name">As typed, or the crop.</param>
/// <param name="Kind"><c>ratio</c>, or <c>grade</c> to reach at least.</param>
/// <param name="Nutrients">Parts of a ratio, or percent by weight of a grade, by label symbol.</param>
public sealed record WishJson(string Name, string Kind, IReadOnlyDictionary<string, double> Nutrients)
{
    public static WishJson From(Wish wish)
    {
        var nutrients = new Dictionary<string, double>(StringComparer.Ordinal);
        for (var nutrient = Nutrient.N; nutrient <= Nutrient.Na; nutrient++)
        {
            if (wish.Shares.TryGetValue(nutrient, out var share))
            {
                nutrients[LabelBasis.Symbol(nutrient)] = wish.IsGrade ? share * 100 : share;
            }
        }

        return new(wish.Name, wish.IsGrade ? "grade" : "ratio", nutrients);
    }
}

/// <summary>What was asked besides the wish.</summary>
/// <param name="Materials">Keys of the materials offered.</param>
/// <param name="Limits">In the words of the limit grammar.</param>
/// <param name="AtMost">Most materials in a blend.</param>
/// <param name="Best">Most blends listed.</param>
/// <param name="Use">What becomes of the blend: <c>dryToday</c>, <c>dryStored</c> or <c>dissolved</c>.</param>
/// <param name="BatchFrom">Smallest batch, g; null when none was asked for.</param>
/// <param name="BatchTo">Largest batch, g.</param>
/// <param name="StepGrams">Step of the scale, g; null when not weighed in steps.</param>
/// <param name="ScoopMillilitres">Level volume of the scoop; null when not scooped.</param>
/// <param name="RankedBy"><c>typicalAnalysis</c> or <c>percentile95</c>.</param>
/// <param name="Draws">Draws over label ranges and scoop errors; 0 when none were asked for.</param>
/// <param name="Seed">Of the draws.</param>
public sealed record AskedJson(
    IReadOnlyList<string> Materials,
    IReadOnlyList<string> Limits,
    int AtMost,
    int Best,
    [property: JsonConverter(typeof(WordConverter<BlendUse>))] BlendUse Use,
    double? BatchFrom,
    double? BatchTo,
    double? StepGrams,
    double? ScoopMillilitres,
    [property: JsonConverter(typeof(WordConverter<RankBy>))] RankBy RankedBy,
    int Draws,
    int Seed)
{
    public static AskedJson From(MixRequest? request) => request is null
        ? new([], [], 0, 0, BlendUse.DryStored, null, null, null, null, RankBy.TypicalAnalysis, 0, 0)
        : new(
            [.. request.Offers.Select(static o => o.Material.Id)],
            LimitWriter.Clauses(request.Limits),
            request.AtMost,
            request.Best,
            request.Limits.Use,
            request.Batch?.From.Grams,
            request.Batch?.To.Grams,
            request.Measuring is Measuring.ByScale scale ? scale.Step.Grams : null,
            request.Measuring is Measuring.ByScoop scoop ? scoop.Scoop.Volume.Millilitres : null,
            request.Rank,
            request.Draws,
            request.Seed);
}
