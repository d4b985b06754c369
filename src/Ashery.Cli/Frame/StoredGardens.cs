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

    /// <summary>Entries of these kinds of the stored garden's journal that stand.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static Result<IReadOnlyList<Entry>> Entries(string place, IReadOnlyList<string> kinds) => In(place, records =>
        Result.Of<IReadOnlyList<Entry>>([.. records.Journal(IRecords.Home).Query(new JournalQuery { Kinds = kinds, AtMost = int.MaxValue }).Select(static e => e.Entry)]));

    /// <summary>Writes a new entry into the stored garden's journal.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static Result<string> Write(string place, Entry entry) => In(place, records =>
        records.Journal(IRecords.Home).Write([EntryChange.New(entry)]) is JournalOutcome.Written
            ? Result.Of(place)
            : Result.Fail<string>("save", "The journal already has another entry of this key.", "Run the command again; nothing was written."));

    private static Result<T> With<T>(string place, Func<IGardenStore, Result<T>> work)
        where T : class => In(place, records => work(records.Garden(IRecords.Home)));

    private static Result<T> In<T>(string place, Func<IRecords, Result<T>> work)
        where T : class
    {
        try
        {
            var records = Databases.Open(place);
            return records.Ok ? work(records.Value) : Result.Fail<T>(records.Problems);
        }
        catch (StorageTrouble trouble)
        {
            return Result.Fail<T>(trouble.Problem);
        }
    }
}
