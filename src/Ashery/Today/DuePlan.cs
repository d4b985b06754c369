using Ashery.Crops;
using Ashery.Feeds;
using Ashery.Gardens;
using Ashery.Planning;

namespace Ashery.Today;

/// <summary>
/// What of the year's plan a day needs: the planned feeds around it, counted from the growing year's beginning so that they keep their days
/// when the day turns. Depends on the garden and the day alone: work it out once for both, and keep it.
/// </summary>
public sealed record DuePlan
{
    /// <summary>Planned feeds so many days back are still known, for what was moved.</summary>
    public const int DaysBack = 42;

    /// <summary>And so many days ahead.</summary>
    public const int DaysAhead = 42;

    /// <summary>Most days a feed can be moved.</summary>
    public const int MostMoved = 28;

    // Feeds of this many days back may still be overdue, so a bag that ran out is replaced in them too.
    private const int StockBack = 14;

    public required DateOnly Today { get; init; }

    /// <summary>Beginning of the growing year that the day is in.</summary>
    public required DateOnly YearFrom { get; init; }

    /// <summary>In order of date.</summary>
    public required IReadOnlyList<PlannedFeed> Feeds { get; init; }

    /// <summary>Days from one feed of a kind to the next; mineral and organic take turns and share one.</summary>
    public required IReadOnlyDictionary<FeedKind, int> Apart { get; init; }

    /// <summary>Where no rule leaves a feed today, and what would still be safe.</summary>
    public required IReadOnlyList<SafeOffer> Offers { get; init; }

    /// <summary>The rules with the grower's changes.</summary>
    public required RuleBook Rules { get; init; }

    public required SeasonRules Seasons { get; init; }

    /// <summary>Plans around a day. <paramref name="daysAhead"/> may reach to a year, for a calendar.</summary>
    public static DuePlan For(Garden garden, DateOnly today, int daysAhead = DaysAhead)
    {
        var context = new PlanContext(garden, today);
        var (calendar, latitude) = (context.Seasons.Calendar, garden.Place.Latitude);
        var (from, to) = (today.AddDays(-DaysBack), today.AddDays(daysAhead));
        var start = GrowingYear.StartOf(calendar, latitude, today);
        List<PlannedFeed> feeds = [];
        List<SafeOffer> offers = [];
        for (var year = GrowingYear.StartOf(calendar, latitude, from); year <= to;)
        {
            var next = GrowingYear.Next(calendar, latitude, year);
            var plan = YearPlanner.Plan(new YearRequest(garden, year) { StockFrom = today.AddDays(-StockBack) });
            feeds.AddRange(plan.Feeds.Where(f => f.Date >= from && f.Date <= to && f.Date < next));
            offers.AddRange(plan.Offers.Where(o => o.From <= today && today <= o.To && today < next && today >= year));
            year = next;
        }

        return new()
        {
            Today = today,
            YearFrom = start,
            Feeds = feeds,
            Apart = DaysApart(context),
            Offers = offers,
            Rules = context.Rules,
            Seasons = context.Seasons,
        };
    }

    private static Dictionary<FeedKind, int> DaysApart(PlanContext context)
    {
        var rules = context.Rules;
        var times = (int)rules["trace-by-need"]["timesASeason"];
        return new()
        {
            [FeedKind.Mineral] = context.Interval,
            [FeedKind.Organic] = context.Interval,
            [FeedKind.Foliar] = Math.Max(1, (int)rules["foliar-magnesium"]["days"]),
            [FeedKind.TraceElements] = Math.Max(context.Interval, times > 0 ? context.GrowingDays / times : 1),
            [FeedKind.Inoculant] = Math.Max(1, (int)rules["inoculant"]["daysBetween"]),
        };
    }
}
