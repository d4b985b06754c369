using System.Data.Common;
using Ashery.Records.Model;
using Ashery.Records.Postgres;
using Ashery.Records.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Ashery.Records.Moving.Tables;

/// <summary>The tables of one EF model, on either database. Whoever keeps more tables beside the gardens' adds a line to <see cref="All"/>.</summary>
/// <param name="Name">For the manifest of a backup.</param>
/// <param name="OnSqlite">The context on an open connection; it brings its own migrations.</param>
/// <param name="OnPostgres">The same on PostgreSQL.</param>
public sealed record TableSet(string Name, Func<DbConnection, DbContext> OnSqlite, Func<DbConnection, DbContext> OnPostgres)
{
    /// <summary>Everything that a backup holds and a copy moves.</summary>
    public static IReadOnlyList<TableSet> All { get; } =
    [
        new("gardens", static c => new GardenDb(SqliteOptions.On(c)), static c => new GardenDb(PostgresOptions.On(c))),
    ];
}
