using Ashery.Accounts.Model;
using Ashery.Records.Postgres;
using Microsoft.EntityFrameworkCore;

namespace Ashery.Accounts.Databases;

/// <summary>Where the accounts are: opens a context for one piece of work.</summary>
public sealed class AccountsDatabase
{
    private readonly Func<AccountsDb> open;

    private AccountsDatabase(Func<AccountsDb> open) => this.open = open;

    /// <summary>Beside the gardens: <c>postgres://...</c>, else the path of a SQLite file.</summary>
    public static AccountsDatabase Of(string database) =>
        PostgresAddress.Is(database) ? Postgres(PostgresAddress.Read(database).Value!.ConnectionString) : Sqlite(Path.GetFullPath(database));

    private static AccountsDatabase Sqlite(string path)
    {
        var options = SqliteAccountsDb.For(path);
        return new(() => new SqliteAccountsDb(options));
    }

    private static AccountsDatabase Postgres(string connection)
    {
        var options = PostgresAccountsDb.For(connection);
        return new(() => new PostgresAccountsDb(options));
    }

    public AccountsDb Open() => open();

    /// <summary>Brings the tables up to date. Several instances may start at once: EF Core takes a lock in the database.</summary>
    public void Migrate()
    {
        using var db = open();
        if (db.Database.GetAppliedMigrations().Count() < db.Database.GetMigrations().Count())
        {
            db.Database.Migrate();
        }
    }
}
