using Ashery.Journal;
using CsCheck;

namespace Ashery.Records.Tests.Journals;

/// <summary>Entries made up at random, of every kind, with texts that try to break something.</summary>
internal static class RandomEntries
{
    private static readonly string[] Texts =
    [
        "", "flush with rain water", "'; DROP TABLE entry; --", "leaf AND OR NOT \"NEAR\"", "Élodie's crème", "বাগান ফুল", "🪴 new pot", "tab\tand\r\nline", "100 % - sure*",
        "straße ſharp İstanbul", "a'b & c | !d:*", "\\'\u0001", "rose", "roses for the wall", new string('w', 100) + " " + new string('w', 64),
    ];

    public static readonly string[] Pots = ["rose-1", "rose-2", "lemon", "Pot Ä", "p%", "fig' --"];

    public static readonly string[] Feeds = ["spring-feed", "bloom", "winter"];

    private static readonly Gen<string> Text = Gen.Frequency((2, One(Texts)), (1, Gen.String[Gen.Char[' ', 'ӿ'], 0, 40]));

    private static readonly Gen<string> Name = Text.Select(static t => t.Length > EntryRules.LongestName ? t[..EntryRules.LongestName] : t);

    /// <summary>Days close together, so that questions about them find something.</summary>
    public static readonly Gen<DateOnly> Day = Gen.Int[0, 40].Select(static n => new DateOnly(2027, 3, 1).AddDays(n));

    private static readonly Gen<double> Grams = Gen.Double[0.001, 1e6];

    private static readonly Gen<TaskId> Task = Gen.Select(Day, One(Feeds), static (d, f) => new TaskId(d, f));

    private static readonly Gen<TaskId?> MaybeTask = Gen.Frequency((1, Gen.Const((TaskId?)null)), (3, Task.Select(static t => (TaskId?)t)));

    private static readonly Gen<DateOnly?> MaybeDay = Gen.Nullable(Day);

    private static readonly Gen<Guid?> MaybeId = Gen.Nullable(Gen.Guid);

    private static readonly Gen<PotAmount> Amount = Gen.Select(One(Pots), Grams, Gen.Nullable(Gen.Double[0, 1e5]), static (p, g, l) => new PotAmount(p, g, l));

    private static readonly Gen<Weighing> OneWeighing = Gen.Select(Name, Name, Grams, MaybeId, static (b, m, g, i) => new Weighing(b, m, g, i));

    private static readonly Gen<EntryFacts> Facts = Gen.OneOf(
        Gen.Select(One(Feeds), MaybeTask, Amount.List[0, 4], MaybeId, static (f, t, a, b) => (EntryFacts)new FeedGiven(f, a, t, b)),
        Gen.Select(Task, Name, static (t, w) => (EntryFacts)new TaskSkipped(t, w)),
        Gen.Select(Task, Day, static (t, d) => (EntryFacts)new TaskMoved(t, d)),
        Gen.Select(Gen.Enum<MeasuredKind>(), Gen.Double[2, 5], Gen.Nullable(Gen.Double[-5, 60]), static (k, v, c) => (EntryFacts)new Measured(k, v, c)),
        Gen.Select(Gen.Enum<PlantEventKind>(), Gen.Nullable(Gen.Double[0, 100]), Gen.Null(Name), Gen.Null(Name), static (k, l, m, p) => (EntryFacts)new PlantEvent(k, l, m, p)),
        Gen.Select(Name, Gen.Int[0, 3], static (w, s) => (EntryFacts)new Sighting(w, s)),
        Gen.Enum<WeatherSign>().Select(static w => (EntryFacts)new WeatherNoted(w)),
        Gen.Const((EntryFacts)new Photograph(new string('a', 64), 4000, 3000)),
        Gen.Select(Name, Grams, Gen.Nullable(Gen.Double[0, 1000]), Gen.Null(Name), MaybeDay, static (b, g, p, l, d) => (EntryFacts)new BagBought(b, g, p, l, d)),
        Gen.Select(Name, Grams, MaybeId, static (b, g, i) => (EntryFacts)new StockCounted(b, g, i)),
        Gen.Select(Name, One(Feeds), OneWeighing.List[1, 4], MaybeDay, static (l, f, w, d) => (EntryFacts)new BatchMade(l, f, w, d)),
        Gen.Select(Grams, MaybeId, Gen.Null(Name), Name, static (g, b, i, w) => (EntryFacts)new Discarded(g, w, b, i)),
        Gen.Select(Name, Text, static (t, j) => (EntryFacts)new KeptDocument("trial", t, j)));

    public static readonly Gen<Entry> Any =
        from facts in Facts
        from pots in facts is Measured ? One(Pots).List[1, 1] : One(Pots).HashSet[0, 4].Select(static s => s.ToList())
        from day in Day
        from time in Gen.Nullable(Gen.Int[0, 86399].Select(static s => new TimeOnly(s * TimeSpan.TicksPerSecond)))
        from note in Text
        from id in Gen.Guid
        select new Entry { Id = id, Day = day, Time = time, Pots = pots, Note = note, Facts = facts };

    public static Gen<T> One<T>(params T[] of) => Gen.Int[0, of.Length - 1].Select(i => of[i]);

    /// <summary>A plain entry for tests that are about something else.</summary>
    public static Entry Note(string note, int day = 1, params string[] pots) =>
        new() { Id = Guid.NewGuid(), Day = new DateOnly(2027, 4, day), Pots = pots, Note = note, Facts = new PlantEvent(PlantEventKind.Other) };
}
