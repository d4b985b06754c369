using Ashery.Records.Sqlite;
using Microsoft.Data.Sqlite;

namespace Ashery.Records.Tests;

/// <summary>A garden file in a folder of its own, gone afterwards.</summary>
internal sealed class TempStore : IDisposable
{
    private readonly string folder = Support.Scratch.NewFolder();

    public TempStore() => Store = Open();

    public string FilePath => Path.Combine(folder, "garden.db");

    public SqliteGardenStore Store { get; }

    public SqliteGardenStore Open()
    {
        var opened = SqliteGardenStore.Open(FilePath);
        Assert.True(opened.Ok, string.Join(' ', opened.Problems));
        return opened.Value;
    }

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }
}
