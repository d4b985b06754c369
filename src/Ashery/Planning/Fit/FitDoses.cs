using Ashery.Crops;
using Ashery.Feeds;
using Ashery.Nutrients;
using Ashery.Pots;
using Ashery.RootZone;

namespace Ashery.Planning.Fit;

/// <summary>
/// The dose of a pot on a day at a level, by the same dosing as the plan: gate, season factors, caps, rounding. Worked out once each.
/// </summary>
internal sealed class FitDoses(PlanContext context, FeedEvents feeds, IReadOnlyList<GardenPot> pots)
{
    private readonly Lock gate = new();
    private readonly Dictionary<(FeedKind Kind, int Day, int Interval, double Level), FitDose>[] known = [.. pots.Select(static _ => new Dictionary<(FeedKind, int, int, double), FitDose>())];

    /// <summary>One pot is asked by one thread at a time.</summary>
    public FitDose Of(int pot, FitVisit visit) => Of(pot, visit.Kind, visit.Day, visit.Interval, visit.Levels[pot]);

    public FitDose Of(int pot, FeedKind kind, int day, int interval, double level)
    {
        if (level <= 0)
        {
            return FitDose.None;
        }

        var key = (kind, day, interval, level);
        if (!known[pot].TryGetValue(key, out var dose))
        {
            lock (gate)
            {
                dose = Make(pots[pot], kind, day, interval, level);
            }

            known[pot].Add(key, dose);
        }

        return dose;
    }

    /// <summary>
    /// The request for a level: the season's share that a full dose of the rule of thumb has, times the level. A dose alone may be as large as in the shortest
    /// season of the rules; that the year stays within the published range is kept by <see cref="FitSearch"/>.
    /// </summary>
    public DoseRequest Ask(Pot pot, Crop crop, Feed feed, DateOnly day, SeasonVerdict verdict, int interval, double level)
    {
        var ask = context.Ask(pot, crop, feed, day, verdict);
        var rate = ask.Rate!;
        var shortest = context.Rules["shortest-season"];
        var fewest = Math.Max(1, shortest.IsOn ? shortest["months"] * Dosing.DaysAMonth / context.Interval : 1);
        var usual = Math.Max(fewest, Math.Max(1, context.FullFeeds(crop)));

        // FeedsThatShare of the dosing divides by shortest months over this interval: a shorter interval must not make the dose smaller twice.
        var share = Math.Max(1, shortest.IsOn ? shortest["months"] * Dosing.DaysAMonth / interval : 1);
        return ask with
        {
            FeedsInSeason = 1,
            IntervalDays = interval,
            Rate = rate with
            {
                GramsPerLitre = Math.Min(level * rate.GramsPerLitre * share / usual, rate.Published.Range.High),
                Words = FormattableString.Invariant($"{rate.Words} Fitted to the pot: {level:0.##} of the rule of thumb's full dose."),
            },
        };
    }

    private FitDose Make(GardenPot pot, FeedKind kind, int at, int interval, double level)
    {
        var day = context.From.AddDays(at);
        var verdict = context.Seasons.Of(kind, day);
        if (!verdict.Allowed || context.Holds(pot.Pot, pot.Crop, kind, day) is not null || context.FeedFor(pot.Crop, kind) is not { } feed)
        {
            return FitDose.None;
        }

        var dose = Dosing.For(Ask(pot.Pot, pot.Crop, feed, day, verdict, interval, level));
        if (dose.Grams <= 0)
        {
            return FitDose.None;
        }

        var stage = PlantAge.FactorOn(pot.Pot, day, context.Rules).Value;
        var nitrogen = dose.Grams * feed.Label[Nutrient.N];
        return new([.. FitEvents.Of(feeds.Of(dose, feed, day), context.From)], nitrogen, stage > 0 ? nitrogen / stage : nitrogen);
    }
}

/// <summary>A dose in the search.</summary>
/// <param name="Events">What it does to the pot.</param>
/// <param name="Nitrogen">g N.</param>
/// <param name="Share">g N a grown plant would have had: what counts against the season's most.</param>
internal sealed record FitDose(PlannedEvent[] Events, double Nitrogen, double Share)
{
    public static FitDose None { get; } = new([], 0, 0);
}
