using Ashery.Climate;
using Ashery.Feeds;
using Ashery.Nutrients;
using Ashery.Pots;
using Ashery.Problems;

namespace Ashery.Planning;

/// <summary>A year of feeds with dates and reasons.</summary>
public sealed record YearPlan
{
    public required DateOnly From { get; init; }

    public required DateOnly To { get; init; }

    /// <summary>Seasons as dated stretches within the year.</summary>
    public required IReadOnlyList<DatedSeason> Seasons { get; init; }

    /// <summary>In order of date.</summary>
    public required IReadOnlyList<PlannedFeed> Feeds { get; init; }

    /// <summary>Nutrient totals a month over all pots, g on the label's basis.</summary>
    public required IReadOnlyList<MonthTotal> Months { get; init; }

    public required IReadOnlyList<ShoppingLine> Shopping { get; init; }

    /// <summary>What could not be planned and the nearest safe way, and rules in conflict.</summary>
    public IReadOnlyList<Problem> Problems { get; init; } = [];
}

public sealed record DatedSeason(SeasonKind Kind, DateOnly From, DateOnly To);

/// <summary>A feed on a day for pots that get the same.</summary>
/// <param name="Date">When.</param>
/// <param name="Kind">What kind of feed.</param>
/// <param name="FeedId">Which feed of the garden.</param>
/// <param name="FeedName">Its name.</param>
/// <param name="Pots">Which pots, in walking order.</param>
/// <param name="GramsPerPot">g for one pot.</param>
/// <param name="Doses">The dose of each pot with its reasons.</param>
/// <param name="Reasons">Why this feed on this day.</param>
public sealed record PlannedFeed(
    DateOnly Date,
    FeedKind Kind,
    string FeedId,
    string FeedName,
    IReadOnlyList<string> Pots,
    double GramsPerPot,
    IReadOnlyList<Dose> Doses,
    IReadOnlyList<string> Reasons);

public sealed record MonthTotal(int Year, int Month, LabelAnalysisGrams Grams);

/// <summary>g of nutrients on the label's basis.</summary>
public sealed record LabelAnalysisGrams(IReadOnlyDictionary<Nutrient, double> Grams);

/// <summary>What to buy for the year.</summary>
public sealed record ShoppingLine(string MaterialId, string Name, double NeededGrams, double OnShelfGrams, double ToBuyGrams, double? Cost);
