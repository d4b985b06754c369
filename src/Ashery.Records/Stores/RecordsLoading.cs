using Ashery.Exchange.Journal;
using Ashery.Gardens;
using Ashery.Records.Mapping;
using Ashery.Records.Model;
using Ashery.Records.Rows;
using Microsoft.EntityFrameworkCore;

namespace Ashery.Records.Stores;

/// <summary>Puts states and revisions in with the numbers, names and instants they had: what an import does, and nobody else.</summary>
internal static class RecordsLoading
{
    private const int AtOnce = 500;

    /// <summary>True when neither a garden nor an entry is there.</summary>
    public static bool IsEmpty(GardenDb db) => !db.States.Any() && !db.Entries.Any();

    public static void State(GardenDb db, string garden, Change change, Garden value)
    {
        var row = GardenMapping.ToRows(value, change.At, change.What);
        row.Garden = garden;
        row.Version = change.Version;
        row.By = change.By;
        db.Add(row);
        db.SaveChanges();
        db.ChangeTracker.Clear();
    }

    /// <summary>All revisions of a garden's journal, in any order.</summary>
    public static void Revisions(GardenDb db, string garden, IEnumerable<StoredEntry> revisions)
    {
        db.ChangeTracker.AutoDetectChangesEnabled = false;
        var waiting = 0;
        foreach (var entry in revisions.GroupBy(static r => r.Entry.Id))
        {
            var inOrder = entry.OrderByDescending(static r => r.Revision).ToList();
            var newest = Row(garden, inOrder[0]);
            db.Add(newest);
            db.AddRange(inOrder.Skip(1).Select(r => EntryMapping.Earlier(Row(garden, r))));
            waiting += inOrder.Count;
            if (waiting >= AtOnce)
            {
                Save();
            }
        }

        Save();

        void Save()
        {
            db.SaveChanges();
            db.ChangeTracker.Clear();
            waiting = 0;
        }
    }

    private static EntryRow Row(string garden, StoredEntry revision)
    {
        var row = new EntryRow
        {
            Garden = garden,
            Id = revision.Entry.Id,
            Revision = revision.Revision,
            Sequence = revision.Sequence,
            By = revision.By,
            AtTicks = revision.At.UtcTicks,
            IsRemoved = revision.IsRemoved,
        };
        EntryMapping.Fill(row, revision.Entry, JournalJson.WriteLine(revision.Entry));
        row.Pots.AddRange(EntryMapping.Pots(row, revision.Entry));
        return row;
    }
}
