using Ashery.Journal;
using Ashery.Records.Tests.Support;
using CsCheck;

namespace Ashery.Records.Tests.Journals;

/// <summary>The store and the plain list are told the same things and asked the same things.</summary>
public sealed class JournalOracleTests
{
    private static readonly Gen<JournalQuery> Question =
        from pots in RandomEntries.One(RandomEntries.Pots).HashSet[0, 2]
        from kinds in RandomEntries.One(EntryKind.All.ToArray()).HashSet[0, 3]
        from days in Gen.Select(Gen.Nullable(RandomEntries.Day), Gen.Nullable(RandomEntries.Day))
        from tasks in Gen.Frequency((3, Gen.Const(((DateOnly, DateOnly)?)null)), (1, Gen.Select(RandomEntries.Day, Gen.Int[0, 20], static (d, n) => ((DateOnly, DateOnly)?)(d, d.AddDays(n)))))
        from words in Gen.Frequency((4, Gen.Const("")), (3, RandomEntries.One("ro", "Rose", "flush rain", "spring", "ফুল", "creme", "STRASSE", "straße", "a'b", "***", "w", new string('w', 90), "not near", "sharp i", "measured leach", "trial")))
        from most in Gen.Int[1, 60]
        select new JournalQuery { Pots = [.. pots], Kinds = [.. kinds], From = days.Item1, To = days.Item2, TasksOf = tasks, Words = words, AtMost = most };

    [Theory]
    [InlineData(Scratch.Sqlite)]
    [InlineData(Scratch.Postgres)]
    public void Every_entry_comes_back_as_it_went_in(string database)
    {
        using var temp = Scratch.Of(database);
        var journal = temp.Journal();
        RandomEntries.Any.Sample(
            entry =>
            {
                Assert.Empty(EntryRules.Check(entry));
                var written = Assert.IsType<JournalOutcome.Written>(journal.Write([EntryChange.New(entry)]));
                Assert.Equal(Written.Out(entry), Written.Out(written.Entries[0].Entry));
                Assert.Equal(Written.Out(entry), Written.Out(journal.Find(entry.Id)!.Entry));
            },
            iter: 100,
            threads: 1);
    }

    [Theory]
    [InlineData(Scratch.Sqlite)]
    [InlineData(Scratch.Postgres)]
    public void The_store_answers_as_the_plain_list_does(string database)
    {
        using var temp = Scratch.Of(database);
        var store = temp.Journal();
        var plain = new PlainJournal(TimeProvider.System);
        var known = new List<Entry>();
        Gen.Select(RandomEntries.Any, Gen.Int[0, 9], Gen.Int[0, 1000], Gen.Int[-1, 1], Question).Sample(
            (entry, deed, pick, slip, question) =>
            {
                var of = known.Count > 0 ? known[pick % known.Count] : entry;
                var revision = Math.Max(0, (plain.Find(of.Id)?.Revision ?? 0) + (pick % 3 == 0 ? slip : 0));
                var changed = entry with { Id = of.Id };
                IReadOnlyList<EntryChange> changes = deed switch
                {
                    < 5 => [EntryChange.New(entry)],
                    5 => [EntryChange.New(of)],
                    6 => [new(of.Id, revision, changed)],
                    7 => [new(of.Id, revision, null)],
                    8 => [EntryChange.New(entry), new(of.Id, revision, changed), new(of.Id, revision + 1, null)],
                    _ => [],
                };
                if (deed is 9)
                {
                    Same(plain.Undo(of.Id, revision), store.Undo(of.Id, revision));
                }
                else
                {
                    Same(plain.Write(changes), store.Write(changes));
                }

                if (changes.Count > 0 && changes[0].BasedOn == 0 && plain.Find(entry.Id) is not null)
                {
                    known.Add(entry);
                }

                Same(plain.Query(question), store.Query(question));
                Assert.Equal(plain.Count(question), store.Count(question));
                if (plain.Query(question) is [.., var last])
                {
                    var next = question with { After = last };
                    Same(plain.Query(next), store.Query(next));
                }

                Same(plain.Revisions(of.Id), store.Revisions(of.Id));
                Same(plain.Latest(7), store.Latest(7));
            },
            iter: 200,
            threads: 1);
    }

    private static void Same(JournalOutcome expected, JournalOutcome actual)
    {
        Assert.Equal(expected.GetType(), actual.GetType());
        switch (expected, actual)
        {
            case (JournalOutcome.Written a, JournalOutcome.Written b):
                Same(a.Entries, b.Entries);
                break;
            case (JournalOutcome.Overtaken a, JournalOutcome.Overtaken b):
                Same([a.Theirs], [b.Theirs]);
                break;
            case (JournalOutcome.NotThere a, JournalOutcome.NotThere b):
                Assert.Equal(a.Id, b.Id);
                break;
        }
    }

    // All but the instant, which each takes from its clock.
    private static void Same(IReadOnlyList<StoredEntry> expected, IReadOnlyList<StoredEntry> actual) =>
        Assert.Equal(expected.Select(Line), actual.Select(Line));

    private static string Line(StoredEntry e) => FormattableString.Invariant($"{e.Sequence} r{e.Revision} {(e.IsRemoved ? "removed " : "")}{EntryKind.Of(e.Entry.Facts)} ") + Written.Out(e.Entry) + Written.Out(e.Entry.Facts);
}
