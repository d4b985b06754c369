using Ashery.Crops;

namespace Ashery.Planning;

/// <summary>The rules that shaped a plan, each once, with what published advice says otherwise.</summary>
internal static class RuleNotes
{
    private static readonly string[] Always = ["alternate-kinds", "rate-by-volume", "feeding-follows-temperature"];

    public static IReadOnlyList<AppliedRule> Of(PlanContext context, PlanRun run)
    {
        var ids = new SortedSet<string>(run.Applied, StringComparer.Ordinal);
        ids.UnionWith(Always);
        foreach (var feed in run.Feeds)
        {
            ids.UnionWith(feed.Kind switch
            {
                Feeds.FeedKind.Foliar => ["foliar-magnesium"],
                Feeds.FeedKind.TraceElements => ["trace-by-need", "trace-share"],
                Feeds.FeedKind.Inoculant => ["inoculant", "inoculant-soilless"],
                _ => Array.Empty<string>(),
            });
        }

        for (var day = context.From; day <= context.To; day = day.AddDays(1))
        {
            foreach (var kind in context.Kept)
            {
                ids.UnionWith(context.Seasons.Of(kind, day).StoppedBy);
            }
        }

        ids.Remove(SeasonRules.NotGrowing);
        return [.. ids.Select(id => context.Rules[id]).Where(static r => r.IsOn).Select(static r => new AppliedRule(
            r.Id, r.Statement, r.Strength == RuleStrength.Hard ? "hard" : "soft", r.SourceId, r.Differs))];
    }
}
