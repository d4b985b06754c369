using System.Diagnostics;
using System.Globalization;
using Ashery.Records.Sqlite;
using Ashery.Records.Tests.Support;
using Microsoft.Data.Sqlite;

namespace Ashery.Records.Tests.Guarantees;

/// <summary>
/// A process killed (SIGKILL) at a random moment of writing loses nothing it had answered for. The killer keeps the list of the answers. 20 kills;
/// with ASHERY_KILLS=200 as many as that.
/// </summary>
public sealed class KillTests
{
    private static readonly int Kills = int.Parse(Environment.GetEnvironmentVariable("ASHERY_KILLS") ?? "20", CultureInfo.InvariantCulture);

    [Fact]
    public void Nothing_answered_for_is_lost()
    {
        // Two files side by side, since a child spends most of its life on starting.
        const int lanes = 2;
        var seed = Environment.TickCount;
        var answers = new int[lanes];
        Parallel.For(0, lanes, lane => answers[lane] = Lane(Kills / lanes, seed + lane));
        Assert.True(answers.Sum() > Kills, FormattableString.Invariant($"{answers.Sum()} answers in {Kills} kills: too few to say anything."));
        TestContext.Current.TestOutputHelper?.WriteLine(FormattableString.Invariant($"{Kills} kills, {answers.Sum()} answers, none lost"));
    }

    private static int Lane(int kills, int seed)
    {
        var random = new Random(seed);
        var folder = Scratch.NewFolder();
        var path = Path.Combine(folder, "garden.db");
        Dictionary<string, int> entries = [];
        var (version, answers, files) = (0L, 0, 0);
        try
        {
            for (var kill = 0; kill < kills; kill++)
            {
                // Now and then from the start: then the kill may fall into the making of the tables.
                if (kill % 10 == 0)
                {
                    path = Path.Combine(folder, FormattableString.Invariant($"garden-{files++}.db"));
                    entries.Clear();
                    version = 0;
                }

                foreach (var answer in Killed(path, random))
                {
                    answers++;
                    switch (answer.Split(' '))
                    {
                        case ["state", var number]:
                            version = long.Parse(number, CultureInfo.InvariantCulture);
                            break;
                        case ["entry", var id, var revision]:
                            entries[id] = int.Parse(revision, CultureInfo.InvariantCulture);
                            break;
                        default:
                            Assert.Fail($"The child said {answer}");
                            break;
                    }
                }

                Check(path, version, entries, FormattableString.Invariant($"seed {seed}, kill {kill}"));
            }

            return answers;
        }
        finally
        {
            SqliteConnection.ClearAllPools();
            Directory.Delete(folder, recursive: true);
        }
    }

    // Lets it write a while, kills it, and gives what it answered for, to the last line that left it.
    private static List<string> Killed(string path, Random random)
    {
        List<string> answers = [];
        using var child = UntilKilled.Start(path);
        try
        {
            var enough = random.Next(0, 25);
            if (enough == 0)
            {
                Thread.Sleep(random.Next(0, 900));
            }

            while (answers.Count < enough && child.StandardOutput.ReadLine() is { } line)
            {
                answers.Add(line);
            }

            // A moment within a write, not always right after an answer.
            var spin = Stopwatch.StartNew();
            var ticks = random.NextInt64(0, TimeSpan.TicksPerMillisecond * 8);
            while (spin.ElapsedTicks < ticks)
            {
                Thread.SpinWait(20);
            }
        }
        finally
        {
            child.Kill();
            child.WaitForExit();
        }

        while (child.StandardOutput.ReadLine() is { } line)
        {
            answers.Add(line);
        }

        return answers;
    }

    private static void Check(string path, long version, Dictionary<string, int> entries, string when)
    {
        // It opens by itself, with no repair by hand, and takes a write.
        var opened = SqliteRecords.Open(path);
        Assert.True(opened.Ok, $"{when}: {string.Join(' ', opened.Problems)}");
        var (store, journal) = (opened.Value.Garden(IRecords.Home), opened.Value.Journal(IRecords.Home));
        var newest = store.Load();
        Assert.True((newest?.Version ?? 0) >= version, FormattableString.Invariant($"{when}: answered for state {version}, found {newest?.Version}"));
        Assert.True(newest is null || newest.Garden.Name == FormattableString.Invariant($"garden {newest.Version}"), when);
        foreach (var (id, revision) in entries)
        {
            var found = journal.Find(Guid.Parse(id));
            Assert.True(found?.Revision >= revision, FormattableString.Invariant($"{when}: answered for revision {revision} of {id}, found {found?.Revision}"));
        }

        using var connection = new SqliteConnection($"Data Source={path};Pooling=false");
        connection.Open();
        Assert.Equal("ok", Ask(connection, "PRAGMA integrity_check"));
        Assert.Null(Ask(connection, "PRAGMA foreign_key_check"));
        Ask(connection, "INSERT INTO entry_words (entry_words) VALUES ('integrity-check')");
        SqliteConnection.ClearAllPools();
    }

    private static object? Ask(SqliteConnection connection, string question)
    {
        using var command = connection.CreateCommand();
        command.CommandText = question;
        return command.ExecuteScalar();
    }
}
