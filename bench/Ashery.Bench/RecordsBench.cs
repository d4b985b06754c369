using System.Diagnostics;
using System.Globalization;
using Ashery.Exchange.Gardens;
using Ashery.Gardens;
using Ashery.Journal;
using Ashery.Records;
using Ashery.Records.Moving;
using Ashery.Records.Stores;
using Microsoft.EntityFrameworkCore;

namespace Ashery.Bench;

/// <summary>
/// Fills a database with made-up gardens and asks it what the pages ask. Words: <c>fill DATABASE GARDENS POTS ENTRIES</c>, then
/// <c>ask DATABASE</c>; DATABASE is a file or postgres://USER@HOST:PORT/NAME.
/// </summary>
internal static class RecordsBench
{
    private const int Rounds = 200, YearsBack = 4;

    private static readonly string[] Words =
    [
        "leaf", "yellow", "edge", "new", "bud", "open", "flower", "dry", "wet", "rain", "hot", "wind", "turned", "staked", "aphid", "spider", "mite", "clean",
        "half", "dose", "moved", "shade", "sun", "roots", "white", "crust", "drain", "slow", "late", "early", "strong", "weak", "tall", "bushy", "pinched",
    ];

    private static readonly DateOnly Today = new(2027, 5, 15);

    public static void Fill(string database, int gardens, int pots, int entries)
    {
        var records = Open(database);
        var clock = Stopwatch.StartNew();
        var demo = DemoGarden.Create(Today);
        for (var g = 0; g < gardens; g++)
        {
            var key = gardens == 1 ? IRecords.Home : string.Create(CultureInfo.InvariantCulture, $"garden-{g:000}");
            var random = new Random(g + 1);
            var garden = demo with { Name = FormattableString.Invariant($"Terrace {g}"), Pots = [.. Enumerable.Range(0, pots).Select(p => demo.Pots[p % demo.Pots.Count] with { Id = FormattableString.Invariant($"pot-{p}"), Name = FormattableString.Invariant($"Pot {p}") })] };
            if (!records.Garden(key).HasGarden)
            {
                records.Garden(key).Save(garden, 0, "made up");
            }

            using var db = records.Engine.Connect();
            using var transaction = records.Engine.BeginWrite(db, key);
            if (g > 0 && Databases.IsServer(database))
            {
                // The first garden's entries once more under ids of their own, by the server itself: two million rows by hand take an hour.
                db.Database.SetCommandTimeout(TimeSpan.FromMinutes(10));
                db.Database.ExecuteSql($"""
                    WITH made AS (
                        INSERT INTO entry ("Garden", "Id", "Revision", "Sequence", "Kind", "Day", "TaskDay", "TaskFeed", "Body", "Words", "By", "AtTicks", "IsRemoved")
                        SELECT {key}, n.id, e."Revision", e."Sequence", e."Kind", e."Day", e."TaskDay", e."TaskFeed", replace(e."Body", e."Id"::text, n.id::text), e."Words", e."By", e."AtTicks", e."IsRemoved"
                        FROM entry e, LATERAL (SELECT gen_random_uuid() AS id WHERE e."Sequence" > 0) n WHERE e."Garden" = 'garden-000'
                        RETURNING "Number", "Sequence")
                    INSERT INTO entry_pot ("Garden", "Pot", "Day", "Sequence", "Entry")
                    SELECT {key}, p."Pot", p."Day", p."Sequence", made."Number" FROM made JOIN entry_pot p ON p."Garden" = 'garden-000' AND p."Sequence" = made."Sequence"
                    """);
                transaction.Commit();
                Told(g);
                continue;
            }

            RecordsLoading.Revisions(db, key, Enumerable.Range(1, entries).Select(n => new StoredEntry(
                Made(random, garden, pots), 1, false, "", new DateTimeOffset(2027, 5, 15, 8, 0, 0, TimeSpan.Zero).AddSeconds(n), n)));
            transaction.Commit();
            Told(g);
        }

        records.Engine.Settle();
        Console.WriteLine(FormattableString.Invariant($"settled after {clock.Elapsed.TotalSeconds:0} s"));

        void Told(int g)
        {
            if (g % 10 == 9 || g == gardens - 1)
            {
                Console.WriteLine(FormattableString.Invariant($"{(g + 1) * (long)entries} entries in {clock.Elapsed.TotalSeconds:0} s"));
            }
        }
    }

    public static void Ask(string database)
    {
        var records = Open(database);
        var gardens = records.Gardens().Select(static g => g.Key).ToArray();
        var counts = gardens.Take(1).Select(g => records.Journal(g).Count(new JournalQuery { AtMost = 1 })).ToArray();
        Console.WriteLine(FormattableString.Invariant($"{gardens.Length} gardens, {counts[0]} entries in the first"));
        var random = new Random(5);
        IJournal Journal() => records.Journal(gardens[random.Next(gardens.Length)]);
        Time("Today: answers to tasks of 14 days round", () => Journal().Query(new JournalQuery { TasksOf = (Today.AddDays(-14), Today.AddDays(14)), AtMost = 2000 }).Count);
        Time("Today: by day and kinds, 60 days", () => Journal().Query(new JournalQuery { Kinds = [EntryKind.FeedGiven, EntryKind.TaskSkipped, EntryKind.TaskMoved, EntryKind.WeatherNoted, EntryKind.PlantEvent], From = Today.AddDays(-60), AtMost = 20_000 }).Count);
        Time("a pot's timeline, 50 newest", () => Journal().Query(new JournalQuery { Pots = [FormattableString.Invariant($"pot-{random.Next(200)}")], AtMost = 50 }).Count);
        Time("a pot's readings, all", () => Journal().Query(new JournalQuery { Pots = [FormattableString.Invariant($"pot-{random.Next(200)}")], Kinds = [EntryKind.Measured], AtMost = 1000 }).Count);
        Time("one word, 50 newest", () => Journal().Query(new JournalQuery { Words = Words[random.Next(Words.Length)], AtMost = 50 }).Count);
        Time("two words, 50 newest", () => Journal().Query(new JournalQuery { Words = "spider mi", AtMost = 50 }).Count);
        Time("a word that is nowhere", () => Journal().Query(new JournalQuery { Words = "kumquat", AtMost = 50 }).Count);
        Time("the newest change", () => Journal().Latest(1).Count);
        Time("one entry written", () => Journal().Write([EntryChange.New(new Entry { Id = Guid.NewGuid(), Day = Today, Pots = ["pot-1"], Note = "bench", Facts = new PlantEvent(PlantEventKind.Other) })]) is JournalOutcome.Written ? 1 : 0);
    }

    private static void Time(string what, Func<int> ask)
    {
        for (var i = 0; i < 10; i++)
        {
            ask();
        }

        var times = new double[Rounds];
        var rows = 0L;
        for (var i = 0; i < Rounds; i++)
        {
            var clock = Stopwatch.StartNew();
            rows += ask();
            times[i] = clock.Elapsed.TotalMilliseconds;
        }

        Array.Sort(times);
        Console.WriteLine(FormattableString.Invariant($"{what,-44} median {times[Rounds / 2],7:0.0} ms   95 % {times[Rounds * 95 / 100],7:0.0} ms   {rows / Rounds,6} rows"));
    }

    private static Entry Made(Random random, Garden garden, int pots)
    {
        var day = Today.AddDays(-random.Next(365 * YearsBack));
        var pot = FormattableString.Invariant($"pot-{random.Next(pots)}");
        var note = string.Join(' ', Enumerable.Range(0, random.Next(2, 9)).Select(_ => Words[random.Next(Words.Length)]));
        var feed = garden.Feeds[random.Next(garden.Feeds.Count)].Id;
        var several = Enumerable.Range(0, 1 + random.Next(5)).Select(_ => FormattableString.Invariant($"pot-{random.Next(pots)}")).Append(pot).Distinct().ToList();
        var (about, facts) = random.Next(10) switch
        {
            < 5 => (several, (EntryFacts)new FeedGiven(feed, [.. several.Select(p => new PotAmount(p, 1 + random.Next(90) / 10.0, 0.5))], new TaskId(day, feed))),
            5 => (several, new TaskSkipped(new TaskId(day, feed), "rain")),
            6 => ([pot], new PlantEvent((PlantEventKind)random.Next(9))),
            7 => ([pot], new Sighting("spider mites", random.Next(4))),
            _ => ([pot], new Measured((MeasuredKind)random.Next(6), 2 + random.Next(30) / 10.0)),
        };
        return new Entry { Id = Guid.NewGuid(), Day = day, Pots = about, Note = note, Facts = facts };
    }

    private static DbRecords Open(string database) => Databases.Open(database) is { Ok: true } opened ? opened.Value : throw new InvalidOperationException("The database cannot be opened.");
}
