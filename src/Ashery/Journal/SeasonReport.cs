using Ashery.Gardens;
using Ashery.Nutrients;
using Ashery.Planning;
using Ashery.Problems;

namespace Ashery.Journal;

/// <summary>Which season is to be reported.</summary>
/// <param name="Garden">The garden as it stands.</param>
/// <param name="Entries">Entries of the journal; those outside the days are left out.</param>
/// <param name="From">First day.</param>
/// <param name="To">Last day.</param>
public sealed record SeasonReportRequest(Garden Garden, IReadOnlyList<Entry> Entries, DateOnly From, DateOnly To)
{
    /// <summary>What was planned for these days; empty when no plan is compared.</summary>
    public IReadOnlyList<PlannedFeed> Planned { get; init; } = [];

    /// <summary>The last day on which a planned feed can be called open; later ones are to come.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>Price of a gram of feed by the entry of its batch, where the stock's books know it.</summary>
    public IReadOnlyDictionary<Guid, double> BatchPrices { get; init; } = new Dictionary<Guid, double>();

    /// <summary>Only these pots; empty for all.</summary>
    public IReadOnlyList<string> Pots { get; init; } = [];
}

/// <summary>A season as it was: what each pot got and what came of it.</summary>
public sealed record SeasonReport
{
    public const int MostDays = 3660;

    public required DateOnly From { get; init; }

    public required DateOnly To { get; init; }

    /// <summary>Pots with their season, in the garden's order; pots that are gone come last.</summary>
    public required IReadOnlyList<PotSeason> Pots { get; init; }

    /// <summary>Plants that died.</summary>
    public required IReadOnlyList<Loss> Losses { get; init; }

    /// <summary>Feeds over all pots.</summary>
    public required IReadOnlyList<FeedTotal> Feeds { get; init; }

    /// <summary>Done against planned over all pots.</summary>
    public required TaskTally Tally { get; init; }

    /// <summary>Paid for what was given, as far as prices are known.</summary>
    public double Cost => Feeds.Sum(static f => f.Cost ?? 0);

    /// <summary>Feeds with a gram whose price is not known.</summary>
    public IReadOnlyList<string> WithoutPrice => [.. Feeds.Where(static f => f.Cost is null && f.Grams > 0).Select(static f => f.Name)];

    public int Photographs { get; init; }

    /// <summary>Puts a season together.</summary>
    public static Result<SeasonReport> Of(SeasonReportRequest request)
    {
        if (request.To < request.From)
        {
            return Result.Fail<SeasonReport>("to", "The last day lies before the first.", "Let the season begin before it ends.");
        }

        if (request.To.DayNumber - request.From.DayNumber > MostDays)
        {
            return Result.Fail<SeasonReport>("from", "A report spans ten years at most.", "Take a shorter time.");
        }

        var entries = request.Entries.Where(e => e.Day >= request.From && e.Day <= request.To).OrderBy(static e => e.Day).ThenBy(static e => e.Time).ToList();
        var answers = new TaskAnswers(request.Entries);
        var prices = new FeedPrices(request.Garden, request.BatchPrices);
        var inGarden = request.Garden.Pots.Select(static p => p.Id).ToList();
        var gone = entries.SelectMany(static e => e.Pots).Distinct(StringComparer.Ordinal).Except(inGarden, StringComparer.Ordinal).Order(StringComparer.Ordinal);
        var wanted = request.Pots.ToHashSet(StringComparer.Ordinal);
        var pots = inGarden.Concat(gone).Where(p => wanted.Count == 0 || wanted.Contains(p))
            .Select(p => PotSeason.Of(request, entries, answers, prices, p)).ToList();
        return Result.Of(new SeasonReport
        {
            From = request.From,
            To = request.To,
            Pots = pots,
            Feeds = FeedTotal.Together(pots.SelectMany(static p => p.Feeds)),
            Losses = [.. entries.Where(static e => e.Facts is PlantEvent { What: PlantEventKind.Died })
                .SelectMany(e => e.Pots.Select(p => new Loss(e.Day, p, DiaryWords.PotName(request.Garden, p), e.Note)))
                .Where(l => wanted.Count == 0 || wanted.Contains(l.PotId))],
            Tally = pots.Aggregate(TaskTally.None, static (sum, p) => sum + p.Tally),
            Photographs = entries.Count(e => e.Facts is Photograph && (wanted.Count == 0 || e.Pots.Any(wanted.Contains))),
        });
    }
}

/// <summary>A plant that died.</summary>
public sealed record Loss(DateOnly Day, string PotId, string PotName, string Note);

/// <summary>How planned feeds were answered; each pot of a planned feed counts once.</summary>
/// <param name="Done">Given.</param>
/// <param name="Skipped">Left out, with a reason.</param>
/// <param name="Open">Neither, and the day is past.</param>
/// <param name="ToCome">Not due yet.</param>
public sealed record TaskTally(int Done, int Skipped, int Open, int ToCome)
{
    public static TaskTally None { get; } = new(0, 0, 0, 0);

    public int Planned => Done + Skipped + Open + ToCome;

    public static TaskTally operator +(TaskTally a, TaskTally b) => new(a.Done + b.Done, a.Skipped + b.Skipped, a.Open + b.Open, a.ToCome + b.ToCome);
}

/// <summary>What was given of one feed.</summary>
/// <param name="FeedId">Which.</param>
/// <param name="Name">Its name.</param>
/// <param name="Times">How often: days with at least one giving, of each pot.</param>
/// <param name="Grams">g in all; a line of several equal pots counts each.</param>
/// <param name="Litres">L of water, where measured.</param>
/// <param name="Cost">In the garden's currency; null when a price is not known.</param>
/// <param name="Nutrients">g on the label's basis, where the feed is still kept.</param>
public sealed record FeedTotal(string FeedId, string Name, int Times, double Grams, double Litres, double? Cost, IReadOnlyDictionary<Nutrient, double> Nutrients)
{
    internal static IReadOnlyList<FeedTotal> Together(IEnumerable<FeedTotal> totals) => [.. totals.GroupBy(static t => t.FeedId, StringComparer.Ordinal).Select(static g => new FeedTotal(
        g.Key,
        g.First().Name,
        g.Sum(static t => t.Times),
        g.Sum(static t => t.Grams),
        g.Sum(static t => t.Litres),
        g.Any(static t => t.Cost is null) ? null : g.Sum(static t => t.Cost),
        g.SelectMany(static t => t.Nutrients).GroupBy(static n => n.Key).ToDictionary(static n => n.Key, static n => n.Sum(static v => v.Value))))
        .OrderByDescending(static t => t.Grams).ThenBy(static t => t.Name, StringComparer.Ordinal)];
}
