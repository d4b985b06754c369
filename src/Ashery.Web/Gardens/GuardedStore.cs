using Ashery.Gardens;
using Ashery.Records;

namespace Ashery.Web.Gardens;

/// <summary>A reader tried to write. Pages never get here: what a reader posts is turned back before.</summary>
public sealed class ReaderMayNotWriteException() : Exception("A reader may look at the garden, not change it.");

/// <summary>The garden's store, closed to a reader's writes whatever page or program they come from.</summary>
internal sealed class GuardedStore(IGardenStore inner, CurrentGarden whose) : IGardenStore
{
    public bool HasGarden => inner.HasGarden;

    public StoredGarden? Load() => inner.Load();

    public StoredGarden? LoadState(long version) => inner.LoadState(version);

    public IReadOnlyList<Change> History(int atMost) => inner.History(atMost);

    public IReadOnlyDictionary<string, DateTimeOffset> PotsSince() => inner.PotsSince();

    public SaveOutcome Save(Garden garden, long basedOn, string what) => whose.MayWrite() ? inner.Save(garden, basedOn, what) : throw new ReaderMayNotWriteException();
}

/// <summary>The garden's journal, closed to a reader's writes.</summary>
internal sealed class GuardedJournal(IJournal inner, CurrentGarden whose) : IJournal
{
    public JournalOutcome Write(IReadOnlyList<EntryChange> changes) => whose.MayWrite() ? inner.Write(changes) : throw new ReaderMayNotWriteException();

    public JournalOutcome Undo(Guid id, int revision) => whose.MayWrite() ? inner.Undo(id, revision) : throw new ReaderMayNotWriteException();

    public StoredEntry? Find(Guid id) => inner.Find(id);

    public IReadOnlyList<StoredEntry> Query(JournalQuery query) => inner.Query(query);

    public long Count(JournalQuery query) => inner.Count(query);

    public IReadOnlyList<StoredEntry> Revisions(Guid id) => inner.Revisions(id);

    public IReadOnlyList<StoredEntry> Latest(int atMost) => inner.Latest(atMost);
}

/// <summary>What a role allows.</summary>
internal static class Roles
{
    public static bool MayWrite(this CurrentGarden whose) => whose.Role is GardenRole.Owner or GardenRole.Helper;
}
