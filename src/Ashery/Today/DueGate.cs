using Ashery.Crops;
using Ashery.Feeds;
using Ashery.Journal;
using Ashery.Planning;
using Ashery.Pots;

namespace Ashery.Today;

/// <summary>May what is due be given today? The gate of every feed, with what the journal knows of pot and weather.</summary>
internal sealed class DueGate(DueRequest request, Answers answers)
{
    private readonly Dictionary<string, Pot> pots = request.Garden.Pots.ToDictionary(static p => p.Id, StringComparer.Ordinal);

    private DateOnly Today => request.Plan.Today;

    public DuePot Check(DuePot due)
    {
        if (!due.IsOpenToday || CropCatalogue.Default.Find(pots[due.PotId].CropId) is not { } crop)
        {
            return due;
        }

        var (plan, rules) = (request.Plan, request.Plan.Rules);
        var pot = pots[due.PotId];
        var repotted = answers.Last(pot.Id, PlantEventKind.Repotted, Today);
        pot = repotted > (pot.LastRepotted ?? DateOnly.MinValue) ? pot with { LastRepotted = repotted } : pot;
        var state = new PotState
        {
            AvailableWater = answers.Saw(WeatherSign.DryMedium, pot.Id) ? 0 : null,
            Pruned = answers.Last(pot.Id, PlantEventKind.Pruned, Today),
        };
        var verdict = FeedGate.Check(pot, crop, due.Kind, Today, state, Weather(pot.Id, rules), rules);
        var season = plan.Seasons.Of(due.Kind, Today);
        List<GateHold> holds =
        [
            .. verdict.Holds,
            .. season.StoppedBy.Select(id => new GateHold(id, id == SeasonRules.NotGrowing ? "Plants do not grow in this season." : rules[id].Statement, null)),
        ];
        var apart = plan.Apart[due.Kind];
        if (answers.LastFed(pot.Id, due.Kind) is { } fed && fed <= Today && Today.DayNumber - fed.DayNumber < (apart + 1) / 2)
        {
            holds.Add(new("alternate-kinds", FormattableString.Invariant($"Fed on {fed:d MMM}; {apart} days belong between two feeds."), fed.AddDays(apart)));
        }

        return due with { Holds = holds, Warnings = verdict.Warnings };
    }

    /// <summary>What the noted weather does to the open pots, a sentence a sign.</summary>
    public IReadOnlyList<string> Words(IReadOnlyList<DuePot> open) =>
        [.. answers.Weather.Select(static e => ((WeatherNoted)e.Facts).What).Distinct().Order().Select(sign => Sentence(sign, open))];

    private string Sentence(WeatherSign sign, IReadOnlyList<DuePot> open)
    {
        string[] ids = sign switch
        {
            WeatherSign.Rain => ["heavy-rain"],
            WeatherSign.Heat => ["heat-feed", "heat-spray"],
            _ => ["dry-medium"],
        };
        var advice = string.Join(' ', ids.Select(id => request.Plan.Rules[id]).Where(static r => r.IsOn).Select(static r => r.Statement));
        var (wait, rather) = (open.Count(p => p.Holds.Any(h => ids.Contains(h.RuleId))), open.Count(p => p.Warnings.Any(h => ids.Contains(h.RuleId))));
        var effect = (wait, rather) switch
        {
            (0, 0) => open.Count == 0 ? "Nothing is due that it would change." : "It holds back none of what is due.",
            (0, _) => FormattableString.Invariant($"{Pots(rather)} had better wait."),
            _ => FormattableString.Invariant($"{Pots(wait)} {(wait == 1 ? "waits" : "wait")}."),
        };
        return $"{advice} {effect}".Trim();
    }

    private static string Pots(int count) => count == 1 ? "One pot" : FormattableString.Invariant($"{count} pots");

    private DayWeather Weather(string pot, RuleBook rules)
    {
        var normal = request.Plan.Seasons.Calendar.NormalOf(Today);
        var isHot = answers.Saw(WeatherSign.Heat, pot);
        return new(
            MaxCelsius: isHot ? Math.Max(rules["heat-feed"]["celsius"], rules["heat-spray"]["celsius"]) + 1 : null,
            MeanCelsius: normal is null ? null : (normal.MeanMax + normal.MeanMin) / 2,
            RainMm: answers.Saw(WeatherSign.Rain, pot) ? rules["heavy-rain"]["millimetres"] : null);
    }
}
