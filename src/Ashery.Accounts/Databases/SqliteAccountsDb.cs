using Ashery.Accounts.Model;
using Ashery.Records.Sqlite;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Ashery.Accounts.Databases;

/// <summary>Accounts in the garden's SQLite file.</summary>
public sealed class SqliteAccountsDb(DbContextOptions<SqliteAccountsDb> options) : AccountsDb(options)
{
    internal static DbContextOptions<SqliteAccountsDb> For(string path) => new DbContextOptionsBuilder<SqliteAccountsDb>()
        .UseSqlite(
            new SqliteConnectionStringBuilder { DataSource = path, ForeignKeys = true, DefaultTimeout = 10 }.ToString(),
            sqlite => sqlite.MigrationsHistoryTable(HistoryTable))
        .AddInterceptors(DurableConnection.Instance)
        .ConfigureWarnings(w => w.Ignore(RelationalEventId.NonTransactionalMigrationOperationWarning))
        .Options;
}

/// <summary>Lets <c>dotnet ef migrations add NAME --context SqliteAccountsDb</c> build the context.</summary>
internal sealed class SqliteDesign : IDesignTimeDbContextFactory<SqliteAccountsDb>
{
    public SqliteAccountsDb CreateDbContext(string[] args) => new(SqliteAccountsDb.For("design-time.db"));
}
