using System.Globalization;
using System.Text;
using Ashery.Journal;

namespace Ashery.Records.Tests.Journals;

/// <summary>
/// The journal as a plain list of revisions, written apart from the store: what the store is held against. It answers each question by looking at
/// every entry, and cuts words its own way.
/// </summary>
internal sealed class PlainJournal(TimeProvider clock) : IJournal
{
    private readonly List<StoredEntry> all = [];

    public JournalOutcome Write(IReadOnlyList<EntryChange> changes)
    {
        var before = all.Count;
        foreach (var change in changes)
        {
            var revisions = Revisions(change.Id);
            if (revisions.Count == 0 && (change.BasedOn > 0 || change.Entry is null))
            {
                all.RemoveRange(before, all.Count - before);
                return new JournalOutcome.NotThere(change.Id);
            }

            if (revisions.Count > 0 && Same(revisions[0], change.Entry))
            {
                continue;
            }

            if (revisions.FirstOrDefault(r => r.Revision == change.BasedOn + 1) is { } sent && Same(sent, change.Entry))
            {
                continue;
            }

            if (revisions.Count != change.BasedOn)
            {
                all.RemoveRange(before, all.Count - before);
                return new JournalOutcome.Overtaken(Find(change.Id)!);
            }

            Add(change.Entry ?? revisions[0].Entry, revisions.Count + 1, change.Entry is null);
        }

        return new JournalOutcome.Written([.. changes.Select(c => Find(c.Id)!)]);
    }

    public JournalOutcome Undo(Guid id, int revision)
    {
        var revisions = Revisions(id);
        if (revisions.Count == 0)
        {
            return new JournalOutcome.NotThere(id);
        }

        if (revisions[0].Revision != revision)
        {
            return new JournalOutcome.Overtaken(revisions[0]);
        }

        var removes = revision == 1 || revisions[1].IsRemoved;
        Add(removes ? revisions[0].Entry : revisions[1].Entry, revision + 1, removes);
        return new JournalOutcome.Written([Find(id)!]);
    }

    public StoredEntry? Find(Guid id) => all.LastOrDefault(e => e.Entry.Id == id);

    public IReadOnlyList<StoredEntry> Revisions(Guid id) => [.. all.Where(e => e.Entry.Id == id).Reverse()];

    public IReadOnlyList<StoredEntry> Latest(int atMost) => [.. all.AsEnumerable().Reverse().Take(atMost)];

    public long Count(JournalQuery query) => Matching(query).Count();

    public IReadOnlyList<StoredEntry> Query(JournalQuery query) => [.. Matching(query)
        .OrderByDescending(e => e.Entry.Day).ThenByDescending(e => e.Sequence)
        .SkipWhile(e => query.After is { } a && (e.Entry.Day > a.Entry.Day || (e.Entry.Day == a.Entry.Day && e.Sequence >= a.Sequence)))
        .Take(query.AtMost)];

    private IEnumerable<StoredEntry> Matching(JournalQuery query) => all
        .GroupBy(e => e.Entry.Id).Select(g => g.Last()).Where(e => !e.IsRemoved)
        .Where(e => query.Pots.Count == 0 || query.Pots.Intersect(e.Entry.Pots, StringComparer.Ordinal).Any())
        .Where(e => query.Kinds.Count == 0 || query.Kinds.Contains(EntryKind.Of(e.Entry.Facts)))
        .Where(e => query.From is not { } from || e.Entry.Day >= from)
        .Where(e => query.To is not { } to || e.Entry.Day <= to)
        .Where(e => query.TasksOf is not { } tasks || (EntryKind.Task(e.Entry.Facts) is { } t && t.Day >= tasks.From && t.Day <= tasks.To))
        .Where(e => Has(e.Entry, query.Words));

    private static bool Has(Entry entry, string words)
    {
        var asked = Cut(words);
        var standing = Cut(entry.Note + " " + string.Join(' ', entry.Pots) + " " + Named(entry.Facts) + " " + EntryKind.Of(entry.Facts));
        return words.Trim().Length == 0 || (asked.Count > 0 && asked.TrueForAll(a => standing.Exists(s => s.StartsWith(a, StringComparison.Ordinal))));
    }

    // Every text of the facts but the ids of other entries, the file of a document and the hash of a photograph.
    private static string Named(EntryFacts facts) => string.Join(' ', facts switch
    {
        FeedGiven f => [f.FeedId],
        TaskSkipped s => [s.Task.FeedId, s.Why],
        TaskMoved m => [m.Task.FeedId],
        Measured m => [m.What.ToString()],
        PlantEvent p => [p.What.ToString(), p.Medium ?? "", p.Place ?? ""],
        Sighting s => [s.What],
        WeatherNoted n => [n.What.ToString()],
        BagBought b => [b.BagId, b.Lot ?? ""],
        StockCounted s => [s.BagId],
        BatchMade b => b.Weighings.Select(w => w.BagId).Append(b.Lot).Append(b.FeedId),
        Discarded d => [d.BagId ?? "", d.Why],
        KeptDocument k => [k.Stage, k.Title],
        _ => Array.Empty<string>(),
    });

    private static List<string> Cut(string text)
    {
        var spaced = new StringBuilder();
        foreach (var rune in text.Normalize(NormalizationForm.FormD).EnumerateRunes())
        {
            var kind = Rune.GetUnicodeCategory(rune);
            if (kind is UnicodeCategory.NonSpacingMark)
            {
                continue;
            }

            spaced.Append(Rune.IsLetterOrDigit(rune) || kind is UnicodeCategory.SpacingCombiningMark ? Rune.ToLowerInvariant(rune).ToString() : " ");
        }

        return [.. spaced.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(w => w.Length > 64 ? w[..64] : w)];
    }

    private static bool Same(StoredEntry stored, Entry? entry) =>
        entry is null ? stored.IsRemoved : !stored.IsRemoved && Written.Out(stored.Entry) == Written.Out(entry) && stored.Entry.Facts.GetType() == entry.Facts.GetType();

    private void Add(Entry entry, int revision, bool removed) =>
        all.Add(new(entry, revision, removed, "", clock.GetUtcNow(), all.Count + 1));
}
