using Ashery.Problems;
using Ashery.Records.Postgres;
using Ashery.Records.Sqlite;
using Ashery.Records.Stores;

namespace Ashery.Records.Moving;

/// <summary>Opens whichever database a text names.</summary>
public static class Databases
{
    /// <summary>True when a text names a server and not a file.</summary>
    public static bool IsServer(string database) => PostgresAddress.Is(database);

    /// <summary><c>postgres://...</c>, else the path of a SQLite file.</summary>
    public static Result<DbRecords> Open(string database, TimeProvider? clock = null)
    {
        if (PostgresAddress.Is(database))
        {
            var shared = PostgresRecords.Open(database, clock);
            return shared.Ok ? Result.Of<DbRecords>(shared.Value) : Result.Fail<DbRecords>(shared.Problems);
        }

        var file = SqliteRecords.Open(database, clock);
        return file.Ok ? Result.Of<DbRecords>(file.Value) : Result.Fail<DbRecords>(file.Problems);
    }
}
