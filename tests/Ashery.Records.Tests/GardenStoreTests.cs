using Ashery.Records.Stores;
using Ashery.Records.Tests.Support;

namespace Ashery.Records.Tests;

/// <summary>What the store of a garden promises on either database.</summary>
public sealed class GardenStoreTests
{
    [Theory]
    [InlineData(Scratch.Sqlite)]
    [InlineData(Scratch.Postgres)]
    public void A_new_database_has_no_garden(string database)
    {
        using var temp = Scratch.Of(database);
        Assert.False(temp.Store.HasGarden);
        Assert.Null(temp.Store.Load());
        Assert.Empty(temp.Store.History(10));
    }

    [Theory]
    [InlineData(Scratch.Sqlite)]
    [InlineData(Scratch.Postgres)]
    public void The_second_of_two_windows_is_told_who_was_first_and_changes_nothing(string database)
    {
        using var temp = Scratch.Of(database);
        temp.Store.Save(RandomGardens.Small("before"), 0, "begin");
        var other = temp.Open().Garden(IRecords.Home);
        Assert.IsType<SaveOutcome.Saved>(other.Save(RandomGardens.Small("first"), 1, "rename to first"));
        var overtaken = Assert.IsType<SaveOutcome.Overtaken>(temp.Store.Save(RandomGardens.Small("second"), 1, "rename to second"));
        Assert.Equal("rename to first", overtaken.By.What);
        Assert.Equal(2, overtaken.By.Version);
        Assert.Equal("first", temp.Store.Load()!.Garden.Name);
    }

    [Theory]
    [InlineData(Scratch.Sqlite)]
    [InlineData(Scratch.Postgres)]
    public void Of_many_savers_at_once_one_wins_each_round(string database)
    {
        using var temp = Scratch.Of(database);
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

    [Theory]
    [InlineData(Scratch.Sqlite)]
    [InlineData(Scratch.Postgres)]
    public void Earlier_states_can_be_read_again_and_the_oldest_go(string database)
    {
        using var temp = Scratch.Of(database);
        const int extra = 5;
        for (var i = 0; i < DbGardenStore.StatesKept + extra; i++)
        {
            temp.Store.Save(RandomGardens.Small(FormattableString.Invariant($"garden {i}")), i, FormattableString.Invariant($"change {i}"));
        }

        Assert.Equal("garden 150", temp.Store.LoadState(151)!.Garden.Name);
        Assert.Null(temp.Store.LoadState(extra));
        Assert.NotNull(temp.Store.LoadState(extra + 1));
        var history = temp.Store.History(1000);
        Assert.Equal(DbGardenStore.StatesKept, history.Count);
        Assert.Equal(FormattableString.Invariant($"change {DbGardenStore.StatesKept + extra - 1}"), history[0].What);
        using var db = temp.Records.Engine.Connect();
        Assert.Equal(DbGardenStore.StatesKept, db.States.Count());
    }
}
