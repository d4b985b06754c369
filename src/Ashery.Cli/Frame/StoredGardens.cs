using System.Runtime.CompilerServices;
using Ashery.Gardens;
using Ashery.Problems;
using Ashery.Records;
using Ashery.Records.Sqlite;

namespace Ashery.Cli.Frame;

/// <summary>The stored garden. Apart from all else, so that the database's assemblies are loaded only when a garden is read from it.</summary>
internal static class StoredGardens
{
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static Result<StoredGarden> Load(string path)
    {
        var store = SqliteGardenStore.Open(path);
        if (!store.Ok)
        {
            return Result.Fail<StoredGarden>(store.Problems);
        }

        return store.Value.Load() is { } stored
            ? Result.Of(stored)
            : Result.Fail<StoredGarden>("garden", "The garden file holds no garden yet.", "Start ./run once and enter it there, or try --demo.");
    }

    /// <summary>Saves a changed garden; a change made meanwhile by another window is not overwritten.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static Result<string> Save(string path, Garden garden, long basedOn, string what)
    {
        var store = SqliteGardenStore.Open(path);
        if (!store.Ok)
        {
            return Result.Fail<string>(store.Problems);
        }

        return store.Value.Save(garden, basedOn, what) is SaveOutcome.Overtaken by
            ? Result.Fail<string>("garden", $"The garden was changed meanwhile ({by.By.What}).", "Run the command again on the garden as it is now; nothing was written.")
            : Result.Of(path);
    }
}
