using System.Data.Common;
using Ashery.Records.Model;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;
using Microsoft.EntityFrameworkCore.Infrastructure;

namespace Ashery.Records.Sqlite;

/// <summary>How every connection to the garden's file is made.</summary>
public static class SqliteOptions
{
    public static DbContextOptions<GardenDb> For(string path) => For(path, mostPages: null);

    internal static DbContextOptions<GardenDb> For(string path, int? mostPages)
    {
        var builder = new DbContextOptionsBuilder<GardenDb>().UseSqlite(Connection(path), Set);
        return Finished(mostPages is { } most ? builder.AddInterceptors(new PageLimit(most)) : builder);
    }

    /// <summary>On a connection that several contexts share.</summary>
    public static DbContextOptions<GardenDb> On(DbConnection connection) => Finished(new DbContextOptionsBuilder<GardenDb>().UseSqlite(connection, Set));

    /// <summary>The words of a connection to a file.</summary>
    public static string Connection(string path) => new SqliteConnectionStringBuilder { DataSource = path, ForeignKeys = true, DefaultTimeout = 10 }.ToString();

    private static void Set(SqliteDbContextOptionsBuilder sqlite) => sqlite
        .MigrationsAssembly(typeof(SqliteOptions).Assembly.GetName().Name)
        .UseQuerySplittingBehavior(QuerySplittingBehavior.SplitQuery);

    private static DbContextOptions<GardenDb> Finished(DbContextOptionsBuilder<GardenDb> builder) => builder
        .AddInterceptors(DurableConnection.Instance)
        .ConfigureWarnings(static w => w.Ignore(RelationalEventId.NonTransactionalMigrationOperationWarning))
        .Options;
}
