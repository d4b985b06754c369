using Ashery.Crops;
using Ashery.Feeds;

namespace Ashery.Pots;

/// <summary>May this pot be fed today? Hard rules hold the feed back; soft ones warn.</summary>
/// <param name="IsOpen">True when nothing holds the feed back.</param>
/// <param name="Holds">Rules that say "not today".</param>
/// <param name="Warnings">Soft rules that would rather not.</param>
public sealed record GateVerdict(bool IsOpen, IReadOnlyList<GateHold> Holds, IReadOnlyList<GateHold> Warnings);

/// <summary>A rule that says "not today".</summary>
/// <param name="RuleId">Which.</param>
/// <param name="Words">Why, and what to do first.</param>
/// <param name="Until">First day on which it may be tried again; null when it depends on the plant.</param>
public sealed record GateHold(string RuleId, string Words, DateOnly? Until);

/// <summary>The gate before every feed: a function of today's state, never of the wish to feed.</summary>
public static class FeedGate
{
    // Roots of orchids and succulents heal slowly (rule repotted, daysOrchids).
    private static readonly HashSet<string> SlowRoots = ["moth-orchid", "cattleya-dendrobium", "cymbidium", "desert-rose"];

    public static GateVerdict Check(Pot pot, Crop crop, FeedKind kind, DateOnly today, PotState? state, DayWeather? weather, RuleBook rules)
    {
        var check = new Checks(kind, rules);
        Plant(check, pot, crop, today, state ?? new());
        Weather(check, crop, weather ?? new());
        return new(check.Holds.Count == 0, check.Holds, check.Warnings);
    }

    /// <summary>Days a freshly repotted plant of this crop is left alone.</summary>
    public static int DaysAfterRepotting(Crop crop, RuleBook rules) =>
        !rules["repotted"].IsOn ? 0 : (int)rules["repotted"][SlowRoots.Contains(crop.Id) ? "daysOrchids" : "days"];

    private static void Plant(Checks check, Pot pot, Crop crop, DateOnly today, PotState state)
    {
        check.When(state.AvailableWater < check.Rules["dry-medium"]["availableWater"], "dry-medium", today.AddDays((int)check.Rules["dry-medium"]["waitDays"]));
        check.When(state.Wilted, "wilted", null);
        check.When(state.Waterlogged, "waterlogged", today.AddDays((int)check.Rules["waterlogged"]["waitDays"]));
        check.When(state.SickRoots, "sick-roots", today.AddDays((int)check.Rules["sick-roots"]["waitDays"]));
        var wait = DaysAfterRepotting(crop, check.Rules);
        var repotted = state.Repotted ? today : pot.LastRepotted;
        check.When(repotted is { } r && r <= today && today.DayNumber - r.DayNumber < wait, "repotted", repotted?.AddDays(wait));
        var days = (int)check.Rules["pruned"]["days"];
        check.When(state.Pruned is { } p && p <= today && today.DayNumber - p.DayNumber < days, "pruned", state.Pruned?.AddDays(days));
        check.When(PlantAge.StageOn(pot, today, check.Rules) == PlantStage.Dormant, "age-dormant", null);
        var ammonium = check.Rules["ammonium-cold"];
        check.When(state.MediumCelsius < ammonium["celsius"] || state.MediumPh < ammonium["pH"], "ammonium-cold", null);
    }

    private static void Weather(Checks check, Crop crop, DayWeather weather)
    {
        check.When(crop.BaseCelsius is { } b && weather.MeanCelsius < b + check.Rules["cold"]["margin"], "cold", null);
        check.When(weather.MaxCelsius > check.Rules["heat-feed"]["celsius"], "heat-feed", null);
        
        // What counts for a spray is the hour; with only the day's highest known, the worst is taken.
        check.When((weather.NowCelsius ?? weather.MaxCelsius) > check.Rules["heat-spray"]["celsius"], "heat-spray", null);
        check.When(weather.RainMm >= check.Rules["heavy-rain"]["millimetres"], "heavy-rain", null);
    }

    private sealed class Checks(FeedKind kind, RuleBook rules)
    {
        public RuleBook Rules => rules;

        public List<GateHold> Holds { get; } = [];

        public List<GateHold> Warnings { get; } = [];

        public void When(bool condition, string ruleId, DateOnly? until)
        {
            var rule = rules[ruleId];
            if (condition && rule.IsOn && DoseCaps.Binds(rule, kind))
            {
                // A rule that may reduce instead of stop does not close the gate when the grower chose so.
                (rule.Strength == RuleStrength.Hard && rule.Choice != "reduce" ? Holds : Warnings).Add(new(ruleId, rule.Statement, until));
            }
        }
    }
}
