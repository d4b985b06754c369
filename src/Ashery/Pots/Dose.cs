using Ashery.Problems;

namespace Ashery.Pots;

/// <summary>One feed for one pot, with everything that shaped it.</summary>
public sealed record Dose
{
    public required string PotId { get; init; }

    public required string FeedId { get; init; }

    /// <summary>g of feed for one pot, rounded to what can be weighed.</summary>
    public required double Grams { get; init; }

    /// <summary>g before caps and rounding.</summary>
    public required double WantedGrams { get; init; }

    /// <summary>Whole or half scoops, where a scoop is set.</summary>
    public double? Scoops { get; init; }

    /// <summary>When given by the can: g in 10 L of water and litres a pot.</summary>
    public CanDose? Can { get; init; }

    /// <summary>
    /// g N a litre of medium each month. In a plan: what the plan's feeds bring in this month; of a single dose: what a season of
    /// such feeds would bring, by its months.
    /// </summary>
    public required double NitrogenPerLitreMonth { get; init; }

    public required double NitrogenPerLitreSeason { get; init; }

    /// <summary>Where the season's nitrogen lies against the published low, medium and high rates.</summary>
    public required string RateBand { get; init; }

    /// <summary>What shaped the dose, in order, in words.</summary>
    public required IReadOnlyList<string> Reasons { get; init; }

    /// <summary>When smaller than can be weighed: dissolve so much in so much water and give so many mL.</summary>
    public Predilution? Predilution { get; init; }

    /// <summary>How it is given.</summary>
    public DoseMethod Method { get; init; }

    /// <summary>When sprayed: g in a litre of water and mL a pot.</summary>
    public SprayDose? Spray { get; init; }

    /// <summary>g CaCO3 this dose will cost the medium (positive acidifies); null when the feed has no figure.</summary>
    public double? LimeGrams { get; init; }

    public IReadOnlyList<Problem> Notes { get; init; } = [];
}

/// <summary>How a dose gets to the roots or leaves.</summary>
public enum DoseMethod
{
    /// <summary>Spread dry on a moist medium, off the stem, and watered in.</summary>
    TopDress,

    /// <summary>Dissolved in the watering can.</summary>
    Can,

    /// <summary>Sprayed on the leaves.</summary>
    Spray,
}

/// <summary>Feeding by the can.</summary>
/// <param name="GramsPer10Litres">g of feed in 10 L of water.</param>
/// <param name="LitresPerPot">L for one pot at one watering.</param>
/// <param name="Waterings">Over how many waterings the dose is spread, so that the can stays within the crop's liquid rate.</param>
public sealed record CanDose(double GramsPer10Litres, double LitresPerPot, int Waterings = 1);

/// <summary>Feeding through the leaves.</summary>
public sealed record SprayDose(double GramsPerLitre, double MillilitresPerPot);

/// <summary>A weighable amount in water, a measured part of which holds the dose.</summary>
public sealed record Predilution(double Grams, double WaterMillilitres, double MillilitresPerPot);
