using Ashery.Exchange.Gardens;
using Ashery.Planning;

namespace Ashery.Exchange.Calendar;

/// <summary>A feed on a day for pots that get the same.</summary>
public sealed record PlannedFeedJson
{
    public required DateOnly Date { get; init; }

    /// <summary>Ids of the pots, in walking order.</summary>
    public required IReadOnlyList<string> Pots { get; init; }

    /// <summary><c>mineral</c>, <c>organic</c>, <c>foliar</c>, <c>traceElements</c> or <c>inoculant</c>.</summary>
    public required string Kind { get; init; }

    /// <summary>Id of the feed.</summary>
    public required string Feed { get; init; }

    public required string FeedName { get; init; }

    /// <summary>g for one pot.</summary>
    public required double Grams { get; init; }

    /// <summary>Why this feed on this day.</summary>
    public required IReadOnlyList<string> Reasons { get; init; }

    /// <summary>How it is given.</summary>
    public required MethodJson Method { get; init; }

    /// <summary>Pots passed over on this day, and why.</summary>
    public required IReadOnlyList<PassedOverJson> LeftOut { get; init; }

    /// <summary>What shaped the dose of each pot.</summary>
    public required IReadOnlyList<FeedDoseJson> Doses { get; init; }

    internal static PlannedFeedJson Of(PlannedFeed feed) => new()
    {
        Date = feed.Date,
        Pots = feed.Pots,
        Kind = GardenWriter.Word(feed.Kind),
        Feed = feed.FeedId,
        FeedName = feed.FeedName,
        Grams = feed.GramsPerPot,
        Reasons = feed.Reasons,
        Method = MethodJson.Of(feed.Doses[0]),
        LeftOut = [.. feed.LeftOut.Select(static l => new PassedOverJson(l.PotId, l.Why))],
        Doses = [.. feed.Doses.Select(static d => new FeedDoseJson(
            d.PotId, d.WantedGrams, d.NitrogenPerLitreMonth, d.NitrogenPerLitreSeason, d.RateBand, d.Reasons))],
    };
}

/// <summary>A pot passed over.</summary>
public sealed record PassedOverJson(string Pot, string Why);

/// <summary>What shaped the dose of a pot.</summary>
/// <param name="Pot">Which pot.</param>
/// <param name="WantedGrams">g before caps and rounding.</param>
/// <param name="NitrogenPerLitreMonth">g N a litre of medium in this month, all feeds together.</param>
/// <param name="NitrogenPerLitreSeason">g N a litre of medium over the year, all feeds together.</param>
/// <param name="RateBand">Against the published low, medium and high rates.</param>
/// <param name="Reasons">In order.</param>
public sealed record FeedDoseJson(
    string Pot, double WantedGrams, double NitrogenPerLitreMonth, double NitrogenPerLitreSeason, string RateBand, IReadOnlyList<string> Reasons);
