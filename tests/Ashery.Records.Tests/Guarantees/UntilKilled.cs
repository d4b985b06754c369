using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;
using Ashery.Records.Sqlite;
using Ashery.Records.Tests.Journals;

namespace Ashery.Records.Tests.Guarantees;

/// <summary>This test program as its own child: it writes gardens and entries and says each that the store has answered for, until it is killed.</summary>
internal static class UntilKilled
{
    private const string Variable = "ASHERY_TEST_WRITE_UNTIL_KILLED";

    /// <summary>Starts the child; its lines are <c>state VERSION</c> and <c>entry ID REVISION</c>.</summary>
    public static Process Start(string path)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath!) { RedirectStandardOutput = true, UseShellExecute = false };
        if (Path.GetFileNameWithoutExtension(Environment.ProcessPath) is "dotnet")
        {
            start.ArgumentList.Add(typeof(UntilKilled).Assembly.Location);
        }

        start.Environment[Variable] = path;
        return Process.Start(start)!;
    }

    /// <summary>Turns this program into the one that is killed, when told to.</summary>
#pragma warning disable CA2255 // the test program is its own child: it must branch off before the test runner starts
    [ModuleInitializer]
#pragma warning restore CA2255
    internal static void Run()
    {
        if (Environment.GetEnvironmentVariable(Variable) is not { } path)
        {
            return;
        }

        var records = SqliteRecords.Open(path).Value!;
        var (store, journal) = (records.Garden(IRecords.Home), records.Journal(IRecords.Home));
        while (true)
        {
            var version = store.History(1) is [var newest, ..] ? newest.Version : 0;
            store.Save(RandomGardens.Small(FormattableString.Invariant($"garden {version + 1}")), version, "again");
            Say($"state {version + 1}");
            var entry = RandomEntries.Note(FormattableString.Invariant($"note {version}"), 1, "rose-1", "rose-2");
            journal.Write([EntryChange.New(entry)]);
            Say($"entry {entry.Id} 1");
            journal.Write([new(entry.Id, 1, entry with { Note = "changed", Pots = ["rose-3"] })]);
            Say($"entry {entry.Id} 2");
            journal.Undo(entry.Id, 2);
            Say($"entry {entry.Id} 3");
        }
    }

    private static void Say(FormattableString line)
    {
        Console.Out.WriteLine(line.ToString(CultureInfo.InvariantCulture));
        Console.Out.Flush();
    }
}
