using Ashery.Journal;

namespace Ashery.Records;

/// <summary>
/// Keeps the entries of one garden, every revision of each, and who wrote it when. A write is whole or not at all and on the disk when it
/// returns.
/// </summary>
public interface IJournal
{
    /// <summary>Writes changes in one transaction: all of them, or none and the outcome of the one that stood in the way.</summary>
    JournalOutcome Write(IReadOnlyList<EntryChange> changes);

    /// <summary>The entry as it stands, removed ones too; null when the id was never written.</summary>
    StoredEntry? Find(Guid id);

    /// <summary>Entries that stand, newest day first (within a day: last written first).</summary>
    IReadOnlyList<StoredEntry> Query(JournalQuery query);

    /// <summary>How many entries a query without its limit and place would give.</summary>
    long Count(JournalQuery query);

    /// <summary>Every revision of an entry, newest first.</summary>
    IReadOnlyList<StoredEntry> Revisions(Guid id);

    /// <summary>The latest changes of the journal, newest first.</summary>
    IReadOnlyList<StoredEntry> Latest(int atMost);

    /// <summary>
    /// Takes back revision <paramref name="revision"/> of an entry when it is still the newest: what stood before stands again, as a revision of its
    /// own.
    /// </summary>
    JournalOutcome Undo(Guid id, int revision);
}

/// <summary>A wish to write.</summary>
/// <param name="Id">Which entry.</param>
/// <param name="BasedOn">The revision the change was made on; 0 for a new entry.</param>
/// <param name="Entry">What is to stand; null to remove it.</param>
public sealed record EntryChange(Guid Id, int BasedOn, Entry? Entry)
{
    /// <summary>A new entry.</summary>
    public static EntryChange New(Entry entry) => new(entry.Id, 0, entry);
}

/// <summary>A revision of an entry.</summary>
/// <param name="Entry">What it says; of a removal: what was removed.</param>
/// <param name="Revision">Counts from 1.</param>
/// <param name="IsRemoved">True when this revision removed it.</param>
/// <param name="By">Who wrote it: a name; empty where there are no accounts.</param>
/// <param name="At">When it was written.</param>
/// <param name="Sequence">Grows with every revision written to this garden's journal.</param>
public sealed record StoredEntry(Entry Entry, int Revision, bool IsRemoved, string By, DateTimeOffset At, long Sequence);

/// <summary>Which entries.</summary>
public sealed record JournalQuery
{
    /// <summary>About any of these pots; none: any.</summary>
    public IReadOnlyList<string> Pots { get; init; } = [];

    /// <summary>Words of <see cref="EntryKind"/>; none: any.</summary>
    public IReadOnlyList<string> Kinds { get; init; } = [];

    public DateOnly? From { get; init; }

    public DateOnly? To { get; init; }

    /// <summary>Answers to planned feeds of these days; null: any entry.</summary>
    public (DateOnly From, DateOnly To)? TasksOf { get; init; }

    /// <summary>Every word must stand in the entry's note, kind or names; a word matches as a beginning.</summary>
    public string Words { get; init; } = "";

    public int AtMost { get; init; } = 200;

    /// <summary>Go on after this entry of an earlier answer (same other fields).</summary>
    public StoredEntry? After { get; init; }
}

/// <summary>How a write ended.</summary>
public abstract record JournalOutcome
{
    private JournalOutcome()
    {
    }

    /// <summary>On the disk, or was already there word for word (the same tap sent again).</summary>
    public sealed record Written(IReadOnlyList<StoredEntry> Entries) : JournalOutcome;

    /// <summary>Someone else changed it first; nothing was written. Shows what stands now.</summary>
    public sealed record Overtaken(StoredEntry Theirs) : JournalOutcome;

    /// <summary>Nothing to change or to take back under this id.</summary>
    public sealed record NotThere(Guid Id) : JournalOutcome;
}
