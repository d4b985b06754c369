using System.Runtime.CompilerServices;
using Ashery.Gardens;
using Ashery.Journal;
using Ashery.Problems;
using Ashery.Records;
using Ashery.Records.Moving;

namespace Ashery.Cli.Frame;

/// <summary>The stored garden. Apart from all else, so that the database's assemblies are loaded only when a garden is read from it.</summary>
internal static class StoredGardens
{
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static Result<StoredGarden> Load(string place) => With(place, static store => store.Load() is { } stored
        ? Result.Of(stored)
        : Result.Fail<StoredGarden>("garden", "There is no garden stored yet.", "Start ./run once and enter it there, or try --demo."));

    /// <summary>Saves a changed garden; a change made meanwhile by another window is not overwritten.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static Result<string> Save(string place, Garden garden, long basedOn, string what) => With(place, store =>
        store.Save(garden, basedOn, what) is SaveOutcome.Overtaken by
            ? Result.Fail<string>("garden", $"The garden was changed meanwhile ({by.By.What}).", "Run the command again on the garden as it is now; nothing was written.")
            : Result.Of(place));

    private static Result<T> With<T>(string place, Func<IGardenStore, Result<T>> work)
        where T : class
    {
        try
        {
            var records = Databases.Open(place);
            return records.Ok ? work(records.Value.Garden(IRecords.Home)) : Result.Fail<T>(records.Problems);
        }
        catch (StorageTrouble trouble)
        {
            return Result.Fail<T>(trouble.Problem);
        }
    }

    /// <summary>Entries of these kinds of the stored garden's journal that stand.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static Result<IReadOnlyList<Entry>> Entries(string path, IReadOnlyList<string> kinds)
    {
        var records = SqliteRecords.Open(path);
        return records.Ok
            ? Result.Of<IReadOnlyList<Entry>>([.. records.Value.Journal(IRecords.Home).Query(new JournalQuery { Kinds = kinds, AtMost = int.MaxValue }).Select(static e => e.Entry)])
            : Result.Fail<IReadOnlyList<Entry>>(records.Problems);
    }

    /// <summary>Writes a new entry into the stored garden's journal.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static Result<string> Write(string path, Entry entry)
    {
        var records = SqliteRecords.Open(path);
        if (!records.Ok)
        {
            return Result.Fail<string>(records.Problems);
        }

        return records.Value.Journal(IRecords.Home).Write([EntryChange.New(entry)]) is JournalOutcome.Written
            ? Result.Of(path)
            : Result.Fail<string>("save", "The journal already has another entry of this key.", "Run the command again; nothing was written.");
    }
}
