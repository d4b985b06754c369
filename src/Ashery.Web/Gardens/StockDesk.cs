using System.Collections.Concurrent;
using Ashery.Journal;
using Ashery.Records;
using Ashery.Stock;
using Ashery.Today;

namespace Ashery.Web.Gardens;

/// <summary>The book of the shelf for one request: written anew when the garden, its journal or the day changed.</summary>
public sealed class StockDesk(GardenDesk desk, IJournal journal, StockCache cache, TimeProvider clock)
{
    private static readonly IReadOnlyList<string> Kinds = [.. StockLedger.Kinds, EntryKind.TaskSkipped, EntryKind.TaskMoved];

    private StockState? state;

    public StockLedger Ledger => State.Ledger;

    /// <summary>How far it reaches under the planned year.</summary>
    public StockForecast Forecast => State.Forecast.Value;

    /// <summary>What feeding cost between two days.</summary>
    public StockCosts Costs(DateOnly from, DateOnly to) => StockCosts.Of(desk.Garden, Ledger, from, to);

    /// <summary>The batch of a key of its page: its lot number or its entry's id.</summary>
    public Batch? Batch(string key) => Guid.TryParse(key, out var id) ? Ledger.Batches.Find(id) : Ledger.Batches.OfLot(key) is [var first, ..] ? first : null;

    /// <summary>Key of a batch's page: the lot number while no other batch has it, so that the address on a label stays short.</summary>
    public string Key(Batch batch) => Ledger.Batches.OfLot(batch.Lot).Count == 1 && Uri.EscapeDataString(batch.Lot) == batch.Lot && !Guid.TryParse(batch.Lot, out _) ? batch.Lot : batch.Id.ToString();

    private StockState State
    {
        get
        {
            var today = DateOnly.FromDateTime(clock.GetLocalNow().DateTime);
            var mark = new StockMark(desk.Version, journal.Latest(1) is [var newest, ..] ? newest.Sequence : 0, today);
            if (state?.Mark != mark)
            {
                state = cache.Find(desk.Key, mark) ?? cache.Keep(desk.Key, Read(mark));
            }

            return state;
        }
    }

    private StockState Read(StockMark mark)
    {
        IReadOnlyList<Entry> entries = [.. journal.Query(new JournalQuery { Kinds = Kinds, AtMost = int.MaxValue }).Select(static e => e.Entry)];
        var garden = desk.Garden;
        var ledger = StockLedger.Of(garden, entries);
        return new(mark, ledger, new Lazy<StockForecast>(() => StockOutlook.For(garden, ledger, entries, mark.Today)));
    }
}

/// <summary>What a book was written from: the garden's version, the journal's newest revision, and the day.</summary>
public sealed record StockMark(long Version, long Sequence, DateOnly Today);

/// <summary>A written book.</summary>
public sealed record StockState(StockMark Mark, StockLedger Ledger, Lazy<StockForecast> Forecast);

/// <summary>Books in memory by garden; whether one still holds is asked of the records each time.</summary>
public sealed class StockCache
{
    private const int Most = 64;

    private readonly ConcurrentDictionary<string, StockState> kept = new(StringComparer.Ordinal);

    public StockState? Find(string garden, StockMark mark) => kept.TryGetValue(garden, out var state) && state.Mark == mark ? state : null;

    public StockState Keep(string garden, StockState state)
    {
        if (kept.Count >= Most)
        {
            kept.Clear();
        }

        return kept[garden] = state;
    }
}
