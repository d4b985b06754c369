using Ashery.Gardens;
using Ashery.Problems;
using Ashery.Records.Stores;

namespace Ashery.Records.Sqlite;

/// <summary>The only garden of a machine without accounts (<see cref="IRecords.Home"/>).</summary>
public sealed class SqliteGardenStore : IGardenStore
{
    /// <summary>How many states are kept, the newest first.</summary>
    public const int StatesKept = DbGardenStore.StatesKept;

    private readonly IGardenStore home;

    private SqliteGardenStore(SqliteRecords records)
    {
        Records = records;
        home = records.Garden(IRecords.Home);
    }

    /// <summary>The file.</summary>
    public string FilePath => Records.FilePath;

    /// <summary>All that is in the file.</summary>
    public SqliteRecords Records { get; }

    public bool HasGarden => home.HasGarden;

    /// <summary>Opens the file, makes it when there is none, and brings its tables up to date.</summary>
    public static Result<SqliteGardenStore> Open(string path, TimeProvider? clock = null)
    {
        var records = SqliteRecords.Open(path, clock);
        return records.Ok ? Result.Of(new SqliteGardenStore(records.Value)) : Result.Fail<SqliteGardenStore>(records.Problems);
    }

    public StoredGarden? Load() => home.Load();

    public StoredGarden? LoadState(long version) => home.LoadState(version);

    public IReadOnlyDictionary<string, DateTimeOffset> PotsSince() => home.PotsSince();

    public SaveOutcome Save(Garden garden, long basedOn, string what) => home.Save(garden, basedOn, what);

    public IReadOnlyList<Change> History(int atMost) => home.History(atMost);
}
