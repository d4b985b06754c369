using Ashery.Records.Model;
using Ashery.Records.Rows;
using Microsoft.EntityFrameworkCore;

namespace Ashery.Records.Stores;

/// <summary>The journal of one garden in the database. Safe to use from several threads and several processes at once.</summary>
public sealed class DbJournal(DatabaseEngine engine, TimeProvider clock, string garden, string by) : IJournal
{
    private const int Tries = 3;

    public JournalOutcome Write(IReadOnlyList<EntryChange> changes) => Written(work => work.Write(changes));

    public JournalOutcome Undo(Guid id, int revision) => Written(work => work.Undo(id, revision));

    public StoredEntry? Find(Guid id) => engine.Run(() =>
    {
        using var db = engine.Connect();
        return Entries(db).FirstOrDefault(e => e.Id == id) is { } row ? EntryMapping.Stored(row) : null;
    });

    public IReadOnlyList<StoredEntry> Query(JournalQuery query) => engine.Run<IReadOnlyList<StoredEntry>>(() =>
    {
        using var db = engine.Connect();
        return [.. JournalSearch.Newest(engine, db, garden, query).AsEnumerable().Select(EntryMapping.Stored)];
    });

    public long Count(JournalQuery query) => engine.Run(() =>
    {
        using var db = engine.Connect();
        return JournalSearch.Matching(engine, db, garden, query).LongCount();
    });

    public IReadOnlyList<StoredEntry> Revisions(Guid id) => engine.Run<IReadOnlyList<StoredEntry>>(() =>
    {
        using var db = engine.Connect();
        using var transaction = engine.BeginRead(db);
        return Entries(db).FirstOrDefault(e => e.Id == id) is not { } row
            ? []
            : [EntryMapping.Stored(row), .. Earlier(db).Where(e => e.Id == id).OrderByDescending(e => e.Revision).AsEnumerable().Select(EntryMapping.Stored)];
    });

    public IReadOnlyList<StoredEntry> Latest(int atMost) => engine.Run<IReadOnlyList<StoredEntry>>(() =>
    {
        using var db = engine.Connect();
        using var transaction = engine.BeginRead(db);
        var stand = Entries(db).OrderByDescending(e => e.Sequence).Take(atMost).AsEnumerable().Select(EntryMapping.Stored);
        var earlier = Earlier(db).OrderByDescending(e => e.Sequence).Take(atMost).AsEnumerable().Select(EntryMapping.Stored);
        return [.. stand.Concat(earlier).OrderByDescending(e => e.Sequence).Take(atMost)];
    });

    private JournalOutcome Written(Func<JournalWork, JournalOutcome> what) => engine.Run(() =>
    {
        for (var tries = 1; ; tries++)
        {
            try
            {
                using var db = engine.Connect();
                using var transaction = engine.BeginWrite(db, garden);
                var outcome = what(new JournalWork(db, garden, by, clock.GetUtcNow()));
                if (outcome is JournalOutcome.Written)
                {
                    transaction.Commit();
                }

                return outcome;
            }
            catch (Exception e) when (engine.IsTaken(e) && tries < Tries)
            {
                // Somebody took the sequence this write wanted: look again at what stands.
            }
        }
    });

    private IQueryable<EntryRow> Entries(GardenDb db) => db.Entries.AsNoTracking().Where(e => e.Garden == garden);

    private IQueryable<EarlierRow> Earlier(GardenDb db) => db.Earlier.AsNoTracking().Where(e => e.Garden == garden);
}
