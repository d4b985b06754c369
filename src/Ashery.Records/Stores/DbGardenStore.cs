using Ashery.Gardens;
using Ashery.Records.Mapping;
using Ashery.Records.Model;
using Ashery.Records.Rows;
using Microsoft.EntityFrameworkCore;

namespace Ashery.Records.Stores;

/// <summary>One garden in the database. Safe to use from several threads and several processes at once.</summary>
public sealed class DbGardenStore(DatabaseEngine engine, TimeProvider clock, string garden, string by) : IGardenStore
{
    /// <summary>How many states are kept, the newest first.</summary>
    public const int StatesKept = 200;

    public bool HasGarden => engine.Run(() =>
    {
        using var db = engine.Connect();
        return Mine(db).Any();
    });

    public StoredGarden? Load() => engine.Run(() =>
    {
        using var db = engine.Connect();

        // One moment for the split queries: another process may save between two of them.
        using var transaction = engine.BeginRead(db);
        var newest = Mine(db).Max(s => (long?)s.Version);
        return newest is { } version ? Read(db, version) : null;
    });

    public StoredGarden? LoadState(long version) => engine.Run(() =>
    {
        using var db = engine.Connect();
        using var transaction = engine.BeginRead(db);
        return Read(db, version);
    });

    public SaveOutcome Save(Garden garden, long basedOn, string what) => engine.Run(() =>
    {
        try
        {
            return TrySave(garden, basedOn, what);
        }
        catch (Exception e) when (engine.IsTaken(e))
        {
            using var db = engine.Connect();
            return Overtaken(Newest(db));
        }
    });

    public IReadOnlyList<Change> History(int atMost) => engine.Run<IReadOnlyList<Change>>(() =>
    {
        using var db = engine.Connect();
        return [.. Mine(db).OrderByDescending(s => s.Version).Take(atMost)
            .Select(s => new { s.Version, s.SavedAtTicks, s.What, s.By }).AsEnumerable()
            .Select(s => new Change(s.Version, new DateTimeOffset(s.SavedAtTicks, TimeSpan.Zero), s.What, s.By))];
    });

    public IReadOnlyDictionary<string, DateTimeOffset> PotsSince() => engine.Run<IReadOnlyDictionary<string, DateTimeOffset>>(() =>
    {
        using var db = engine.Connect();
        return (from state in Mine(db) from pot in state.Pots group state.SavedAtTicks by pot.PotId into times select new { times.Key, First = times.Min() })
            .AsEnumerable().ToDictionary(static p => p.Key, static p => new DateTimeOffset(p.First, TimeSpan.Zero), StringComparer.Ordinal);
    });

    private SaveOutcome TrySave(Garden value, long basedOn, string what)
    {
        using var db = engine.Connect();
        using var transaction = engine.BeginWrite(db, garden);
        var newest = Newest(db);
        if ((newest?.Version ?? 0) != basedOn)
        {
            return Overtaken(newest);
        }

        var row = GardenMapping.ToRows(value, clock.GetUtcNow(), what);
        row.Garden = garden;
        row.Version = basedOn + 1;
        row.By = by;
        db.Add(row);
        db.SaveChanges();
        Mine(db).Where(s => s.Version <= row.Version - StatesKept).ExecuteDelete();
        transaction.Commit();
        return new SaveOutcome.Saved(row.Version);
    }

    private static SaveOutcome.Overtaken Overtaken(StateRow? newest) => new(newest is null
        ? new Change(0, default, "")
        : new Change(newest.Version, new DateTimeOffset(newest.SavedAtTicks, TimeSpan.Zero), newest.What, newest.By));

    private IQueryable<StateRow> Mine(GardenDb db) => db.States.Where(s => s.Garden == garden);

    private StateRow? Newest(GardenDb db) => Mine(db).AsNoTracking().OrderByDescending(s => s.Version).FirstOrDefault();

    private StoredGarden? Read(GardenDb db, long version)
    {
        var row = Mine(db).AsNoTrackingWithIdentityResolution()
            .Include(s => s.Normals)
            .Include(s => s.Seasons)
            .Include(s => s.Bags).ThenInclude(b => b.Contents)
            .Include(s => s.Bags).ThenInclude(b => b.Spreads)
            .Include(s => s.Bags).ThenInclude(b => b.Figures)
            .Include(s => s.Bags).ThenInclude(b => b.Solubility)
            .Include(s => s.Bags).ThenInclude(b => b.Words)
            .Include(s => s.Scoops).ThenInclude(s => s.Calibrations)
            .Include(s => s.Pots)
            .Include(s => s.Feeds).ThenInclude(f => f.Parts)
            .Include(s => s.Feeds).ThenInclude(f => f.Contents)
            .Include(s => s.Waters).ThenInclude(w => w.Lines)
            .Include(s => s.RuleChanges)
            .SingleOrDefault(s => s.Version == version);
        return row is null ? null : new StoredGarden(GardenMapping.FromRows(row), version);
    }
}
