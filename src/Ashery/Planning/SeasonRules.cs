using Ashery.Climate;
using Ashery.Crops;
using Ashery.Feeds;
using Ashery.Pots;

namespace Ashery.Planning;

/// <summary>May a kind of feed be given on a day, and with which factors?</summary>
/// <param name="Allowed">Whether the season rules leave it.</param>
/// <param name="Factors">What makes it smaller.</param>
/// <param name="StoppedBy">The rules that forbid it.</param>
public sealed record SeasonVerdict(bool Allowed, IReadOnlyList<DoseFactor> Factors, IReadOnlyList<string> StoppedBy);

/// <summary>The season rules over a calendar: where seasons overlap, every rule of each holds.</summary>
public sealed class SeasonRules(SeasonCalendar calendar, RuleBook rules)
{
    /// <summary>Named where no season covers a day in which plants would be fed.</summary>
    public const string NotGrowing = "not-growing";

    private readonly Dictionary<(DaySeasons, FeedKind, bool, bool), SeasonVerdict> known = [];
    private readonly Dictionary<DateOnly, bool> near = [];

    public SeasonCalendar Calendar => calendar;

    public RuleBook Rules => rules;

    public SeasonVerdict Of(FeedKind kind, DateOnly day)
    {
        var seasons = calendar.Of(day);
        var beforeRest = Near(day, (int)rules["before-rest"]["days"], DaySeasons.Resting);
        var tooLate = kind == FeedKind.Organic && rules["organic-ahead"].IsOn && !calendar.Of(day.AddDays((int)rules["organic-ahead"]["days"])).HasFlag(DaySeasons.Growing);
        var key = (seasons, kind, beforeRest, tooLate);
        if (!known.TryGetValue(key, out var permission))
        {
            known.Add(key, permission = Judge(seasons, kind, beforeRest, tooLate));
        }

        return permission;
    }

    private SeasonVerdict Judge(DaySeasons seasons, FeedKind kind, bool beforeRest, bool tooLate)
    {
        List<DoseFactor> factors = [];
        List<string> stops = [];
        var resting = seasons.HasFlag(DaySeasons.Resting);
        Season("resting-season", resting, kind, factors, stops);
        Season("mineral-hot-season", seasons.HasFlag(DaySeasons.Hot), kind, factors, stops);
        Season("foliar-hot-season", seasons.HasFlag(DaySeasons.Hot), kind, factors, stops);
        Season("organic-rainy-season", seasons.HasFlag(DaySeasons.Rainy), kind, factors, stops);

        // Without growth there is nothing to feed; a grower who reduces in rest feeds through it.
        var fedInRest = resting && (!rules["resting-season"].IsOn || rules["resting-season"].Choice == "reduce");
        if (!seasons.HasFlag(DaySeasons.Growing) && !fedInRest)
        {
            stops.Add(NotGrowing);
        }

        if (kind == FeedKind.TraceElements)
        {
            Stop("heat-feed", seasons.HasFlag(DaySeasons.Hot) && rules["heat-feed"].Choice != "reduce", stops);
            Stop("trace-rainy-season", seasons.HasFlag(DaySeasons.Rainy) && rules["trace-rainy-season"].Choice == "move", stops);
        }

        // An inoculant needs living roots in a medium that is neither frozen nor fallow.
        if (kind == FeedKind.Inoculant && resting)
        {
            Stop("resting-season", true, stops);
        }

        Stop("organic-ahead", tooLate && !fedInRest, stops);
        var late = rules["before-rest"];
        if (beforeRest && !resting && late.IsOn && late.Choice == "reduce" && DoseCaps.Binds(late, kind))
        {
            factors.Add(new(late.Id, late["factor"], late.Statement));
        }

        return new(stops.Count == 0, factors, [.. stops.Distinct(StringComparer.Ordinal)]);
    }

    private void Season(string ruleId, bool inSeason, FeedKind kind, List<DoseFactor> factors, List<string> stops)
    {
        var rule = rules[ruleId];
        if (!inSeason || !rule.IsOn || !DoseCaps.Binds(rule, kind))
        {
            return;
        }

        if (rule.Choice == "reduce")
        {
            factors.Add(new(ruleId, rule["factor"], FormattableString.Invariant($"{rule.Statement} You chose to reduce: {rule["factor"]:0.##} of the dose. {rule.Differs}").TrimEnd()));
        }
        else
        {
            stops.Add(ruleId);
        }
    }

    private void Stop(string ruleId, bool holds, List<string> stops)
    {
        if (holds && rules[ruleId].IsOn)
        {
            stops.Add(ruleId);
        }
    }

    /// <summary>Whether a season begins within so many days; looked up once a day.</summary>
    private bool Near(DateOnly day, int days, DaySeasons season)
    {
        if (!near.TryGetValue(day, out var found))
        {
            for (var i = 1; i <= days && !found; i++)
            {
                found = calendar.Of(day.AddDays(i)).HasFlag(season);
            }

            near.Add(day, found);
        }

        return found;
    }
}
