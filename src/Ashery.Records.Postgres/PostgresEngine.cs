using System.Data;
using Ashery.Problems;
using Ashery.Records.Model;
using Ashery.Records.Rows;
using Ashery.Records.Stores;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;
using Npgsql;

namespace Ashery.Records.Postgres;

/// <summary>What PostgreSQL does its own way. Codes: PostgreSQL manual, appendix "PostgreSQL Error Codes".</summary>
internal sealed class PostgresEngine(DbContextOptions<GardenDb> options, string shown) : DatabaseEngine
{
    public override GardenDb Connect() => new(options);

    public override IDbContextTransaction BeginRead(GardenDb db) => db.Database.BeginTransaction(IsolationLevel.RepeatableRead);

    // One writer a garden, in whichever instance: the lock goes with the transaction.
    public override IDbContextTransaction BeginWrite(GardenDb db, string garden)
    {
        var transaction = db.Database.BeginTransaction(IsolationLevel.ReadCommitted);
        db.Database.ExecuteSql($"SELECT pg_advisory_xact_lock(hashtextextended({garden}, 0))");
        return transaction;
    }

    public override IQueryable<EntryRow> Having(GardenDb db, string garden, IReadOnlyList<string> words)
    {
        // Keys and words are letters, digits, - and _ only, so nothing in the quotes ends them.
        var match = string.Join(" & ", words.Select(w => $"'{garden}/{w}':*"));
        return db.Entries.FromSql($"SELECT * FROM entry WHERE \"Search\" @@ {match}::tsquery");
    }

    public override void Settle()
    {
        using var db = Connect();
        db.Database.SetCommandTimeout(TimeSpan.FromMinutes(30));
        db.Database.ExecuteSqlRaw("VACUUM ANALYZE;");
    }

    public override bool IsTaken(Exception e) => Of<PostgresException>(e)?.SqlState
        is PostgresErrorCodes.UniqueViolation or PostgresErrorCodes.SerializationFailure or PostgresErrorCodes.DeadlockDetected;

    public override Problem? Trouble(Exception e) => Of<PostgresException>(e) is { } answer ? Said(answer)
        : Of<NpgsqlException>(e) is { } broken ? new("database", $"{shown} does not answer: {broken.Message}", "Check that PostgreSQL runs there and lets this machine in, then try again.")
        : null;

    private Problem? Said(PostgresException answer) => answer.SqlState switch
    {
        PostgresErrorCodes.DiskFull => new("disk", $"The disk of {shown} is full. Nothing was saved.", "Make room on it, then save again."),
        PostgresErrorCodes.ReadOnlySqlTransaction => new("database", $"{shown} may only be read. Nothing was saved.", "Let the database be written to (default_transaction_read_only), then save again."),
        PostgresErrorCodes.InsufficientPrivilege => new("database", $"{shown} does not let its user do this: {answer.MessageText}.", "Let the user own the database."),
        PostgresErrorCodes.TooManyConnections => new("database", $"{shown} takes no more connections.", "Wait a moment, or allow more of them (max_connections)."),
        PostgresErrorCodes.CharacterNotInRepertoire or PostgresErrorCodes.UntranslatableCharacter => new("text", "The text holds a sign that is none (NUL). Nothing was saved.", "Type it again."),
        ['5', '7', 'P', ..] or ['0', '8', ..] or ['5', '8', ..] or ['2', '8', ..] or ['3', 'D', ..] or PostgresErrorCodes.IoError =>
            new("database", $"{shown} does not answer as it should: {answer.MessageText}.", "Check that PostgreSQL runs there, has this database and lets this user in, then try again."),
        _ => null,
    };

    private static T? Of<T>(Exception? e)
        where T : Exception
    {
        for (; e is not null; e = e.InnerException)
        {
            if (e is T found)
            {
                return found;
            }
        }

        return null;
    }
}
