using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;
using Ashery.Records.Sqlite;

namespace Ashery.Records.Tests;

/// <summary>A process killed in the middle of saving loses no save it had answered for.</summary>
public sealed class KillTests
{
    private const string ChildVariable = "ASHERY_TEST_SAVE_UNTIL_KILLED";

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(17)]
    public void Nothing_answered_for_is_lost(int answersBeforeTheKill)
    {
        using var temp = new TempStore();
        var start = new ProcessStartInfo(Environment.ProcessPath!) { RedirectStandardOutput = true, UseShellExecute = false };
        if (Path.GetFileNameWithoutExtension(Environment.ProcessPath) is "dotnet")
        {
            start.ArgumentList.Add(typeof(KillTests).Assembly.Location);
        }

        start.Environment[ChildVariable] = temp.FilePath;
        using var child = Process.Start(start)!;
        var answered = 0L;
        try
        {
            while (answered < answersBeforeTheKill && child.StandardOutput.ReadLine() is { } line)
            {
                answered = long.Parse(line, CultureInfo.InvariantCulture);
            }
        }
        finally
        {
            child.Kill();
            child.WaitForExit();
        }

        var loaded = temp.Open().Load();
        Assert.Equal(answersBeforeTheKill, answered);
        Assert.NotNull(loaded);
        Assert.True(loaded.Version >= answered, FormattableString.Invariant($"answered {answered}, found {loaded.Version}"));
        Assert.Equal(FormattableString.Invariant($"garden {loaded.Version}"), loaded.Garden.Name);
        Assert.Equal(loaded.Version, temp.Open().History(1000).Count);
    }

    /// <summary>Turns this program into the one that is killed, when told to.</summary>
#pragma warning disable CA2255 // the test program is its own child: it must branch off before the test runner starts
    [ModuleInitializer]
#pragma warning restore CA2255
    internal static void SaveUntilKilled()
    {
        if (Environment.GetEnvironmentVariable(ChildVariable) is not { } path)
        {
            return;
        }

        var store = SqliteGardenStore.Open(path).Value!;
        for (var version = 0L; version < 10_000; version++)
        {
            store.Save(RandomGardens.Small(FormattableString.Invariant($"garden {version + 1}")), version, "again");
            Console.Out.WriteLine((version + 1).ToString(CultureInfo.InvariantCulture));
            Console.Out.Flush();
        }

        Environment.Exit(0);
    }
}
