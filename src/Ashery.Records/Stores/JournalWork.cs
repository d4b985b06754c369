using Ashery.Exchange.Journal;
using Ashery.Journal;
using Ashery.Records.Model;
using Ashery.Records.Rows;
using Microsoft.EntityFrameworkCore;

namespace Ashery.Records.Stores;

/// <summary>Changes of a journal inside one transaction.</summary>
internal sealed class JournalWork(GardenDb db, string garden, string by, DateTimeOffset at)
{
    // Bound by what a database takes as one list of parameters.
    private const int AtOnce = 500;

    private readonly Dictionary<Guid, EntryRow> rows = [];
    private long sequence;

    /// <summary>All of the changes, or none and what stood in the way. The caller ends the transaction by the outcome.</summary>
    public JournalOutcome Write(IReadOnlyList<EntryChange> changes)
    {
        if (changes.FirstOrDefault(static c => c.Entry is { } e && e.Id != c.Id) is not null)
        {
            throw new ArgumentException("A change and its entry name different ids.", nameof(changes));
        }

        Begin([.. changes.Select(static c => c.Id).Distinct()]);
        foreach (var change in changes)
        {
            if (Apply(change) is { } obstacle)
            {
                return obstacle;
            }
        }

        db.SaveChanges();
        return new JournalOutcome.Written([.. changes.Select(c => EntryMapping.Stored(rows[c.Id]))]);
    }

    /// <summary>Lets what stood before a revision stand again.</summary>
    public JournalOutcome Undo(Guid id, int revision)
    {
        Begin([id]);
        if (!rows.TryGetValue(id, out var row))
        {
            return new JournalOutcome.NotThere(id);
        }

        if (row.Revision != revision)
        {
            return new JournalOutcome.Overtaken(EntryMapping.Stored(row));
        }

        // Before the first revision there was nothing.
        var before = revision == 1 ? null : Earlier(id, revision - 1);
        Revise(row, before is { IsRemoved: false } ? JournalJson.ReadKept(before.Body) : null);
        db.SaveChanges();
        return new JournalOutcome.Written([EntryMapping.Stored(row)]);
    }

    private void Begin(Guid[] ids)
    {
        foreach (var some in ids.Chunk(AtOnce))
        {
            foreach (var row in db.Entries.Where(e => e.Garden == garden && some.Contains(e.Id)))
            {
                rows[row.Id] = row;
            }
        }

        // The revision written last is the newest of its entry, so it stands here.
        sequence = db.Entries.Where(e => e.Garden == garden).Max(e => (long?)e.Sequence) ?? 0;
    }

    // Null when it was done.
    private JournalOutcome? Apply(EntryChange change)
    {
        if (!rows.TryGetValue(change.Id, out var row))
        {
            if (change.BasedOn != 0 || change.Entry is null)
            {
                return new JournalOutcome.NotThere(change.Id);
            }

            Add(change.Entry);
            return null;
        }

        if (Says(row.IsRemoved, row.Body, change))
        {
            return null;
        }

        // The same change sent again, after others went on from it.
        if (change.BasedOn + 1 < row.Revision && Earlier(change.Id, change.BasedOn + 1) is { } then && Says(then.IsRemoved, then.Body, change))
        {
            return null;
        }

        if (row.Revision != change.BasedOn)
        {
            return new JournalOutcome.Overtaken(EntryMapping.Stored(row));
        }

        Revise(row, change.Entry);
        return null;
    }

    private static bool Says(bool isRemoved, string body, EntryChange change) =>
        change.Entry is null ? isRemoved : !isRemoved && string.Equals(body, JournalJson.WriteLine(change.Entry), StringComparison.Ordinal);

    private EarlierRow? Earlier(Guid id, int revision) =>
        db.Earlier.Local.FirstOrDefault(e => e.Id == id && e.Revision == revision)
        ?? db.Earlier.FirstOrDefault(e => e.Garden == garden && e.Id == id && e.Revision == revision);

    private void Add(Entry entry)
    {
        var row = new EntryRow { Garden = garden, Id = entry.Id, Revision = 1, Sequence = ++sequence, By = by, AtTicks = at.UtcTicks };
        EntryMapping.Fill(row, entry, JournalJson.WriteLine(entry));
        row.Pots.AddRange(EntryMapping.Pots(row, entry));
        db.Add(row);
        rows[entry.Id] = row;
    }

    private void Revise(EntryRow row, Entry? entry)
    {
        // Rows of this call come first: their pots are found only once they are in the table.
        if (row.Number == 0 || db.ChangeTracker.HasChanges())
        {
            db.SaveChanges();
        }

        db.Add(EntryMapping.Earlier(row));
        db.EntryPots.Where(p => p.Entry == row.Number).ExecuteDelete();
        db.ChangeTracker.Entries<EntryPotRow>().Where(p => p.Entity.Entry == row.Number).ToList().ForEach(static p => p.State = EntityState.Detached);
        row.Pots.Clear();
        row.Revision++;
        row.Sequence = ++sequence;
        row.By = by;
        row.AtTicks = at.UtcTicks;
        row.IsRemoved = entry is null;
        if (entry is not null)
        {
            EntryMapping.Fill(row, entry, JournalJson.WriteLine(entry));
            db.AddRange(EntryMapping.Pots(row, entry));
        }
    }
}
