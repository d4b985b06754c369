using Ashery.Records.Model;
using Microsoft.EntityFrameworkCore;

namespace Ashery.Records.Postgres;

/// <summary>How every connection to the database is made.</summary>
internal static class PostgresOptions
{
    public static DbContextOptions<GardenDb> For(string connection) => For<GardenDb>(connection);

    public static DbContextOptions<T> For<T>(string connection)
        where T : DbContext => new DbContextOptionsBuilder<T>()
        .UseNpgsql(connection, npgsql => npgsql
            .MigrationsAssembly(typeof(PostgresOptions).Assembly.GetName().Name)
            .UseQuerySplittingBehavior(QuerySplittingBehavior.SplitQuery))
        .Options;
}
