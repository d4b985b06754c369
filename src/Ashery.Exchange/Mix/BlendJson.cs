using System.Text.Json.Serialization;
using Ashery.Cautions;
using Ashery.Compatibility;
using Ashery.Exchange.Json;
using Ashery.Nutrients;
using Ashery.Recipes;

namespace Ashery.Exchange.Mix;

/// <summary>A blend with everything that is shown of it.</summary>
public sealed record BlendJson
{
    /// <summary>What goes in.</summary>
    public required IReadOnlyList<PartJson> Parts { get; init; }

    /// <summary>Mass of the batch, g; 1000 when none was asked for.</summary>
    public required double BatchGrams { get; init; }

    /// <summary>Contents as a label prints them, percent by weight: N, P2O5, K2O always, others where present.</summary>
    public required IReadOnlyDictionary<string, double> Grade { get; init; }

    /// <summary>Contents as elements, percent by weight.</summary>
    public required IReadOnlyDictionary<string, double> Elements { get; init; }

    /// <summary>The nitrogen by form.</summary>
    public required NitrogenFormsJson Nitrogen { get; init; }

    /// <summary>Mean relative deviation of the nutrient shares, a fraction.</summary>
    public required double RatioError { get; init; }

    /// <summary>Largest relative deviation of a nutrient share, a fraction.</summary>
    public required double LargestDeviation { get; init; }

    /// <summary>N + P2O5 + K2O, percent by weight.</summary>
    public required double Strength { get; init; }

    /// <summary>A kg of blend; null when a price is unknown.</summary>
    public required double? Cost { get; init; }

    /// <summary>A kg of the wanted nutrients; null when a price is unknown.</summary>
    public required double? CostPerKgNutrient { get; init; }

    /// <summary>By weight, sodium nitrate = 100; null when a part has no published figure.</summary>
    public required double? SaltIndex { get; init; }

    /// <summary>Milliosmoles a kg of water for 1 g of blend a kg of water, ideal; null when a part does not simply dissolve.</summary>
    public required double? OsmolalityPerGram { get; init; }

    /// <summary>kg CaCO3 a kg of blend; positive acidifies; null when a part has no figure.</summary>
    public required double? LimeEquivalent { get; init; }

    /// <summary>How it keeps.</summary>
    public required StorageJson Storage { get; init; }

    /// <summary>Every pair in the blend.</summary>
    public required IReadOnlyList<PairJson> Pairs { get; init; }

    /// <summary>What to take care of.</summary>
    public required IReadOnlyList<CautionJson> Cautions { get; init; }

    /// <summary>Warnings and notes on this blend.</summary>
    public required IReadOnlyList<ProblemJson> Notes { get; init; }

    /// <summary>What label ranges and scoop errors do to it; null when no draws were asked for.</summary>
    public required UncertaintyJson? Uncertainty { get; init; }

    public static BlendJson From(Recipe recipe) => new()
    {
        Parts = [.. recipe.Parts.Select(PartJson.From)],
        BatchGrams = recipe.BatchGrams,
        Grade = Contents(recipe.Grade, static n => LabelBasis.Symbol(n)),
        Elements = Contents(recipe.Elements, static n => n.ToString()),
        Nitrogen = NitrogenFormsJson.From(recipe.Nitrogen),
        RatioError = recipe.RatioError,
        LargestDeviation = recipe.LargestDeviation,
        Strength = recipe.Strength * 100,
        Cost = recipe.CostPerKg,
        CostPerKgNutrient = recipe.CostPerKgNutrient,
        SaltIndex = recipe.SaltIndex,
        OsmolalityPerGram = recipe.OsmolalityPerGram,
        LimeEquivalent = recipe.LimeEquivalent,
        Storage = new StorageJson(
            recipe.Storage.Class, recipe.Storage.Reason, recipe.Storage.CriticalRelativeHumidity, recipe.Storage.Source),
        Pairs = [.. recipe.Pairs.Select(PairJson.From)],
        Cautions = [.. recipe.CautionIds.Select(static id => new CautionJson(id, CautionIndex.Default.Find(id)?.Words ?? id))],
        Notes = ProblemJson.From(recipe.Notes),
        Uncertainty = UncertaintyJson.From(recipe.Uncertainty),
    };

    private static Dictionary<string, double> Contents(Analysis analysis, Func<Nutrient, string> symbol)
    {
        var contents = new Dictionary<string, double>(StringComparer.Ordinal);
        for (var nutrient = Nutrient.N; nutrient <= Nutrient.Na; nutrient++)
        {
            if (nutrient <= Nutrient.K || analysis[nutrient] > 0)
            {
                contents[symbol(nutrient)] = analysis.Percent(nutrient);
            }
        }

        return contents;
    }
}

/// <summary>One material of a blend.</summary>
/// <param name="Material">Its key.</param>
/// <param name="Name">As a grower says it.</param>
/// <param name="Grams">g in the batch.</param>
/// <param name="Share">Mass fraction of the blend.</param>
/// <param name="Scoops">Whole level scoops; null when weighed.</param>
/// <param name="Millilitres">By loose bulk density, or a liquid's density; null when unknown.</param>
/// <param name="Cost">Of this part of the batch; null when its price is unknown.</param>
public sealed record PartJson(string Material, string Name, double Grams, double Share, int? Scoops, double? Millilitres, double? Cost)
{
    public static PartJson From(RecipePart part) =>
        new(part.Material.Id, part.Material.Name, part.Grams, part.Share, part.Scoops, part.Millilitres, part.Cost);
}

/// <summary>Nitrogen by form, percent by weight of the blend.</summary>
/// <param name="Ammonium">Ammonium nitrogen.</param>
/// <param name="Nitrate">Nitrate nitrogen.</param>
/// <param name="Urea">Urea nitrogen.</param>
/// <param name="Organic">Bound in organic matter.</param>
/// <param name="SlowSynthetic">Coated or condensed.</param>
public sealed record NitrogenFormsJson(double Ammonium, double Nitrate, double Urea, double Organic, double SlowSynthetic)
{
    public static NitrogenFormsJson From(NitrogenForms forms) =>
        new(forms.Ammonium * 100, forms.Nitrate * 100, forms.Urea * 100, forms.Organic * 100, forms.SlowSynthetic * 100);
}

/// <summary>How a blend keeps: a moisture class with its reason.</summary>
/// <param name="Class">How it keeps.</param>
/// <param name="Reason">Why.</param>
/// <param name="CriticalRelativeHumidity">Percent at 30 °C above which it takes up water; null when unknown.</param>
/// <param name="Source">Where the figure is from.</param>
public sealed record StorageJson(
    [property: JsonConverter(typeof(WordConverter<StorageClass>))] StorageClass Class, string Reason, double? CriticalRelativeHumidity, string Source);

/// <summary>A caution in words.</summary>
/// <param name="Id">Its key.</param>
/// <param name="Words">What to do.</param>
public sealed record CautionJson(string Id, string Words);

/// <summary>Spread over label ranges and scoop errors; errors as fractions.</summary>
/// <param name="Median">Median ratio error.</param>
/// <param name="Percentile95">95th percentile of the ratio error.</param>
/// <param name="WorstCase">Largest ratio error anywhere in the ranges.</param>
/// <param name="NitrogenLow">5th percentile of N, percent by weight.</param>
/// <param name="NitrogenHigh">95th percentile of N, percent by weight.</param>
public sealed record UncertaintyJson(double Median, double Percentile95, double WorstCase, double NitrogenLow, double NitrogenHigh)
{
    public static UncertaintyJson? From(RecipeUncertainty? spread) => spread is null
        ? null
        : new(spread.Median, spread.Percentile95, spread.WorstCase, spread.NitrogenLow * 100, spread.NitrogenHigh * 100);
}
