using Ashery.Climate;
using Ashery.Crops;
using Ashery.Feeds;
using Ashery.Nutrients;
using Ashery.Pots;
using Ashery.Problems;

namespace Ashery.Planning;

/// <summary>
/// Plans a year of feeds: turns of mineral and organic feed, monthly leaf feed, trace elements and inoculant by need, each only where the
/// season rules leave it. The same garden and day give the same plan.
/// </summary>
public static class YearPlanner
{
    /// <summary>Plans the year. Days outside 1900 to 2199 are no gardener's and come back as a problem.</summary>
    public static YearPlan Plan(YearRequest request)
    {
        if (request.From.Year is < 1900 or > 2199)
        {
            return Nothing(request.From);
        }

        var context = new PlanContext(request.Garden, request.From);
        return Plan(context, Days(context, [.. context.Turns.Select(static s => (s, (Func<Pot, Crop, string?>)(static (_, _) => null)))], []), new PlanRun(context) { StockFrom = request.StockFrom ?? DateOnly.MinValue });
    }

    /// <summary>A plan of days that were chosen some way or other.</summary>
    internal static YearPlan Plan(PlanContext context, IEnumerable<(FeedSlot Slot, Func<Pot, Crop, string?> PassOver)> days, PlanRun run)
    {
        foreach (var (slot, passOver) in days)
        {
            run.Give(slot, passOver);
        }

        var offers = NothingLeft.Find(context.Seasons, context.From, context.To, context.Garden.Feeds);
        var account = PotAccount.Of(context, run);
        return new YearPlan
        {
            From = context.From,
            To = context.To,
            Seasons = Stretches(context),
            Feeds = account.Feeds,
            Months = YearTotals.Months(context.Garden, account.Feeds, run.FeedsById, context.From, context.To),
            Shopping = ShoppingList.Of(context.Garden, run.Stock),
            Supply = account.Supply,
            LimeDebts = account.LimeDebts,
            Offers = offers,
            Replacements = run.Replacements,
            SubstituteFeeds = run.SubstituteFeeds,
            Rules = RuleNotes.Of(context, run),
            Problems = [.. context.Problems, .. PlanProblems.Of(context, run), .. NothingLeft.AsProblems(offers)],
        };
    }

    private static YearPlan Nothing(DateOnly from) => new()
    {
        From = from,
        To = from,
        Seasons = [],
        Feeds = [],
        Months = [],
        Shopping = [],
        Problems = [new("from", FormattableString.Invariant($"{from:yyyy-MM-dd} is not a day between 1900 and 2199."), "Plan from a day such as 2027-03-01.")],
    };

    /// <summary>The turns with what goes beside them, a few days off; days named as taken are kept free too.</summary>
    internal static IEnumerable<(FeedSlot Slot, Func<Pot, Crop, string?> PassOver)> Days(
        PlanContext context, List<(FeedSlot Slot, Func<Pot, Crop, string?> PassOver)> turns, IEnumerable<DateOnly> alsoTaken)
    {
        List<(FeedSlot Slot, Func<Pot, Crop, string?> PassOver)> days = [.. turns];
        var taken = turns.Select(static s => s.Slot.Day).Concat(alsoTaken).ToHashSet();
        SideFeeds.Add(context, taken, days);

        // OrderBy keeps the order of equals, so that a plan is the same each time.
        return days.OrderBy(static d => d.Slot.Day);
    }

    private static List<DatedSeason> Stretches(PlanContext context)
    {
        List<DatedSeason> all = [];
        foreach (var kind in Enum.GetValues<SeasonKind>())
        {
            var flag = SeasonCalendar.Flag(kind);
            DateOnly? start = null;
            for (var day = context.From; day <= context.To.AddDays(1); day = day.AddDays(1))
            {
                var on = day <= context.To && context.Seasons.Calendar.Of(day).HasFlag(flag);
                if (on)
                {
                    start ??= day;
                }
                else if (start is { } s)
                {
                    all.Add(new(kind, s, day.AddDays(-1)));
                    start = null;
                }
            }
        }

        return [.. all.OrderBy(static s => s.From).ThenBy(static s => s.Kind)];
    }
}
