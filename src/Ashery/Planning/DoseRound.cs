using Ashery.Feeds;
using Ashery.Gardens;
using Ashery.Pots;
using Ashery.Problems;

namespace Ashery.Planning;

/// <summary>What a round of the garden is asked for.</summary>
/// <param name="Garden">The whole garden.</param>
/// <param name="Today">The day.</param>
/// <param name="FeedId">One of the kept feeds; null for the kept mineral feed that suits each crop, or the organic one when there is none.</param>
public sealed record DoseRoundRequest(Garden Garden, DateOnly Today, string? FeedId = null)
{
    /// <summary>Only these pots; null for all.</summary>
    public IReadOnlySet<string>? PotIds { get; init; }

    /// <summary>How pots are today, where somebody looked, by pot id.</summary>
    public IReadOnlyDictionary<string, PotState> States { get; init; } = new Dictionary<string, PotState>();

    public DayWeather? Weather { get; init; }

    public DoseBasis Basis { get; init; }
}

/// <summary>A dose for every pot, and whether it may be given today.</summary>
/// <param name="On">The day.</param>
/// <param name="Pots">In walking order, weakest first; pots that get nothing last.</param>
/// <param name="HowToGive">Hour, moisture, placing.</param>
/// <param name="Problems">What a grower should know.</param>
public sealed record DoseRoundAnswer(DateOnly On, IReadOnlyList<PotDose> Pots, IReadOnlyList<string> HowToGive, IReadOnlyList<Problem> Problems);

/// <summary>One pot of the round.</summary>
/// <param name="Number">Place in the walking order.</param>
/// <param name="Pot">The pot.</param>
/// <param name="Feed">The feed.</param>
/// <param name="Dose">How much and how.</param>
/// <param name="Gate">Whether it may be given today.</param>
/// <param name="FirstAid">What to do when too much was given.</param>
public sealed record PotDose(int Number, Pot Pot, Feed Feed, Dose Dose, GateVerdict Gate, FirstAid FirstAid);

/// <summary>The dose of one feed for each pot of the garden today, by the same rules as the year.</summary>
public static class DoseRound
{
    public static Result<DoseRoundAnswer> For(DoseRoundRequest request)
    {
        var garden = request.Garden;
        if (request.FeedId is { } id && !garden.Feeds.Any(f => f.Id == id))
        {
            return Result.Fail<DoseRoundAnswer>("feed", $"No feed \"{id}\" is kept in this garden.", garden.Feeds.Count > 0 ? "Kept are " + string.Join(", ", garden.Feeds.Select(static f => f.Id)) + "." : "Mix one and keep it.");
        }

        if (request.PotIds?.FirstOrDefault(p => !garden.Pots.Any(q => q.Id == p)) is { } unknown)
        {
            return Result.Fail<DoseRoundAnswer>("pot", $"There is no pot \"{unknown}\" in this garden.", "Pots are " + string.Join(", ", garden.Pots.Take(20).Select(static p => p.Id)) + ".");
        }

        if (garden.Feeds.Count == 0)
        {
            return Result.Fail<DoseRoundAnswer>("feeds", "No feed is kept in this garden, so there is nothing to dose.", "Mix one with `ashery mix` and keep it.");
        }

        return Result.Of(Round(request, new PlanContext(garden, request.Today)));
    }

    private static DoseRoundAnswer Round(DoseRoundRequest request, PlanContext context)
    {
        var problems = new List<Problem>(context.Problems);
        List<(Pot Pot, Feed Feed, Dose Dose, GateVerdict Gate)> doses = [];
        foreach (var (pot, crop) in context.Pots)
        {
            if (request.PotIds?.Contains(pot.Id) == false)
            {
                continue;
            }

            var feed = request.FeedId is { } id
                ? context.Garden.Feeds.First(f => f.Id == id)
                : context.FeedFor(crop, FeedKind.Mineral) ?? context.FeedFor(crop, FeedKind.Organic) ?? context.Garden.Feeds[0];
            var verdict = context.Seasons.Of(feed.Kind, request.Today);
            var dose = Dosing.For(context.Ask(pot, crop, feed, request.Today, verdict) with { Basis = request.Basis });
            var normal = context.Seasons.Calendar.NormalOf(request.Today);
            var weather = request.Weather ?? (normal is null ? null : new DayWeather(MeanCelsius: (normal.MeanMax + normal.MeanMin) / 2));
            var gate = FeedGate.Check(pot, crop, feed.Kind, request.Today, request.States.GetValueOrDefault(pot.Id), weather, context.Rules);
            doses.Add((pot, feed, dose, WithSeason(gate, verdict, context)));
        }

        var step = context.Garden.Settings.ScaleStep;
        List<PotDose> pots = [];
        foreach (var feed in doses.Select(static d => d.Feed).DistinctBy(static f => f.Id))
        {
            var mine = doses.Where(d => d.Feed.Id == feed.Id).ToDictionary(static d => d.Pot.Id, StringComparer.Ordinal);
            var bottled = Dilution.OneBottle([.. mine.Values.Select(static d => d.Dose)], context.CountOf, step * context.Rules["weighable"]["traceSteps"], step);
            foreach (var stop in WalkingOrder.Of(bottled, context.Garden))
            {
                var (pot, _, _, gate) = mine[stop.PotId];
                pots.Add(new(0, pot, feed, stop.Dose, gate, FirstAid.For(pot, context.Rules)));
            }
        }

        var how = pots.Select(static p => p.Feed.Kind).Distinct().SelectMany(context.How).Distinct(StringComparer.Ordinal).ToList();
        return new(request.Today, [.. pots.OrderBy(static p => p.Dose.Grams > 0 ? 0 : 1).Select(static (p, i) => p with { Number = i + 1 })], how, problems);
    }

    /// <summary>A season that forbids the feed closes the gate as the day's state does.</summary>
    private static GateVerdict WithSeason(GateVerdict gate, SeasonVerdict verdict, PlanContext context)
    {
        if (verdict.Allowed)
        {
            return gate;
        }

        var holds = verdict.StoppedBy.Select(id => id == SeasonRules.NotGrowing
            ? new GateHold(id, "Plants do not grow in this season.", null)
            : new GateHold(id, context.Rules[id].Statement, null));
        return gate with { IsOpen = false, Holds = [.. gate.Holds, .. holds] };
    }
}
