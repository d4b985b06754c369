using Ashery.Journal;

namespace Ashery.Web.Pages.Diary;

/// <summary>What a round of the garden can note for many pots.</summary>
internal static class RoundKinds
{
    public const string Sighting = "sighting";

    /// <summary>Word in the address, name, and a word on it.</summary>
    public static IReadOnlyList<(string Word, string Name)> All { get; } =
    [
        .. Enum.GetValues<MeasuredKind>().Select(static k => (QueuedEntry.Word(k.ToString()), MeasuredWords.Name(k))),
        (Sighting, "Pest or sign"),
        .. Enum.GetValues<PlantEventKind>().Where(static k => k != PlantEventKind.Died).Select(static k => (QueuedEntry.Word(k.ToString()), DiaryWords.Event(k))),
    ];

    public static string? Name(string word) => All.FirstOrDefault(k => k.Word == word).Name;

    public static MeasuredKind? Measured(string word) => Find<MeasuredKind>(word);

    public static PlantEventKind? Event(string word) => Find<PlantEventKind>(word);

    private static T? Find<T>(string word)
        where T : struct, Enum => Enum.GetValues<T>().Where(v => QueuedEntry.Word(v.ToString()) == word).Select(static v => (T?)v).FirstOrDefault();
}
