using System.Text.Json.Nodes;
using Ashery.Journal;

namespace Ashery.Web.Pages.Diary;

/// <summary>The part of an entry that a form of quick entry carries, so that it can wait on the phone (docs/offline.md).</summary>
internal static class QueuedEntry
{
    /// <summary>A figure of one pot; its value comes from the form.</summary>
    public static string Measured(MeasuredKind what, string pot) => Entry(pot, new JsonObject { ["kind"] = EntryKind.Measured, ["what"] = Word(what.ToString()) });

    /// <summary>Something that happened; of one pot, or of those that are ticked.</summary>
    public static string Event(PlantEventKind what, string? pot = null) => Entry(pot, new JsonObject { ["kind"] = EntryKind.PlantEvent, ["what"] = Word(what.ToString()) });

    /// <summary>A pest or a sign; what and how many come from the form.</summary>
    public static string Seen(string? pot = null) => Entry(pot, new JsonObject { ["kind"] = EntryKind.Sighting });

    public static string Word(string name) => char.ToLowerInvariant(name[0]) + name[1..];

    private static string Entry(string? pot, JsonObject facts)
    {
        var entry = new JsonObject { ["facts"] = facts };
        if (pot is not null)
        {
            entry["pots"] = new JsonArray(pot);
        }

        return entry.ToJsonString();
    }
}
