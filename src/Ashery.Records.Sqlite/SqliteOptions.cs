using Ashery.Records.Model;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Ashery.Records.Sqlite;

/// <summary>How every connection to the garden's file is made.</summary>
internal static class SqliteOptions
{
    public static DbContextOptions<GardenDb> For(string path) => new DbContextOptionsBuilder<GardenDb>()
        .UseSqlite(
            new SqliteConnectionStringBuilder
            {
                DataSource = path,
                ForeignKeys = true,
                DefaultTimeout = 10,
            }.ToString(),
            sqlite => sqlite
                .MigrationsAssembly(typeof(SqliteOptions).Assembly.GetName().Name)
                .UseQuerySplittingBehavior(QuerySplittingBehavior.SplitQuery))
        .AddInterceptors(DurableConnection.Instance)
        .ConfigureWarnings(w => w.Ignore(RelationalEventId.NonTransactionalMigrationOperationWarning))
        .Options;
}
