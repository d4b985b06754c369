using Ashery.Gardens;
using Ashery.Journal;
using Ashery.Stock;

namespace Ashery.Today;

/// <summary>How far bags and batches reach under the year of the day's work: the same planned days that are ticked off.</summary>
public static class StockOutlook
{
    private const int Days = 365;

    /// <summary>The forecast of a year from today.</summary>
    public static StockForecast For(Garden garden, StockLedger ledger, IReadOnlyList<Entry> entries, DateOnly today)
    {
        var plan = DuePlan.For(StockForecast.Full(garden), today, Days - 1);
        return StockForecast.Of(garden, ledger, entries, plan.Feeds, today, today.AddDays(Days - 1));
    }
}
