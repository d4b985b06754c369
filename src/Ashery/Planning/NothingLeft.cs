using Ashery.Climate;
using Ashery.Feeds;
using Ashery.Problems;

namespace Ashery.Planning;

/// <summary>Finds the stretches in which plants grow but the rules leave neither mineral nor organic feed, and offers the nearest safe one.</summary>
internal static class NothingLeft
{
    public static IReadOnlyList<SafeOffer> Find(SeasonRules seasons, DateOnly from, DateOnly to, IReadOnlyList<Feed> kept)
    {
        List<SafeOffer> offers = [];
        DateOnly? start = null;
        HashSet<string> stoppedBy = new(StringComparer.Ordinal);
        var foliar = true;
        for (var day = from; day <= to.AddDays(1); day = day.AddDays(1))
        {
            if (day <= to && IsEmpty(seasons, day, kept, stoppedBy))
            {
                start ??= day;
                foliar &= seasons.Of(FeedKind.Foliar, day).Allowed;
            }
            else if (start is { } s)
            {
                offers.Add(Offer(seasons, s, day.AddDays(-1), stoppedBy, foliar, kept));
                start = null;
                stoppedBy = new(StringComparer.Ordinal);
                foliar = true;
            }
        }

        return offers;
    }

    /// <summary>The offers as warnings, for a plan that leaves plants unfed must say so.</summary>
    public static IEnumerable<Problem> AsProblems(IEnumerable<SafeOffer> offers) => offers.Select(static o => new Problem(
        FormattableString.Invariant($"{o.From:yyyy-MM-dd} to {o.To:yyyy-MM-dd}"),
        "The season rules leave neither mineral nor organic feed while plants grow.",
        o.Words,
        Severity.Warning));

    private static bool IsEmpty(SeasonRules seasons, DateOnly day, IReadOnlyList<Feed> kept, HashSet<string> stoppedBy)
    {
        var now = seasons.Calendar.Of(day);
        if (!now.HasFlag(DaySeasons.Growing) || now.HasFlag(DaySeasons.Resting))
        {
            return false;
        }

        var mineral = seasons.Of(FeedKind.Mineral, day);
        var organic = seasons.Of(FeedKind.Organic, day);
        if ((mineral.Allowed && kept.Any(static f => f.Kind == FeedKind.Mineral)) || (organic.Allowed && kept.Any(static f => f.Kind == FeedKind.Organic)))
        {
            return false;
        }

        stoppedBy.UnionWith(mineral.StoppedBy);
        stoppedBy.UnionWith(organic.StoppedBy);
        return true;
    }

    private static SafeOffer Offer(SeasonRules seasons, DateOnly from, DateOnly to, HashSet<string> stoppedBy, bool foliar, IReadOnlyList<Feed> kept)
    {
        var rule = seasons.Rules["nothing-left"];
        var why = string.Join(" ", stoppedBy.Where(static r => r != SeasonRules.NotGrowing).Order(StringComparer.Ordinal).Select(r => seasons.Rules[r].Statement));

        // Nitrate needs no warm, living medium to be taken up and gives off no ammonia: the feed with most of it is the safest.
        var safest = kept
            .Where(static f => f.Kind == FeedKind.Mineral && f.Dissolves && f.Nitrogen.Total > 0)
            .OrderByDescending(static f => f.Nitrogen.Nitrate / f.Nitrogen.Total)
            .ThenBy(static f => f.Name, StringComparer.Ordinal)
            .FirstOrDefault();
        if (rule.IsOn && safest is not null)
        {
            var accept = stoppedBy.Contains("mineral-hot-season")
                ? FormattableString.Invariant($" To plan it, set rule mineral-hot-season to reduce, factor={rule["factor"]}.")
                : "";
            return new(from, to, FeedKind.Mineral, safest.Id, rule["factor"], FormattableString.Invariant($"{why} {rule.Statement} Of what you keep that is {safest.Name}.{accept}").Trim());
        }

        var leaf = foliar ? kept.FirstOrDefault(static f => f.Kind == FeedKind.Foliar) : null;
        return leaf is not null
            ? new(from, to, FeedKind.Foliar, leaf.Id, 1, $"{why} The nearest safe feed is a weak spray of {leaf.Name} in the cool of the morning.".Trim())
            : new(from, to, null, null, 0, $"{why} Water only; a dissolving mineral feed, kept for such weeks, could be given at a quarter of the dose.".Trim());
    }
}
