using Ashery.Records.Postgres;
using Ashery.Records.Sqlite;
using Ashery.Records.Stores;
using Microsoft.Data.Sqlite;
using Npgsql;

namespace Ashery.Records.Tests.Support;

/// <summary>A database of one test, of one kind or the other, gone afterwards.</summary>
public abstract class Scratch : IDisposable
{
    public const string Sqlite = "SQLite", Postgres = "PostgreSQL";

    public abstract DbRecords Records { get; }

    /// <summary>File or address.</summary>
    public abstract string Database { get; }

    public IGardenStore Store => Records.Garden(IRecords.Home);

    /// <summary>The same database as another process would open it.</summary>
    public abstract DbRecords Open();

    public IJournal Journal(string by = "") => Records.Journal(IRecords.Home, by);

    /// <summary>A folder in memory where there is one: these tests are about what is written, not about how fast a disk is.</summary>
    public static string NewFolder()
    {
        const string memory = "/dev/shm";
        var folder = Path.Combine(Directory.Exists(memory) ? memory : Path.GetTempPath(), $"ashery-records-{Guid.NewGuid():N}");
        return Directory.CreateDirectory(folder).FullName;
    }

    public static Scratch Of(string kind) => kind == Sqlite ? new SqliteScratch() : new PostgresScratch();

    public abstract void Dispose();

    private sealed class SqliteScratch : Scratch
    {
        private readonly string folder = NewFolder();

        public SqliteScratch() => Records = Open();

        public override DbRecords Records { get; }

        public override string Database => Path.Combine(folder, "garden.db");

        public override DbRecords Open() => Opened(SqliteRecords.Open(Database));

        public override void Dispose()
        {
            SqliteConnection.ClearAllPools();
            Directory.Delete(folder, recursive: true);
        }
    }

    private sealed class PostgresScratch : Scratch
    {
        public PostgresScratch()
        {
            Database = ThrowawayCluster.NewDatabase(static address => Opened(PostgresRecords.Open(address)));
            Records = Open();
        }

        public override DbRecords Records { get; }

        public override string Database { get; }

        public override DbRecords Open() => Opened(PostgresRecords.Open(Database));

        public override void Dispose()
        {
            using var connection = new NpgsqlConnection(((PostgresRecords)Records).ConnectionString);
            NpgsqlConnection.ClearPool(connection);
        }
    }

    private static T Opened<T>(Problems.Result<T> opened)
        where T : class
    {
        Assert.True(opened.Ok, string.Join(' ', opened.Problems));
        return opened.Value;
    }
}
