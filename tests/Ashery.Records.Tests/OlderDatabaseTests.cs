using Ashery.Records.Model;
using Ashery.Records.Sqlite;
using Ashery.Solutions.Waters;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace Ashery.Records.Tests;

/// <summary>A file made before gardens had waters opens, keeps what it holds and takes waters.</summary>
public sealed class OlderDatabaseTests : IDisposable
{
    private const string Name = "an old garden", First = "FirstGarden";

    private readonly string folder = Directory.CreateTempSubdirectory("ashery-older-").FullName;

    private string FilePath => Path.Combine(folder, "garden.db");

    [Fact]
    public void A_database_of_the_first_migration_keeps_its_garden_and_takes_a_water()
    {
        MakeOld();
        var store = SqliteGardenStore.Open(FilePath).Value!;
        var old = store.Load()!;
        Assert.Equal(1, old.Version);
        Assert.Equal(Name, old.Garden.Name);
        Assert.Equal("rose", Assert.Single(old.Garden.Pots).CropId);
        Assert.Empty(old.Garden.Waters);
        Assert.Null(old.Garden.Settings.Water);

        var water = new WaterReport { Id = "tap", Name = "tap", Lines = [new("Ca", 40), new("NO3-N", 2, "mg/L", Below: true)], PH = 7.4, Ec = new(310, "µS/cm", 20) };
        var saved = store.Save(old.Garden with { Waters = [water], Settings = old.Garden.Settings with { Water = "tap" } }, 1, "a water");
        Assert.IsType<SaveOutcome.Saved>(saved);
        var back = SqliteGardenStore.Open(FilePath).Value!.Load()!.Garden;
        Assert.Equal(Written.Out(water), Written.Out(Assert.Single(back.Waters)));
        Assert.Equal("tap", back.Settings.Water);

        // Undo is a read of the state before.
        Assert.Empty(store.LoadState(1)!.Garden.Waters);
    }

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    // By SQL, since the model of today has columns that the old file lacks.
    private void MakeOld()
    {
        using var db = new GardenDb(SqliteOptions.For(FilePath));
        var first = db.Database.GetMigrations().First();
        Assert.EndsWith(First, first, StringComparison.Ordinal);
        db.GetService<IMigrator>().Migrate(first);
        Assert.DoesNotContain("DefaultWater", Columns(db), StringComparer.Ordinal);
        db.Database.ExecuteSql($"INSERT INTO garden_state (Number, SavedAtTicks, What, Name, IsDemo, PlaceName, Latitude, HasNormals, Currency, UsUnits, ScaleStep) VALUES (1, 0, 'begin', {Name}, 0, 'a place', 50, 0, 'EUR', 0, 1)");
        db.Database.ExecuteSql($"INSERT INTO pot (State, Position, PotId, Name, CropId, Litres, Medium, Stage, Count) VALUES (1, 0, 'p', 'p', 'rose', 5, 'PeatMix', 'Mature', 1)");
    }

    private static List<string> Columns(GardenDb db) => [.. db.Database.SqlQueryRaw<string>("SELECT name AS Value FROM pragma_table_info('garden_state')")];
}
