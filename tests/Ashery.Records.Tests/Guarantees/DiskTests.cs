using System.Diagnostics;
using System.Runtime.CompilerServices;
using Ashery.Records.Sqlite;
using Ashery.Records.Tests.Journals;
using Ashery.Records.Tests.Support;
using Microsoft.Data.Sqlite;

namespace Ashery.Records.Tests.Guarantees;

/// <summary>A disk that is full or may only be read: words that say so, and nothing half-written.</summary>
public sealed class DiskTests : IDisposable
{
    private const string Variable = "ASHERY_TEST_OPEN_READ_ONLY";

    private readonly string folder = Scratch.NewFolder();

    private string FilePath => Path.Combine(folder, "garden.db");

    [Fact]
    public void A_full_disk_says_so_and_keeps_what_was()
    {
        var records = SqliteRecords.Open(FilePath).Value!;
        records.Garden(IRecords.Home).Save(RandomGardens.Small("before"), 0, "begin");
        records.Journal(IRecords.Home).Write([EntryChange.New(RandomEntries.Note("before"))]);
        SqliteConnection.ClearAllPools();
        var pages = (int)(new FileInfo(FilePath).Length / 4096);

        var full = SqliteRecords.Open(FilePath, null, mostPages: pages + 2).Value!;
        var store = full.Garden(IRecords.Home);
        var trouble = Assert.Throws<StorageTrouble>(() => Fill(store));
        Assert.Contains("full", trouble.Problem.Message, StringComparison.Ordinal);
        Assert.Contains("room", trouble.Problem.WayOut, StringComparison.Ordinal);
        var journal = full.Journal(IRecords.Home);
        var count = journal.Count(new JournalQuery());
        var many = Enumerable.Range(0, 300).Select(static n => EntryChange.New(RandomEntries.Note(FormattableString.Invariant($"{n} ") + new string('x', 500)))).ToList();
        Assert.Throws<StorageTrouble>(() => journal.Write(many));
        Assert.Equal(count, journal.Count(new JournalQuery()));

        // With room again it goes on.
        SqliteConnection.ClearAllPools();
        var roomy = SqliteRecords.Open(FilePath).Value!;
        Assert.IsType<JournalOutcome.Written>(roomy.Journal(IRecords.Home).Write(many));
        var newest = roomy.Garden(IRecords.Home).Load()!;
        Assert.Equal(roomy.Garden(IRecords.Home).History(1)[0].Version, newest.Version);
    }

    [Fact]
    public void A_disk_that_may_only_be_read_says_so()
    {
        var records = SqliteRecords.Open(FilePath).Value!;
        records.Garden(IRecords.Home).Save(RandomGardens.Small("before"), 0, "begin");
        SqliteConnection.ClearAllPools();
        Set(writable: false);
        var said = AsOrdinaryUser(FilePath);
        Set(writable: true);
        Assert.StartsWith("problem: ", said, StringComparison.Ordinal);
        Assert.Contains(FilePath, said, StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", said, StringComparison.Ordinal);
        Assert.Equal("before", SqliteRecords.Open(FilePath).Value!.Garden(IRecords.Home).Load()!.Garden.Name);
    }

    /// <summary>The child: opens and saves once, and says how that ended.</summary>
#pragma warning disable CA2255 // branches off before the test runner starts
    [ModuleInitializer]
#pragma warning restore CA2255
    internal static void OpenAndSave()
    {
        if (Environment.GetEnvironmentVariable(Variable) is not { } path)
        {
            return;
        }

        try
        {
            var opened = SqliteRecords.Open(path);
            Console.Out.WriteLine(opened.Ok
                ? "saved: " + opened.Value.Garden(IRecords.Home).Save(RandomGardens.Small("after"), 1, "again")
                : "problem: " + string.Join(' ', opened.Problems));
        }
        catch (StorageTrouble trouble)
        {
            Console.Out.WriteLine("problem: " + trouble.Problem);
        }

        Console.Out.Flush();
        Environment.Exit(0);
    }

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        Set(writable: true);
        Directory.Delete(folder, recursive: true);
    }

    private static void Fill(IGardenStore store)
    {
        for (var version = 1L; version < 200; version++)
        {
            store.Save(RandomGardens.Small(new string('n', 2000)), version, "more");
        }
    }

    private void Set(bool writable)
    {
        File.SetUnixFileMode(FilePath, UnixFileMode.UserRead | (writable ? UnixFileMode.UserWrite : UnixFileMode.None));
        File.SetUnixFileMode(folder, UnixFileMode.UserRead | UnixFileMode.UserExecute | (writable ? UnixFileMode.UserWrite : UnixFileMode.None));
    }

    // Root may write anywhere, so as root the right to do that is given away first (capabilities(7): CAP_DAC_OVERRIDE).
    private static string AsOrdinaryUser(string path)
    {
        var start = new ProcessStartInfo { RedirectStandardOutput = true, UseShellExecute = false };
        List<string> words = Environment.UserName == "root"
            ? ["setpriv", "--bounding-set", "-dac_override,-dac_read_search", "--inh-caps", "-dac_override,-dac_read_search", Environment.ProcessPath!]
            : [Environment.ProcessPath!];
        if (Path.GetFileNameWithoutExtension(Environment.ProcessPath) is "dotnet")
        {
            words.Add(typeof(DiskTests).Assembly.Location);
        }

        start.FileName = words[0];
        words.Skip(1).ToList().ForEach(start.ArgumentList.Add);
        start.Environment[Variable] = path;
        using var child = Process.Start(start)!;
        var said = child.StandardOutput.ReadToEnd();
        child.WaitForExit();
        return said;
    }
}
