using Ashery.Records.Model;
using Ashery.Records.Rows;
using Microsoft.EntityFrameworkCore;

namespace Ashery.Records.Stores;

/// <summary>A question to the journal as a query of the database.</summary>
internal static class JournalSearch
{
    /// <summary>The answer: newest day first, within a day last written first, from where an earlier answer ended.</summary>
    public static IQueryable<EntryRow> Newest(DatabaseEngine engine, GardenDb db, string garden, JournalQuery query)
    {
        var found = Matching(engine, db, garden, query);
        if (query.After is { } after)
        {
            var (day, sequence) = (after.Entry.Day, after.Sequence);
            found = found.Where(e => e.Day < day || (e.Day == day && e.Sequence < sequence));
        }

        return found.OrderByDescending(e => e.Day).ThenByDescending(e => e.Sequence).Take(Math.Max(0, query.AtMost));
    }

    /// <summary>All that match, without order, limit and place.</summary>
    public static IQueryable<EntryRow> Matching(DatabaseEngine engine, GardenDb db, string garden, JournalQuery query)
    {
        var asked = SearchWords.Asked(query.Words);
        var found = asked is { Count: > 0 } ? engine.Having(db, garden, asked) : db.Entries;
        found = found.AsNoTracking().Where(e => e.Garden == garden && !e.IsRemoved);
        if (asked is { Count: 0 })
        {
            found = found.Where(static e => false);
        }

        if (query.Pots is [var only])
        {
            // A join by the number, so that the pot's own rows lead: there are few of them.
            found = db.EntryPots.Where(p => p.Garden == garden && p.Pot == only).Join(found, static p => p.Entry, static e => e.Number, static (p, e) => e);
        }
        else if (query.Pots.Count > 1)
        {
            var pots = query.Pots.ToArray();
            found = found.Where(e => db.EntryPots.Any(p => p.Garden == garden && pots.Contains(p.Pot) && p.Entry == e.Number));
        }

        if (query.Kinds is [var kind])
        {
            found = found.Where(e => e.Kind == kind);
        }
        else if (query.Kinds.Count > 1)
        {
            var kinds = query.Kinds.ToArray();
            found = found.Where(e => kinds.Contains(e.Kind));
        }

        if (query.From is { } from)
        {
            found = found.Where(e => e.Day >= from);
        }

        if (query.To is { } to)
        {
            found = found.Where(e => e.Day <= to);
        }

        if (query.TasksOf is var (first, last))
        {
            found = found.Where(e => e.TaskDay >= first && e.TaskDay <= last);
        }

        return found;
    }
}
