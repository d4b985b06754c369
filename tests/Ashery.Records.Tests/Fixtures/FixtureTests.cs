using System.Diagnostics;
using System.Globalization;
using System.Text;
using Ashery.Exchange.Gardens;
using Ashery.Gardens;
using Ashery.Records.Postgres;
using Ashery.Records.Sqlite;
using Ashery.Records.Tests.Journals;
using Ashery.Records.Tests.Support;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql;

namespace Ashery.Records.Tests.Fixtures;

/// <summary>
/// Of every schema that was ever committed there is a filled database as SQL, and each comes forward to today's with what it holds. A new migration
/// makes its own: ASHERY_WRITE_FIXTURES=1, once, and committed; older ones are never made again.
/// </summary>
public sealed class FixtureTests
{
    private static bool Writes => Environment.GetEnvironmentVariable("ASHERY_WRITE_FIXTURES") == "1";

    public static TheoryData<string, string> Schemas
    {
        get
        {
            var data = new TheoryData<string, string>();
            using var file = new Model.GardenDb(SqliteOptions.For("unused.db"));
            using var server = new Model.GardenDb(PostgresOptions.For("Host=unused"));
            file.Database.GetMigrations().ToList().ForEach(m => data.Add(Scratch.Sqlite, m));
            server.Database.GetMigrations().ToList().ForEach(m => data.Add(Scratch.Postgres, m));
            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Schemas))]
    public void Every_schema_comes_forward_with_what_it_holds(string database, string migration)
    {
        var fixture = Path.Combine(Folder(), $"{database.ToLowerInvariant()}-{migration}.sql");
        if (Writes && !File.Exists(fixture))
        {
            File.WriteAllText(fixture, database == Scratch.Sqlite ? OfFile(migration) : OfServer(migration));
        }

        Assert.True(File.Exists(fixture), $"No filled database of {migration}: run this test with ASHERY_WRITE_FIXTURES=1 and commit {fixture}.");
        var folder = Scratch.NewFolder();
        try
        {
            Ashery.Records.Stores.DbRecords records = database == Scratch.Sqlite ? FromFile(Path.Combine(folder, "old.db"), fixture) : FromServer(fixture);
            var garden = records.Garden(IRecords.Home).Load()!;
            var expected = Filled();
            Assert.Equal(2, garden.Version);
            Assert.Equal(expected.Name, garden.Garden.Name);
            Assert.Equal(expected.Pots.Select(Written.Out), garden.Garden.Pots.Select(Written.Out));
            Assert.Equal(expected.Feeds.Select(Written.Out), garden.Garden.Feeds.Select(Written.Out));
            Assert.Equal(expected.Shelf.Select(static b => b.Id), garden.Garden.Shelf.Select(static b => b.Id));
            Assert.Equal(["second", "first"], records.Garden(IRecords.Home).History(5).Select(static c => c.What));
            Assert.IsType<SaveOutcome.Saved>(records.Garden(IRecords.Home).Save(garden.Garden, 2, "goes on"));
            if (database == Scratch.Postgres || HasJournal(migration))
            {
                var found = Assert.Single(records.Journal(IRecords.Home).Query(new JournalQuery { Words = "kept since" }));
                Assert.Equal(2, found.Revision);
                Assert.Equal(2, records.Journal(IRecords.Home).Revisions(found.Entry.Id).Count);
            }

            Assert.IsType<JournalOutcome.Written>(records.Journal(IRecords.Home).Write([EntryChange.New(RandomEntries.Note("goes on"))]));
        }
        finally
        {
            SqliteConnection.ClearAllPools();
            Directory.Delete(folder, recursive: true);
        }
    }

    private static bool HasJournal(string migration) => string.CompareOrdinal(migration, "20261125173303") >= 0;

    private static Garden Filled()
    {
        var demo = DemoGarden.Create(new DateOnly(2027, 3, 1));
        return demo with { Shelf = [.. demo.Shelf.Take(3)], Pots = [.. demo.Pots.Take(4)], Feeds = [.. demo.Feeds.Take(2)], Waters = [.. demo.Waters.Take(1)] };
    }

    private static void Fill(IRecords records)
    {
        records.Garden(IRecords.Home).Save(Filled() with { Name = "before" }, 0, "first");
        records.Garden(IRecords.Home).Save(Filled(), 1, "second");
        var entry = RandomEntries.Note("kept since then", 2, "rose-1") with { Id = new Guid("11111111-2222-3333-4444-555555555555") };
        records.Journal(IRecords.Home).Write([EntryChange.New(entry with { Note = "kept" })]);
        records.Journal(IRecords.Home).Write([new(entry.Id, 1, entry)]);
    }

    // What today's tables hold, as far as the old schema has a place for it.
    private static string OfFile(string migration)
    {
        var folder = Scratch.NewFolder();
        var (today, old) = (Path.Combine(folder, "today.db"), Path.Combine(folder, "old.db"));
        Fill(SqliteRecords.Open(today).Value!);
        using var db = new Model.GardenDb(SqliteOptions.For(old));
        db.GetService<IMigrator>().Migrate(migration);
        SqliteConnection.ClearAllPools();
        using var connection = new SqliteConnection($"Data Source={old};Pooling=false;Foreign Keys=false");
        connection.Open();
        Do(connection, $"ATTACH '{today}' AS today");
        var text = new StringBuilder("PRAGMA foreign_keys = 0;\nBEGIN;\n");
        var made = Rows(connection, "SELECT type, name, sql FROM main.sqlite_master WHERE sql IS NOT NULL AND name NOT LIKE 'sqlite_%' AND name NOT LIKE 'entry_words_%' OR type = 'trigger' ORDER BY type = 'trigger', type = 'index', rowid");
        made.ForEach(m => text.Append(CultureInfo.InvariantCulture, $"{m[2]};\n"));
        foreach (var table in made.Where(static m => m[0] == "table" && m[1] != "entry_words").Select(static m => m[1]))
        {
            var columns = Rows(connection, $"SELECT name FROM pragma_table_info('{table}', 'main')").Select(static c => c[0])
                .Intersect(Rows(connection, $"SELECT name FROM pragma_table_info('{table}', 'today')").Select(static c => c[0])).Select(static c => $"\"{c}\"").ToList();
            var from = table == "__EFMigrationsHistory" ? "main" : "today";
            var values = string.Join(" || ', ' || ", columns.Select(static c => $"quote({c})"));
            Rows(connection, $"SELECT {values} FROM {from}.\"{table}\"").ForEach(r => text.Append(CultureInfo.InvariantCulture, $"INSERT INTO \"{table}\" ({string.Join(", ", columns)}) VALUES ({r[0]});\n"));
        }

        connection.Close();
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
        return text.Append("COMMIT;\n").ToString();
    }

    private static SqliteRecords FromFile(string path, string fixture)
    {
        using (var connection = new SqliteConnection($"Data Source={path};Pooling=false"))
        {
            connection.Open();
            Do(connection, File.ReadAllText(fixture));
        }

        var opened = SqliteRecords.Open(path);
        Assert.True(opened.Ok, string.Join(' ', opened.Problems));
        return opened.Value;
    }

    private static string OfServer(string migration)
    {
        using var today = Scratch.Of(Scratch.Postgres);
        Assert.Equal(migration, today.Records.Engine.Connect().Database.GetMigrations().Last());
        Fill(today.Records);
        var start = new ProcessStartInfo("pg_dump") { RedirectStandardOutput = true, UseShellExecute = false };
        new List<string> { "--inserts", "--column-inserts", "--no-owner", "--dbname", today.Database }.ForEach(start.ArgumentList.Add);
        using var dump = Process.Start(start)!;
        var text = dump.StandardOutput.ReadToEnd();
        dump.WaitForExit();
        Assert.Equal(0, dump.ExitCode);

        // Words to the tool psql, and comments, are not for the server.
        return string.Join('\n', text.Split('\n').Where(static l => !l.StartsWith('\\') && !l.StartsWith("--", StringComparison.Ordinal) && l.Length > 0)) + "\n";
    }

    private static PostgresRecords FromServer(string fixture)
    {
        var address = ThrowawayCluster.NewDatabase();
        using (var connection = new NpgsqlConnection(PostgresAddress.Read(address).Value!.ConnectionString + ";Pooling=false"))
        {
            connection.Open();
            using var command = connection.CreateCommand();
            command.CommandText = File.ReadAllText(fixture);
            command.ExecuteNonQuery();
        }

        var opened = PostgresRecords.Open(address);
        Assert.True(opened.Ok, string.Join(' ', opened.Problems));
        return opened.Value;
    }

    private static List<string[]> Rows(SqliteConnection connection, string question)
    {
        using var command = connection.CreateCommand();
        command.CommandText = question;
        using var reader = command.ExecuteReader();
        List<string[]> rows = [];
        while (reader.Read())
        {
            rows.Add([.. Enumerable.Range(0, reader.FieldCount).Select(i => reader.GetValue(i).ToString()!)]);
        }

        return rows;
    }

    private static void Do(SqliteConnection connection, string statement)
    {
        using var command = connection.CreateCommand();
        command.CommandText = statement;
        command.ExecuteNonQuery();
    }

    private static string Folder([System.Runtime.CompilerServices.CallerFilePath] string here = "") => Path.GetDirectoryName(here)!;
}
