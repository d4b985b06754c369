using Ashery.Compatibility;
using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Problems;

namespace Ashery.Recipes;

/// <summary>A blend as the grower gets it.</summary>
public sealed record Recipe
{
    public required IReadOnlyList<RecipePart> Parts { get; init; }

    /// <summary>Mass of the batch, g; 1000 when none was asked for.</summary>
    public required double BatchGrams { get; init; }

    /// <summary>Contents as a label prints them (mass fractions).</summary>
    public required LabelAnalysis Grade { get; init; }

    /// <summary>Contents as elements.</summary>
    public required ElementAnalysis Elements { get; init; }

    public required NitrogenForms Nitrogen { get; init; }

    /// <summary>Mean relative deviation of the nutrient shares.</summary>
    public required double RatioError { get; init; }

    /// <summary>Largest relative deviation of a share, the second opinion on small batches.</summary>
    public required double LargestDeviation { get; init; }

    /// <summary>N + P2O5 + K2O, mass fraction.</summary>
    public required double Strength { get; init; }

    /// <summary>Null when a part has no price.</summary>
    public double? CostPerKg { get; init; }

    public double? CostPerKgNutrient { get; init; }

    /// <summary>By weight, sodium nitrate = 100; null when a part has no published figure, named in <see cref="Notes"/>.</summary>
    public double? SaltIndex { get; init; }

    /// <summary>mOsm a kg water of 1 g dissolved in 1 kg water, ideal; null when a part does not simply dissolve.</summary>
    public double? OsmolalityPerGram { get; init; }

    /// <summary>kg CaCO3 a kg; positive acidifies; null when a part has no figure.</summary>
    public double? LimeEquivalent { get; init; }

    public required Storage Storage { get; init; }

    public required IReadOnlyList<PairVerdict> Pairs { get; init; }

    /// <summary>Keys of the cautions that go with it.</summary>
    public required IReadOnlyList<string> CautionIds { get; init; }

    /// <summary>Warnings and notes about this blend: chloride, all-ammonium nitrogen, missing calcium and the rest.</summary>
    public required IReadOnlyList<Problem> Notes { get; init; }

    /// <summary>What label ranges and scoops do to it; null when no draws were asked for.</summary>
    public RecipeUncertainty? Uncertainty { get; init; }
}

/// <summary>One material of the recipe.</summary>
/// <param name="Material">What it is.</param>
/// <param name="Share">Mass fraction of the blend.</param>
/// <param name="Grams">g in the batch.</param>
/// <param name="Scoops">Whole scoops, when measured by scoop.</param>
/// <param name="Millilitres">mL by bulk density or, for liquids, density; null when unknown.</param>
/// <param name="Cost">Of this part of the batch; null when unknown.</param>
public sealed record RecipePart(Material Material, double Share, double Grams, int? Scoops, double? Millilitres, double? Cost);

/// <summary>Spread of the result over label ranges and scoop errors.</summary>
/// <param name="Median">Median ratio error.</param>
/// <param name="Percentile95">95th percentile of the ratio error.</param>
/// <param name="WorstCase">Largest ratio error at any corner of the ranges.</param>
/// <param name="NitrogenLow">5th percentile of N, mass fraction.</param>
/// <param name="NitrogenHigh">95th percentile of N, mass fraction.</param>
public sealed record RecipeUncertainty(double Median, double Percentile95, double WorstCase, double NitrogenLow, double NitrogenHigh);
