using System.Data;
using System.Data.Common;
using Ashery.Problems;
using Ashery.Records.Postgres;
using Ashery.Records.Sqlite;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace Ashery.Records.Moving.Tables;

/// <summary>All table sets of one database on one connection, so that one transaction spans them.</summary>
internal sealed class OpenTables : IDisposable
{
    private readonly DbConnection connection;

    private OpenTables(DbConnection connection, IReadOnlyList<DbContext> contexts)
    {
        this.connection = connection;
        Contexts = contexts;
    }

    public IReadOnlyList<DbContext> Contexts { get; }

    /// <summary>Opens a file or an address that exists and is up to date.</summary>
    public static Result<OpenTables> Open(string database, IReadOnlyList<TableSet> sets)
    {
        if (!PostgresAddress.Is(database))
        {
            return Result.Of(On(new SqliteConnection(SqliteOptions.Connection(Path.GetFullPath(database))), sets.Select(static s => s.OnSqlite)));
        }

        var address = PostgresAddress.Read(database);
        return address.Ok
            ? Result.Of(On(new NpgsqlConnection(address.Value.ConnectionString), sets.Select(static s => s.OnPostgres)))
            : Result.Fail<OpenTables>(address.Problems);
    }

    /// <summary>Brings the tables up to date; a problem where a newer edition made them.</summary>
    public Problem? Migrate()
    {
        foreach (var context in Contexts)
        {
            var known = context.Database.GetMigrations().ToHashSet();
            if (context.Database.GetAppliedMigrations().FirstOrDefault(m => !known.Contains(m)) is { } unknown)
            {
                return new("database", $"It was made by a newer Ashery (it knows {unknown}).", "Use that newer Ashery.");
            }

            context.Database.Migrate();
        }

        return null;
    }

    /// <summary>The newest migration of each table set.</summary>
    public IReadOnlyList<string> Schema() => [.. Contexts.Select(static c => c.Database.GetAppliedMigrations().LastOrDefault() ?? "")];

    /// <summary>One moment of all tables.</summary>
    public DbTransaction BeginRead() => Share(connection is SqliteConnection sqlite ? sqlite.BeginTransaction(deferred: true) : connection.BeginTransaction(IsolationLevel.RepeatableRead));

    /// <summary>The only writer until it ends; readers see what was before.</summary>
    public DbTransaction BeginWrite() => Share(connection.BeginTransaction());

    public void Dispose()
    {
        foreach (var context in Contexts)
        {
            context.Dispose();
        }

        connection.Dispose();
    }

    private static OpenTables On(DbConnection connection, IEnumerable<Func<DbConnection, DbContext>> sets)
    {
        DbContext[] contexts = [.. sets.Select(make => make(connection))];

        // Opened by EF, which asks for durability on the way.
        contexts[0].Database.OpenConnection();
        return new(connection, contexts);
    }

    private DbTransaction Share(DbTransaction transaction)
    {
        foreach (var context in Contexts)
        {
            context.Database.UseTransaction(transaction);
        }

        return transaction;
    }
}
