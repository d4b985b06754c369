using Ashery.Journal;
using CsCheck;

namespace Ashery.Exchange.Tests.Journal;

/// <summary>Entries made up at random, every kind and member filled, with words that try to break something.</summary>
internal static class RandomEntries
{
    private static readonly string[] Hostile = ["'; DROP TABLE entry; --", "<script>alert(1)</script>", "\"q\"", "a\r\nb\t", "=1+1", "", "{0}%s", "éß🪴", "বাগান", "\\", "\u0001", "\u202Eabc"];

    private static readonly Gen<string> Text = Gen.Int[0, Hostile.Length - 1].Select(i => Hostile[i]);

    private static readonly Gen<double> Grams = Gen.Double[0.001, 900_000];

    private static readonly Gen<DateOnly> Day = Gen.Int[0, 100_000].Select(static d => new DateOnly(1900, 1, 1).AddDays(d));

    private static readonly Gen<TaskId> Task = Gen.Select(Day, Text, static (d, t) => new TaskId(d, "f" + t));

    private static readonly Gen<EntryFacts> Facts = Gen.OneOf(
        Gen.Select(Text, Task, Gen.Bool, Grams, Gen.Guid, static (f, t, planned, g, b) => (EntryFacts)new FeedGiven(f, [new("p1", g), new("p2", g / 2, 0.4)], planned ? t : null, planned ? b : null)),
        Gen.Select(Task, Text, static (t, w) => (EntryFacts)new TaskSkipped(t, w)),
        Gen.Select(Task, Day, static (t, d) => (EntryFacts)new TaskMoved(t, d)),
        Gen.Select(Gen.Enum<MeasuredKind>(), Gen.Double[0, 1], static (k, at) => (EntryFacts)new Measured(k, MeasuredRange.Of(k).From + (at * (MeasuredRange.Of(k).To - MeasuredRange.Of(k).From)), at > 0.5 ? 18.5 : null)),
        Gen.Select(Gen.Enum<PlantEventKind>(), Text, Gen.Double[0.1, 90], static (k, t, l) => (EntryFacts)new PlantEvent(k, l, l > 40 ? t : null, t)),
        Gen.Select(Text, Gen.Int[0, 3], static (t, s) => (EntryFacts)new Sighting(t, s)),
        Gen.Enum<WeatherSign>().Select(static s => (EntryFacts)new WeatherNoted(s)),
        Gen.Int[1, 5000].Select(static w => (EntryFacts)new Photograph(new string('a', 64), w, w + 1)),
        Gen.Select(Text, Grams, Text, Day, static (b, g, l, d) => (EntryFacts)new BagBought(b, g, g > 1000 ? 12.5 : null, l, g > 500 ? d : null)),
        Gen.Select(Text, Grams, static (b, g) => (EntryFacts)new StockCounted(b, g)),
        Gen.Select(Text, Text, Grams, Gen.Guid, Day, static (l, f, g, b, d) => (EntryFacts)new BatchMade(l, f, [new("bag", f, g, b), new("other", f, 1)], g > 9 ? d : null)),
        Gen.Select(Grams, Gen.Guid, Text, static (g, b, w) => (EntryFacts)new Discarded(g, w, g > 9 ? b : null, g > 9 ? null : w, g > 9 ? null : b)),
        Gen.Select(Text, Text, static (t, j) => (EntryFacts)new KeptDocument("clinic", t, j)));

    public static readonly Gen<Entry> Any = Gen.Select(Gen.Guid, Day, Gen.Int[0, 1440], Text, Facts, static (id, day, minute, note, facts) => new Entry
    {
        Id = id,
        Day = day,
        Time = minute == 1440 ? null : TimeOnly.MinValue.AddMinutes(minute),
        Pots = facts is Measured ? ["p1"] : minute % 3 == 0 ? [] : ["p1", note + "2"],
        Note = note,
        Facts = facts,
    });
}
