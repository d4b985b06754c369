using System.Data.Common;
using Ashery.Records.Model;
using Microsoft.EntityFrameworkCore;
using Npgsql.EntityFrameworkCore.PostgreSQL.Infrastructure;

namespace Ashery.Records.Postgres;

/// <summary>How every connection to the database is made.</summary>
public static class PostgresOptions
{
    public static DbContextOptions<GardenDb> For(string connection) => new DbContextOptionsBuilder<GardenDb>().UseNpgsql(connection, Set).Options;

    /// <summary>On a connection that several contexts share.</summary>
    public static DbContextOptions<GardenDb> On(DbConnection connection) => new DbContextOptionsBuilder<GardenDb>().UseNpgsql(connection, Set).Options;

    private static void Set(NpgsqlDbContextOptionsBuilder npgsql) => npgsql
        .MigrationsAssembly(typeof(PostgresOptions).Assembly.GetName().Name)
        .UseQuerySplittingBehavior(QuerySplittingBehavior.SplitQuery);
}
