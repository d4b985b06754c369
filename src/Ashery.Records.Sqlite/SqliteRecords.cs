using Ashery.Problems;
using Ashery.Records.Model;
using Ashery.Records.Stores;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Ashery.Records.Sqlite;

/// <summary>Gardens and journals in a SQLite file. Safe to use from several threads and several processes at once.</summary>
public sealed class SqliteRecords : DbRecords
{
    private SqliteRecords(DatabaseEngine engine, TimeProvider clock, string path)
        : base(engine, clock) => FilePath = path;

    /// <summary>The file.</summary>
    public string FilePath { get; }

    /// <summary>Opens the file, makes it when there is none, and brings its tables up to date.</summary>
    public static Result<SqliteRecords> Open(string path, TimeProvider? clock = null) => Open(path, clock, mostPages: null);

    /// <summary>The same with a file that may not grow beyond so many pages: a disk that is full.</summary>
    internal static Result<SqliteRecords> Open(string path, TimeProvider? clock, int? mostPages)
    {
        var full = Path.GetFullPath(path);
        var options = SqliteOptions.For(full, mostPages);
        var engine = new SqliteEngine(options, full);
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(full)!);
            using var db = new GardenDb(options);
            var known = db.Database.GetMigrations().ToHashSet();
            var applied = db.Database.GetAppliedMigrations().ToList();
            if (applied.FirstOrDefault(m => !known.Contains(m)) is { } unknown)
            {
                return Result.Fail<SqliteRecords>(
                    "garden file",
                    $"{full} was made by a newer Ashery (it knows {unknown}).",
                    "Use that newer Ashery, or name another file with ASHERY_HOME.");
            }

            // Migrating compares the whole model even when there is nothing to do, which a short command would wait for.
            if (applied.Count < known.Count)
            {
                db.Database.Migrate();
            }

            return Result.Of(new SqliteRecords(engine, clock ?? TimeProvider.System, full));
        }
        catch (SqliteException e) when (e.SqliteErrorCode is not SqliteEngine.NotADatabase && engine.Trouble(e) is { } problem)
        {
            return Result.Fail<SqliteRecords>(problem);
        }
        catch (Exception e) when (e is SqliteException or IOException or UnauthorizedAccessException)
        {
            return Result.Fail<SqliteRecords>(
                "garden file",
                $"{full} cannot be opened as a garden: {e.Message}",
                "Check that the folder may be written to and the file is Ashery's own, or name another folder with ASHERY_HOME.");
        }
    }
}
