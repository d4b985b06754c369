using Ashery.Crops;
using Ashery.Feeds;
using Ashery.Materials;
using Ashery.Nutrients;

namespace Ashery.Pots;

/// <summary>What a dose is worked out from.</summary>
public sealed record DoseRequest
{
    public required Pot Pot { get; init; }

    public required Crop Crop { get; init; }

    public required Feed Feed { get; init; }

    public required DateOnly On { get; init; }

    /// <summary>
    /// By how many full doses the season's nitrogen is shared: feeds counted with their growth factor, so that a cool month's half
    /// dose takes half a share and the season's amount is given all the same.
    /// </summary>
    public required double FeedsInSeason { get; init; }

    /// <summary>Length of the growing season, months.</summary>
    public required double SeasonMonths { get; init; }

    /// <summary>Days from one feed to the next.</summary>
    public int IntervalDays { get; init; } = 14;

    /// <summary>What makes the dose smaller on this day: cool weather, a season that reduces, the weeks before rest.</summary>
    public IReadOnlyList<DoseFactor> Factors { get; init; } = [];

    /// <summary>mg of trace elements a litre of medium already given this season.</summary>
    public IReadOnlyDictionary<Nutrient, double> TraceGiven { get; init; } = new Dictionary<Nutrient, double>();

    /// <summary>Published rate, or the rule of thumb made to fit the pot.</summary>
    public DoseBasis Basis { get; init; }

    /// <summary>The season rate, where it was already worked out for this pot; null to work it out.</summary>
    public SeasonRate? Rate { get; init; }

    /// <summary>Scale resolution, g.</summary>
    public double ScaleStep { get; init; } = 1;

    /// <summary>Scoop to measure with; null to weigh.</summary>
    public Scoop? Scoop { get; init; }

    /// <summary>The growing rules, with the grower's changes.</summary>
    public RuleBook Rules { get; init; } = RuleBook.Default;
}

/// <summary>Something that makes a dose smaller.</summary>
/// <param name="RuleId">Which rule says so.</param>
/// <param name="Value">Multiplies the dose; 0 to 1.</param>
/// <param name="Words">Why, in words.</param>
public sealed record DoseFactor(string RuleId, double Value, string Words);

/// <summary>What a dose of a feed with nitrogen starts from.</summary>
public enum DoseBasis
{
    /// <summary>The season rate published for the crop.</summary>
    PublishedRate,

    /// <summary>The custom of so many grams a fortnight, capped by pot volume.</summary>
    RuleOfThumb,
}
