using Ashery.Feeds;
using Ashery.Journal;
using Ashery.Problems;

namespace Ashery.Stock;

/// <summary>The batches while the book is written.</summary>
internal sealed class BatchWalk(Dictionary<string, Feed> feeds, List<Problem> notes)
{
    private readonly Dictionary<Guid, Account> byId = [];
    private readonly Dictionary<string, List<Account>> byFeed = new(StringComparer.Ordinal);

    /// <summary>Batches are known from the start, so that whoever names one finds it, whatever the hour that was written.</summary>
    public void Know(Entry entry, BatchMade made)
    {
        var account = new Account(entry, made) { Left = made.TotalGrams() };
        if (byId.TryAdd(entry.Id, account))
        {
            (byFeed.TryGetValue(made.FeedId, out var same) ? same : byFeed[made.FeedId] = []).Add(account);
        }
    }

    /// <summary>From now on it is one of the open batches.</summary>
    public void Make(Guid id) => byId[id].IsMade = true;

    /// <summary>Takes feed out: from the named batch all of it, else from the open batches of the feed as far as they reach.</summary>
    public IReadOnlyList<(Guid Batch, double Grams, bool Assumed)> Take(FeedGiven given, DateOnly day, double grams)
    {
        if (given.Batch is { } named)
        {
            if (byId.TryGetValue(named, out var batch))
            {
                Take(batch, grams, given: true);
                return [(named, grams, false)];
            }

            notes.Add(new("batch", FormattableString.Invariant($"On {day:yyyy-MM-dd} feed was given from a batch that is not in the book."), "It was taken from the open batch of that feed, else from the bags; correct the entry to name another.", Severity.Warning));
        }

        List<(Guid Batch, double Grams, bool Assumed)> taken = [];
        foreach (var batch in Open(given.FeedId))
        {
            var part = Math.Min(grams, batch.Left);
            Take(batch, part, given: true);
            taken.Add((batch.Entry.Id, part, true));
            grams -= part;
            if (grams <= FirstExpired.Dust)
            {
                break;
            }
        }

        return taken;
    }

    /// <summary>False when there is no such batch.</summary>
    public bool Discard(Guid id, double grams)
    {
        if (!byId.TryGetValue(id, out var batch))
        {
            return false;
        }

        Take(batch, grams, given: false);
        return true;
    }

    public IEnumerable<Batch> Close(IReadOnlyList<StockMove> moves)
    {
        var draws = moves.Where(static m => m.Kind == StockMoveKind.Batch).ToLookup(static m => m.Entry);
        foreach (var account in byId.Values)
        {
            if (account.Over > 0)
            {
                notes.Add(new(
                    account.Made.Lot,
                    FormattableString.Invariant($"{account.Over:0.##} g more of batch {account.Made.Lot} went out than were made."),
                    "Look at its weighings and at the feeds given from it.",
                    Severity.Warning));
            }

            yield return new()
            {
                Id = account.Entry.Id,
                Lot = account.Made.Lot,
                FeedId = account.Made.FeedId,
                FeedName = feeds.GetValueOrDefault(account.Made.FeedId)?.Name ?? account.Made.FeedId,
                Made = account.Entry.Day,
                UseBy = account.Made.UseBy,
                Note = account.Entry.Note,
                Weighings = account.Made.Weighings,
                Draws = [.. draws[account.Entry.Id]],
                Grams = account.Made.TotalGrams(),
                Given = account.Given,
                Discarded = account.Discarded,
                Left = account.Left,
                Over = account.Over,
            };
        }
    }

    private IEnumerable<Account> Open(string feedId) => byFeed.TryGetValue(feedId, out var all)
        ? all.Where(static b => b.IsMade && b.Left > FirstExpired.Dust).OrderBy(static b => b.Made.UseBy ?? DateOnly.MaxValue).ThenBy(static b => b.Entry.Day).ThenBy(static b => b.Made.Lot, StringComparer.Ordinal)
        : [];

    private static void Take(Account batch, double grams, bool given)
    {
        var over = Math.Max(0, grams - batch.Left);
        batch.Over += over;
        batch.Left = Math.Max(0, batch.Left - grams);
        if (given)
        {
            batch.Given += grams;
        }
        else
        {
            batch.Discarded += grams;
        }
    }

    private sealed class Account(Entry entry, BatchMade made)
    {
        public Entry Entry { get; } = entry;

        public BatchMade Made { get; } = made;

        public bool IsMade { get; set; }

        public double Left { get; set; }

        public double Given { get; set; }

        public double Discarded { get; set; }

        public double Over { get; set; }
    }
}
