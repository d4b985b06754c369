using Ashery.Feeds;
using Ashery.Journal;

namespace Ashery.Today;

/// <summary>The journal by what Today asks of it. The order in which entries come makes no difference, nor does one that comes twice.</summary>
internal sealed class Answers
{
    private readonly Dictionary<(TaskId Task, string Pot), Entry> given = [], skipped = [], moved = [];
    private readonly Dictionary<(string Pot, bool Turns, FeedKind Kind), List<DateOnly>> fed = [];
    private readonly Dictionary<(string Pot, PlantEventKind What), List<DateOnly>> events = [];
    private readonly List<Entry> weather = [];

    public Answers(DueRequest request, Dictionary<TaskId, List<string>> potsOf)
    {
        var kinds = request.Garden.Feeds.ToDictionary(static f => f.Id, static f => f.Kind, StringComparer.Ordinal);
        foreach (var feed in request.Plan.Feeds)
        {
            kinds.TryAdd(feed.FeedId, feed.Kind);
        }

        // Oldest first, so that of two answers of a kind the later one stands.
        foreach (var entry in request.Entries.DistinctBy(static e => e.Id).OrderBy(static e => e.Day).ThenBy(static e => e.Time ?? TimeOnly.MinValue).ThenBy(static e => e.Id))
        {
            var task = EntryKind.Task(entry.Facts);
            IReadOnlyList<string> pots = entry.Pots.Count > 0 ? entry.Pots : task is { } t ? potsOf.GetValueOrDefault(t) ?? [] : [];
            switch (entry.Facts)
            {
                case FeedGiven feed:
                    Put(given, feed.Task, pots, entry);

                    // A feed that is no longer kept is taken for one with salts: the careful side.
                    var kind = kinds.GetValueOrDefault(feed.FeedId, FeedKind.Mineral);
                    foreach (var pot in pots)
                    {
                        Add(fed, Key(pot, kind), entry.Day);
                    }

                    break;
                case TaskSkipped skip:
                    Put(skipped, skip.Task, pots, entry);
                    break;
                case TaskMoved move:
                    Put(moved, move.Task, pots, entry);
                    break;
                case PlantEvent happened:
                    foreach (var pot in pots)
                    {
                        Add(events, (pot, happened.What), entry.Day);
                    }

                    break;
                case WeatherNoted when entry.Day == request.Plan.Today:
                    weather.Add(entry);
                    break;
            }
        }
    }

    /// <summary>Weather noted today.</summary>
    public IReadOnlyList<Entry> Weather => weather;

    public Entry? Given(TaskId task, string pot) => given.GetValueOrDefault((task, pot));

    public Entry? Skipped(TaskId task, string pot) => skipped.GetValueOrDefault((task, pot));

    /// <summary>The day it was put on; null when it was not.</summary>
    public DateOnly? MovedTo(TaskId task, string pot) => moved.TryGetValue((task, pot), out var entry) ? ((TaskMoved)entry.Facts).To : null;

    /// <summary>The last day the pot got a feed that counts with this kind.</summary>
    public DateOnly? LastFed(string pot, FeedKind kind) => fed.TryGetValue(Key(pot, kind), out var days) ? days.Max() : null;

    /// <summary>The last day on or before one on which this happened to the pot.</summary>
    public DateOnly? Last(string pot, PlantEventKind what, DateOnly upTo)
    {
        DateOnly? last = null;
        foreach (var day in events.GetValueOrDefault((pot, what)) ?? [])
        {
            last = day <= upTo && (last is null || day > last) ? day : last;
        }

        return last;
    }

    /// <summary>True when the plant had died by a day, and none was planted since.</summary>
    public bool IsDead(string pot, DateOnly on) => Last(pot, PlantEventKind.Died, on) is { } died && !(Last(pot, PlantEventKind.Planted, on) > died);

    /// <summary>True when this sign was noted today for the pot or for all.</summary>
    public bool Saw(WeatherSign sign, string pot) => weather.Any(e => ((WeatherNoted)e.Facts).What == sign && (e.Pots.Count == 0 || e.Pots.Contains(pot, StringComparer.Ordinal)));

    /// <summary>Mineral and organic feeds take turns, so that either counts for both.</summary>
    public static bool IsTurn(FeedKind kind) => kind is FeedKind.Mineral or FeedKind.Organic;

    private static (string Pot, bool Turns, FeedKind Kind) Key(string pot, FeedKind kind) => (pot, IsTurn(kind), IsTurn(kind) ? FeedKind.Mineral : kind);

    private static void Put(Dictionary<(TaskId Task, string Pot), Entry> answers, TaskId? task, IReadOnlyList<string> pots, Entry entry)
    {
        if (task is { } known)
        {
            foreach (var pot in pots)
            {
                answers[(known, pot)] = entry;
            }
        }
    }

    private static void Add<TKey>(Dictionary<TKey, List<DateOnly>> days, TKey key, DateOnly day)
        where TKey : notnull
    {
        if (!days.TryGetValue(key, out var list))
        {
            days.Add(key, list = []);
        }

        list.Add(day);
    }
}
