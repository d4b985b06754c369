using Ashery.Records.Model;
using Ashery.Records.Sqlite;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Ashery.Records.Tests;

public sealed class SqliteGardenStoreTests
{
    [Fact]
    public void A_new_file_has_no_garden()
    {
        using var temp = new TempStore();
        Assert.False(temp.Store.HasGarden);
        Assert.Null(temp.Store.Load());
        Assert.Empty(temp.Store.History(10));
    }

    [Fact]
    public void The_second_of_two_windows_is_told_who_was_first_and_changes_nothing()
    {
        using var temp = new TempStore();
        temp.Store.Save(RandomGardens.Small("before"), 0, "begin");
        var other = temp.Open();
        Assert.IsType<SaveOutcome.Saved>(other.Save(RandomGardens.Small("first"), 1, "rename to first"));
        var overtaken = Assert.IsType<SaveOutcome.Overtaken>(temp.Store.Save(RandomGardens.Small("second"), 1, "rename to second"));
        Assert.Equal("rename to first", overtaken.By.What);
        Assert.Equal(2, overtaken.By.Version);
        Assert.Equal("first", temp.Store.Load()!.Garden.Name);
    }

    [Fact]
    public void Of_many_savers_at_once_one_wins_each_round()
    {
        using var temp = new TempStore();
        temp.Store.Save(RandomGardens.Small("0"), 0, "begin");
        for (var round = 1; round <= 5; round++)
        {
            var basedOn = round;
            var outcomes = new SaveOutcome[4];
            Parallel.For(0, outcomes.Length, i =>
                outcomes[i] = temp.Store.Save(RandomGardens.Small(FormattableString.Invariant($"{basedOn}")), basedOn, FormattableString.Invariant($"saver {i}")));
            Assert.Single(outcomes.OfType<SaveOutcome.Saved>());
        }

        Assert.Equal(6, temp.Store.Load()!.Version);
    }

    [Fact]
    public void Earlier_states_can_be_read_again_and_the_oldest_go()
    {
        using var temp = new TempStore();
        const int extra = 5;
        for (var i = 0; i < SqliteGardenStore.StatesKept + extra; i++)
        {
            temp.Store.Save(RandomGardens.Small(FormattableString.Invariant($"garden {i}")), i, FormattableString.Invariant($"change {i}"));
        }

        Assert.Equal("garden 150", temp.Store.LoadState(151)!.Garden.Name);
        Assert.Null(temp.Store.LoadState(extra));
        Assert.NotNull(temp.Store.LoadState(extra + 1));
        var history = temp.Store.History(1000);
        Assert.Equal(SqliteGardenStore.StatesKept, history.Count);
        Assert.Equal(FormattableString.Invariant($"change {SqliteGardenStore.StatesKept + extra - 1}"), history[0].What);
        using var db = new GardenDb(SqliteOptions.For(temp.FilePath));
        Assert.Equal(SqliteGardenStore.StatesKept, db.States.Count());
    }

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
        using var db = new GardenDb(SqliteOptions.For("unused.db"));
        Assert.False(db.Database.HasPendingModelChanges());
        Assert.NotEmpty(db.Database.GetMigrations());
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
