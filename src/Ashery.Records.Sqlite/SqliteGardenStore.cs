using Ashery.Gardens;
using Ashery.Problems;
using Ashery.Records.Mapping;
using Ashery.Records.Model;
using Ashery.Records.Rows;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Ashery.Records.Sqlite;

/// <summary>The garden in a SQLite file. Safe to use from several threads and several processes at once.</summary>
public sealed class SqliteGardenStore : IGardenStore
{
    /// <summary>How many states are kept, the newest first.</summary>
    public const int StatesKept = 200;

    private readonly DbContextOptions<GardenDb> options;
    private readonly TimeProvider clock;

    private SqliteGardenStore(DbContextOptions<GardenDb> options, TimeProvider clock, string path)
    {
        this.options = options;
        this.clock = clock;
        FilePath = path;
    }

    /// <summary>The file.</summary>
    public string FilePath { get; }

    public bool HasGarden
    {
        get
        {
            using var db = new GardenDb(options);
            return db.States.Any();
        }
    }

    /// <summary>Opens the file, makes it when there is none, and brings its tables up to date.</summary>
    public static Result<SqliteGardenStore> Open(string path, TimeProvider? clock = null)
    {
        var full = Path.GetFullPath(path);
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(full)!);
            var opened = SqliteOptions.For(full);
            using (var db = new GardenDb(opened))
            {
                var known = db.Database.GetMigrations().ToHashSet();
                var applied = db.Database.GetAppliedMigrations().ToList();
                if (applied.FirstOrDefault(m => !known.Contains(m)) is { } unknown)
                {
                    return Result.Fail<SqliteGardenStore>(
                        "garden file",
                        $"{full} was made by a newer Ashery (it knows {unknown}).",
                        "Use that newer Ashery, or name another file with ASHERY_HOME.");
                }

                // Migrating compares the whole model even when there is nothing to do, which a short command would wait for.
                if (applied.Count < known.Count)
                {
                    db.Database.Migrate();
                }
            }

            return Result.Of(new SqliteGardenStore(opened, clock ?? TimeProvider.System, full));
        }
        catch (Exception e) when (e is SqliteException or IOException or UnauthorizedAccessException)
        {
            return Result.Fail<SqliteGardenStore>(
                "garden file",
                $"{full} cannot be opened as a garden: {e.Message}",
                "Check that the folder may be written to and the file is Ashery's own, or name another folder with ASHERY_HOME.");
        }
    }

    public StoredGarden? Load()
    {
        using var db = new GardenDb(options);

        // One transaction over the split queries: another process may save between two of them.
        using var transaction = db.Database.BeginTransaction();
        var newest = db.States.Max(s => (long?)s.Number);
        return newest is { } number ? Read(db, number) : null;
    }

    public StoredGarden? LoadState(long version)
    {
        using var db = new GardenDb(options);
        using var transaction = db.Database.BeginTransaction();
        return Read(db, version);
    }

    public SaveOutcome Save(Garden garden, long basedOn, string what)
    {
        using var db = new GardenDb(options);
        using var transaction = db.Database.BeginTransaction();
        var newest = db.States.OrderByDescending(s => s.Number).Select(s => new { s.Number, s.SavedAtTicks, s.What }).FirstOrDefault();
        if ((newest?.Number ?? 0) != basedOn)
        {
            return new SaveOutcome.Overtaken(newest is null
                ? new Change(0, default, "")
                : new Change(newest.Number, new DateTimeOffset(newest.SavedAtTicks, TimeSpan.Zero), newest.What));
        }

        var number = basedOn + 1;
        db.Add(GardenMapping.ToRows(garden, number, clock.GetUtcNow(), what));
        db.SaveChanges();
        db.States.Where(s => s.Number <= number - StatesKept).ExecuteDelete();
        transaction.Commit();
        return new SaveOutcome.Saved(number);
    }

    public IReadOnlyList<Change> History(int atMost)
    {
        using var db = new GardenDb(options);
        return [.. db.States.OrderByDescending(s => s.Number).Take(atMost)
            .Select(s => new { s.Number, s.SavedAtTicks, s.What }).AsEnumerable()
            .Select(s => new Change(s.Number, new DateTimeOffset(s.SavedAtTicks, TimeSpan.Zero), s.What))];
    }

    private static StoredGarden? Read(GardenDb db, long number)
    {
        StateRow? row = db.States.AsNoTrackingWithIdentityResolution()
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
            .SingleOrDefault(s => s.Number == number);
        return row is null ? null : new StoredGarden(GardenMapping.FromRows(row), number);
    }
}
