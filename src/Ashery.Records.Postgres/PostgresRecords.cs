using System.Net.Sockets;
using Ashery.Problems;
using Ashery.Records.Model;
using Ashery.Records.Stores;
using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace Ashery.Records.Postgres;

/// <summary>Gardens and journals in a PostgreSQL database, which several instances of the application may share.</summary>
public sealed class PostgresRecords : DbRecords
{
    private PostgresRecords(DatabaseEngine engine, TimeProvider clock, string connection)
        : base(engine, clock) => ConnectionString = connection;

    /// <summary>For other tables in the same database.</summary>
    public string ConnectionString { get; }

    /// <summary>Opens the database of an address (<see cref="PostgresAddress"/>) and brings its tables up to date.</summary>
    public static Result<PostgresRecords> Open(string address, TimeProvider? clock = null)
    {
        var read = PostgresAddress.Read(address);
        if (!read.Ok)
        {
            return Result.Fail<PostgresRecords>(read.Problems);
        }

        var connection = read.Value.ConnectionString;
        var shown = PostgresAddress.Shown(read.Value);
        var options = PostgresOptions.For(connection);
        var engine = new PostgresEngine(options, shown);
        try
        {
            using var db = new GardenDb(options);
            var known = db.Database.GetMigrations().ToHashSet();
            var applied = db.Database.GetAppliedMigrations().ToList();
            if (applied.FirstOrDefault(m => !known.Contains(m)) is { } unknown)
            {
                return Result.Fail<PostgresRecords>("database", $"{shown} was made by a newer Ashery (it knows {unknown}).", "Use that newer Ashery, or another database.");
            }

            // Several instances may start at once: the tool takes a lock, so one of them does it.
            if (applied.Count < known.Count)
            {
                db.Database.Migrate();
            }

            return Result.Of(new PostgresRecords(engine, clock ?? TimeProvider.System, connection));
        }
        catch (Exception e) when (e is NpgsqlException or SocketException or InvalidOperationException { InnerException: NpgsqlException })
        {
            return Result.Fail<PostgresRecords>(
                "database",
                $"{shown} cannot be opened: {(e.InnerException ?? e).Message}",
                "Check that PostgreSQL runs there, that the database exists and its user may make tables in it.");
        }
    }
}
