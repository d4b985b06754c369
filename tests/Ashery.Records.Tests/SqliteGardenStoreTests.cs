using Ashery.Records.Model;
using Ashery.Records.Postgres;
using Ashery.Records.Sqlite;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Ashery.Records.Tests;

public sealed class SqliteGardenStoreTests
{
    [Fact]
    public void Every_connection_is_durable()
    {
        using var temp = new TempStore();
        using var db = new GardenDb(SqliteOptions.For(temp.FilePath));
        for (var i = 0; i < 3; i++)
        {
            db.Database.OpenConnection();
            Assert.Equal("wal", Ask(db, "PRAGMA journal_mode"));
            Assert.Equal(2L, Ask(db, "PRAGMA synchronous"));
            Assert.Equal(1L, Ask(db, "PRAGMA foreign_keys"));
            db.Database.CloseConnection();
            SqliteConnection.ClearAllPools();
        }
    }

    [Fact]
    public void The_model_has_no_change_without_a_migration()
    {
        using var file = new GardenDb(SqliteOptions.For("unused.db"));
        using var server = new GardenDb(PostgresOptions.For("Host=unused"));
        foreach (var db in new[] { file, server })
        {
            Assert.False(db.Database.HasPendingModelChanges());
            Assert.NotEmpty(db.Database.GetMigrations());
        }
    }

    [Fact]
    public void A_file_that_is_no_garden_is_refused_and_left_alone()
    {
        using var temp = new TempStore();
        var path = Path.Combine(Path.GetDirectoryName(temp.FilePath)!, "holiday.db");
        File.WriteAllText(path, new string('x', 5000));
        var opened = SqliteGardenStore.Open(path);
        Assert.False(opened.Ok);
        Assert.Contains("holiday.db", opened.Problems[0].Message, StringComparison.Ordinal);
        Assert.Equal(new string('x', 5000), File.ReadAllText(path));
    }

    [Fact]
    public void A_garden_of_a_newer_edition_is_refused()
    {
        using var temp = new TempStore();
        using (var db = new GardenDb(SqliteOptions.For(temp.FilePath)))
        {
            db.Database.ExecuteSqlRaw("INSERT INTO __EFMigrationsHistory VALUES ('29991231000000_Later', '99.0.0')");
        }

        var opened = SqliteGardenStore.Open(temp.FilePath);
        Assert.False(opened.Ok);
        Assert.Contains("newer", opened.Problems[0].Message, StringComparison.Ordinal);
    }

    private static object? Ask(GardenDb db, string pragma)
    {
        using var command = db.Database.GetDbConnection().CreateCommand();
        command.CommandText = pragma;
        return command.ExecuteScalar();
    }
}
