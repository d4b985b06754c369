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

    /// <summary>Nitrogen of each pot a month and a season, beside the published rates.</summary>
    public IReadOnlyList<PotSupply> Supply { get; init; } = [];

    /// <summary>Acidity that adds up in each pot, and when and how to correct it.</summary>
    public IReadOnlyList<LimeDebt> LimeDebts { get; init; } = [];

    /// <summary>Stretches in which the season rules leave nothing, and the nearest safe feed.</summary>
    public IReadOnlyList<SafeOffer> Offers { get; init; } = [];

    /// <summary>Feeds taken in place of one whose bag runs out.</summary>
    public IReadOnlyList<Replacement> Replacements { get; init; } = [];

    /// <summary>Feeds made for the plan in place of one whose bag runs out; not part of the garden.</summary>
    public IReadOnlyList<Feed> SubstituteFeeds { get; init; } = [];

    /// <summary>The rules that shaped the plan, with what published advice says otherwise.</summary>
    public IReadOnlyList<AppliedRule> Rules { get; init; } = [];

    /// <summary>What could not be planned and the nearest safe way, and rules in conflict.</summary>
    public IReadOnlyList<Problem> Problems { get; init; } = [];

    /// <summary>The feeds by day.</summary>
    public IEnumerable<IGrouping<DateOnly, PlannedFeed>> Days => Feeds.GroupBy(static f => f.Date);

    /// <summary>What all there is to buy costs; null when a price is unknown.</summary>
    public double? ShoppingCost => Shopping.Any(static s => s.Cost is null) ? null : Shopping.Sum(static s => s.Cost!.Value);
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
    IReadOnlyList<string> Reasons)
{
    /// <summary>How to give it: hour, moisture, placing.</summary>
    public IReadOnlyList<string> How { get; init; } = [];

    /// <summary>Pots this feed passes over on this day, and why; told once a feed and day, with its first group.</summary>
    public IReadOnlyList<LeftOut> LeftOut { get; init; } = [];
}

/// <summary>A pot passed over on a day.</summary>
public sealed record LeftOut(string PotId, string Why);

public sealed record MonthTotal(int Year, int Month, LabelAnalysisGrams Grams);

/// <summary>g of nutrients on the label's basis.</summary>
public sealed record LabelAnalysisGrams(IReadOnlyDictionary<Nutrient, double> Grams);

/// <summary>What to buy for the year.</summary>
/// <param name="MaterialId">What.</param>
/// <param name="Name">Its name.</param>
/// <param name="NeededGrams">g the plan takes.</param>
/// <param name="OnShelfGrams">g on the shelf; infinite when the bag was entered without a stock.</param>
/// <param name="ToBuyGrams">g to buy, in whole bags where the size of a bag is known.</param>
/// <param name="Cost">In the garden's currency; null when no price is known.</param>
public sealed record ShoppingLine(string MaterialId, string Name, double NeededGrams, double OnShelfGrams, double ToBuyGrams, double? Cost)
{
    /// <summary>Whole bags to buy; null when the size of a bag is unknown.</summary>
    public int? Bags { get; init; }

    /// <summary>First day on which the shelf does not hold what is needed; null when it lasts.</summary>
    public DateOnly? RunsOut { get; init; }
}

/// <summary>Nitrogen a pot gets by the plan.</summary>
/// <param name="PotId">Which pot.</param>
/// <param name="Months">g N a litre of medium, month by month.</param>
/// <param name="Season">g N a litre of medium over the year, which holds one growing season.</param>
/// <param name="PublishedLow">Low end of the crop's published season rate.</param>
/// <param name="PublishedHigh">High end of it.</param>
/// <param name="FromClass">True when the rate is that of the feeder class, none being published for the crop.</param>
/// <param name="Band">Against the published low, medium and high rates.</param>
/// <param name="Words">What to make of it.</param>
public sealed record PotSupply(
    string PotId,
    IReadOnlyList<MonthNitrogen> Months,
    double Season,
    double PublishedLow,
    double PublishedHigh,
    bool FromClass,
    string Band,
    string Words);

/// <summary>g N a litre of medium in a month.</summary>
public sealed record MonthNitrogen(int Year, int Month, double GramsPerLitre);

/// <summary>A stretch in which no rule leaves a feed, and what would still be safe.</summary>
/// <param name="From">First day.</param>
/// <param name="To">Last day.</param>
/// <param name="Kind">Kind of the offered feed; null when only water is left.</param>
/// <param name="FeedId">The offered feed; null when only water is left.</param>
/// <param name="Factor">Fraction of the usual dose.</param>
/// <param name="Words">What, how and how to accept it.</param>
public sealed record SafeOffer(DateOnly From, DateOnly To, FeedKind? Kind, string? FeedId, double Factor, string Words);

/// <summary>A feed taken in place of another from a day on.</summary>
/// <param name="On">First day.</param>
/// <param name="MaterialId">The material that runs out.</param>
/// <param name="FeedId">The feed that can no longer be made.</param>
/// <param name="ByFeedId">The feed taken instead.</param>
/// <param name="Words">The note for the grower.</param>
public sealed record Replacement(DateOnly On, string MaterialId, string FeedId, string ByFeedId, string Words);

/// <summary>A rule that shaped the plan.</summary>
/// <param name="RuleId">Which.</param>
/// <param name="Statement">What it says.</param>
/// <param name="Binding">How hard it binds.</param>
/// <param name="SourceId">Who says so.</param>
/// <param name="Differs">What published advice says otherwise.</param>
public sealed record AppliedRule(string RuleId, string Statement, string Binding, string SourceId, string? Differs);
