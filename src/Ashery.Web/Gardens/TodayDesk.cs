using Ashery.Journal;
using Ashery.Planning;
using Ashery.Records;
using Ashery.Today;

namespace Ashery.Web.Gardens;

/// <summary>The work of a day in the garden of one request.</summary>
public sealed class TodayDesk(GardenDesk desk, IGardenStore store, IJournal journal, TodayCache cache, TimeProvider clock)
{
    private const int DaysBack = 60, DaysOfPlants = 800, MostEntries = 20_000, MostLow = 5;

    private static readonly string[] Answers = [EntryKind.FeedGiven, EntryKind.TaskSkipped, EntryKind.TaskMoved, EntryKind.WeatherNoted, EntryKind.PlantEvent];

    public TodayPlan Plan(DateOnly day) => cache.Plan(desk.Key, day, desk.Stamp, () => new(desk.Stamp, DuePlan.For(desk.Garden, day), Low(day), Since()));

    public TodayWork Work(DateOnly day)
    {
        var sequence = journal.Latest(1) is [var newest, ..] ? HashCode.Combine(newest.Sequence, newest.At) : 0L;
        return cache.Work(desk.Key, day, desk.Stamp, sequence, () => Make(day, Plan(day).Plan, sequence));
    }

    /// <summary>The work of a day with a year of what comes, for a calendar.</summary>
    public DueDay Year(DateOnly day) => Make(day, DuePlan.For(desk.Garden, day, daysAhead: 366), 0).Day;

    private TodayWork Make(DateOnly day, DuePlan plan, long sequence)
    {
        List<StoredEntry> entries =
        [
            .. journal.Query(new() { Kinds = Answers, From = day.AddDays(-DaysBack), AtMost = MostEntries }),
            .. journal.Query(new() { Kinds = [EntryKind.PlantEvent], From = day.AddDays(-DaysOfPlants), To = day.AddDays(-DaysBack - 1), AtMost = MostEntries }),
        ];
        var due = DueWork.For(new(desk.Garden, plan, [.. entries.Select(static e => e.Entry)]) { Since = Plan(day).Since });
        return new(desk.Stamp, sequence, due, entries.ToDictionary(static e => e.Entry.Id));
    }

    private IReadOnlyList<ShoppingLine> Low(DateOnly day) => desk.Garden is { Pots.Count: > 0, Feeds.Count: > 0 }
        ? [.. desk.Year(day).Shopping.Where(static s => s.RunsOut is not null).OrderBy(static s => s.RunsOut).Take(MostLow)]
        : [];

    private Dictionary<string, DateOnly> Since() =>
        store.PotsSince().ToDictionary(static p => p.Key, p => DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(p.Value, clock.LocalTimeZone).DateTime), StringComparer.Ordinal);
}
