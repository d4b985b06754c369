using Ashery.Problems;
using Ashery.Records.Model;
using Ashery.Records.Rows;
using Ashery.Records.Stores;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace Ashery.Records.Sqlite;

/// <summary>What SQLite does its own way. Result codes: SQLite manual, "Result and Error Codes".</summary>
internal sealed class SqliteEngine(DbContextOptions<GardenDb> options, string path) : DatabaseEngine
{
    private const int Busy = 5, Locked = 6, ReadOnly = 8, IoError = 10, Corrupt = 11, Full = 13, CannotOpen = 14;
    internal const int NotADatabase = 26;
    private const int Unique = 2067, PrimaryKey = 1555;

    public override GardenDb Connect() => new(options);

    // Deferred: it reads from one moment of the log and takes no lock that a writer needs (SQLite manual, "Isolation In SQLite").
    public override IDbContextTransaction BeginRead(GardenDb db)
    {
        db.Database.OpenConnection();
        return db.Database.UseTransaction(((SqliteConnection)db.Database.GetDbConnection()).BeginTransaction(deferred: true))!;
    }

    // BEGIN IMMEDIATE: one writer in the whole file.
    public override IDbContextTransaction BeginWrite(GardenDb db, string garden) => db.Database.BeginTransaction();

    public override IQueryable<EntryRow> Having(GardenDb db, string garden, IReadOnlyList<string> words)
    {
        // Letters and digits only, so nothing in them is taken for an operator.
        var match = string.Join(' ', words.Select(static w => $"\"{w}\"*"));
        return db.Entries.FromSql($"SELECT * FROM \"entry\" WHERE \"Number\" IN (SELECT rowid FROM \"entry_words\" WHERE \"entry_words\" MATCH {match})");
    }

    public override void Settle()
    {
        using var db = Connect();
        db.Database.ExecuteSqlRaw("INSERT INTO entry_words (entry_words) VALUES ('optimize');");
        db.Database.ExecuteSqlRaw("ANALYZE;");
    }

    public override bool IsTaken(Exception e) =>
        (e as SqliteException ?? e.InnerException as SqliteException) is { SqliteExtendedErrorCode: Unique or PrimaryKey };

    public override Problem? Trouble(Exception e) => (e as SqliteException ?? e.InnerException as SqliteException)?.SqliteErrorCode switch
    {
        Full => new("disk", $"The disk with {path} is full. Nothing was saved.", "Make room on it, then save again."),
        ReadOnly => new("disk", $"{path} may not be written to. Nothing was saved.", "Let the folder and the file be written to by whoever runs Ashery, then save again."),
        CannotOpen => new("garden file", $"{path} cannot be opened.", "Check that its folder is there and may be read and written to."),
        IoError => new("disk", $"{path} cannot be read or written: the disk does not answer as it should. Nothing was saved.", "Check the disk and the room on it."),
        Busy or Locked => new("garden file", $"{path} was busy for too long. Nothing was saved.", "Wait for what else writes to it, then try again."),
        Corrupt or NotADatabase => new("garden file", $"{path} is damaged or not Ashery's own.", "Restore a backup into another folder, and keep this file."),
        _ => null,
    };
}
