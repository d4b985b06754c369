using Ashery.Journal;
using Ashery.Records.Tests.Support;

namespace Ashery.Records.Tests.Journals;

/// <summary>What the journal promises, one by one.</summary>
public sealed class JournalTests
{
    [Theory]
    [InlineData(Scratch.Sqlite)]
    [InlineData(Scratch.Postgres)]
    public void The_same_tap_sent_five_times_counts_once(string database)
    {
        using var temp = Scratch.Of(database);
        var journal = temp.Journal();
        var tap = EntryChange.New(RandomEntries.Note("fed", 1, "rose-1"));
        for (var i = 0; i < 5; i++)
        {
            var written = Assert.IsType<JournalOutcome.Written>(journal.Write([tap]));
            Assert.Equal(1, Assert.Single(written.Entries).Revision);
        }

        Assert.Equal(1, journal.Count(new JournalQuery()));
        Assert.Single(journal.Revisions(tap.Id));
    }

    [Theory]
    [InlineData(Scratch.Sqlite)]
    [InlineData(Scratch.Postgres)]
    public void A_tap_that_arrives_again_does_not_undo_what_was_made_of_it(string database)
    {
        using var temp = Scratch.Of(database);
        var journal = temp.Journal();
        var tap = EntryChange.New(RandomEntries.Note("fed", 1, "rose-1"));
        journal.Write([tap]);
        journal.Write([new(tap.Id, 1, tap.Entry! with { Note = "fed, half the dose" })]);
        Assert.IsType<JournalOutcome.Written>(journal.Write([tap]));
        Assert.Equal("fed, half the dose", journal.Find(tap.Id)!.Entry.Note);

        journal.Write([new(tap.Id, 2, null)]);
        Assert.IsType<JournalOutcome.Written>(journal.Write([tap]));
        Assert.True(journal.Find(tap.Id)!.IsRemoved);
        Assert.Equal(3, journal.Revisions(tap.Id).Count);
    }

    [Theory]
    [InlineData(Scratch.Sqlite)]
    [InlineData(Scratch.Postgres)]
    public void The_second_of_two_people_sees_what_the_first_made_of_it_and_changes_nothing(string database)
    {
        using var temp = Scratch.Of(database);
        var entry = RandomEntries.Note("first words");
        temp.Journal("Ana").Write([EntryChange.New(entry)]);
        temp.Journal("Ben").Write([new(entry.Id, 1, entry with { Note = "Ben's words" })]);
        var other = RandomEntries.Note("goes with it");
        var outcome = temp.Journal("Ana").Write([EntryChange.New(other), new(entry.Id, 1, entry with { Note = "Ana's words" })]);
        var theirs = Assert.IsType<JournalOutcome.Overtaken>(outcome).Theirs;
        Assert.Equal(("Ben's words", "Ben", 2), (theirs.Entry.Note, theirs.By, theirs.Revision));
        Assert.Equal("Ben's words", temp.Journal().Find(entry.Id)!.Entry.Note);
        Assert.Null(temp.Journal().Find(other.Id));
    }

    [Theory]
    [InlineData(Scratch.Sqlite)]
    [InlineData(Scratch.Postgres)]
    public void Undo_brings_back_what_stood_before_and_can_be_undone(string database)
    {
        using var temp = Scratch.Of(database);
        var journal = temp.Journal();
        var entry = RandomEntries.Note("one");
        journal.Write([EntryChange.New(entry)]);
        journal.Write([new(entry.Id, 1, entry with { Note = "two" })]);
        Assert.IsType<JournalOutcome.Written>(journal.Undo(entry.Id, 2));
        Assert.Equal("one", journal.Find(entry.Id)!.Entry.Note);
        Assert.IsType<JournalOutcome.Overtaken>(journal.Undo(entry.Id, 2));
        journal.Undo(entry.Id, 3);
        Assert.Equal("two", journal.Find(entry.Id)!.Entry.Note);

        var fresh = RandomEntries.Note("a slip");
        journal.Write([EntryChange.New(fresh)]);
        journal.Undo(fresh.Id, 1);
        Assert.True(journal.Find(fresh.Id)!.IsRemoved);
        Assert.Equal(1, journal.Count(new JournalQuery()));
        journal.Undo(fresh.Id, 2);
        Assert.False(journal.Find(fresh.Id)!.IsRemoved);
        Assert.IsType<JournalOutcome.NotThere>(journal.Undo(Guid.NewGuid(), 1));
    }

    [Theory]
    [InlineData(Scratch.Sqlite)]
    [InlineData(Scratch.Postgres)]
    public void Gardens_of_one_database_do_not_see_each_other(string database)
    {
        using var temp = Scratch.Of(database);
        var entry = RandomEntries.Note("secret", 1, "rose-1");
        temp.Records.Journal("one").Write([EntryChange.New(entry)]);
        temp.Records.Garden("one").Save(RandomGardens.Small("first"), 0, "begin");
        temp.Records.Garden("two").Save(RandomGardens.Small("second"), 0, "begin");
        var other = temp.Records.Journal("two");
        Assert.Null(other.Find(entry.Id));
        Assert.Empty(other.Query(new JournalQuery()));
        Assert.Empty(other.Query(new JournalQuery { Words = "secret" }));
        Assert.Empty(other.Query(new JournalQuery { Pots = ["rose-1"] }));
        Assert.Empty(other.Revisions(entry.Id));
        Assert.Empty(other.Latest(10));
        Assert.IsType<JournalOutcome.NotThere>(other.Write([new(entry.Id, 1, null)]));
        Assert.Equal([new("one", "first"), new("two", "second")], temp.Records.Gardens());
        Assert.Equal("second", temp.Records.Garden("two").Load()!.Garden.Name);
        Assert.False(temp.Records.Garden(IRecords.Home).HasGarden);
    }

    [Theory]
    [InlineData(Scratch.Sqlite)]
    [InlineData(Scratch.Postgres)]
    public void Writers_at_once_get_numbers_of_their_own(string database)
    {
        using var temp = Scratch.Of(database);
        Parallel.For(0, 8, i =>
        {
            for (var n = 0; n < 5; n++)
            {
                Assert.IsType<JournalOutcome.Written>(temp.Journal().Write([EntryChange.New(RandomEntries.Note(FormattableString.Invariant($"{i} {n}")))]));
            }
        });
        Assert.Equal(Enumerable.Range(1, 40).Select(static n => (long)n), temp.Journal().Latest(100).Select(static e => e.Sequence).Order());
    }

    [Theory]
    [InlineData(Scratch.Sqlite)]
    [InlineData(Scratch.Postgres)]
    public void A_removed_entry_is_not_found_but_its_revisions_are(string database)
    {
        using var temp = Scratch.Of(database);
        var journal = temp.Journal("Ana");
        var entry = RandomEntries.Note("gone soon", 1, "rose-1");
        journal.Write([EntryChange.New(entry)]);
        journal.Write([new(entry.Id, 1, null)]);
        Assert.Empty(journal.Query(new JournalQuery { Words = "gone" }));
        Assert.Empty(journal.Query(new JournalQuery { Pots = ["rose-1"] }));
        Assert.Equal([true, false], journal.Revisions(entry.Id).Select(static r => r.IsRemoved));
        Assert.Equal("gone soon", journal.Revisions(entry.Id)[0].Entry.Note);
        Assert.Equal([2L, 1L], journal.Latest(5).Select(static e => e.Sequence));
    }
}
