using Ashery.Accounts.Model;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace Ashery.Accounts.Databases;

/// <summary>Accounts in a PostgreSQL database.</summary>
public sealed class PostgresAccountsDb(DbContextOptions<PostgresAccountsDb> options) : AccountsDb(options)
{
    internal static DbContextOptions<PostgresAccountsDb> For(string connection) => new DbContextOptionsBuilder<PostgresAccountsDb>()
        .UseNpgsql(connection, npgsql => npgsql.MigrationsHistoryTable(HistoryTable))
        .Options;
}

/// <summary>Lets <c>dotnet ef migrations add NAME --context PostgresAccountsDb</c> build the context.</summary>
internal sealed class PostgresDesign : IDesignTimeDbContextFactory<PostgresAccountsDb>
{
    public PostgresAccountsDb CreateDbContext(string[] args) => new(PostgresAccountsDb.For("Host=127.0.0.1;Database=design"));
}
