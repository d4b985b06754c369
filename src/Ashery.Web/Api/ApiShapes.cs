using System.ComponentModel;
using System.Text.Json;

namespace Ashery.Web.Api;

/// <summary>A garden somebody belongs to.</summary>
public sealed record GardenItem(
    [property: Description("Key for the addresses of this garden.")] string Key,
    string Name,
    [property: Description("owner, helper or reader; a token that reads makes everybody a reader.")] string Role);

/// <summary>A revision of an entry of the journal.</summary>
public sealed record EntryItem(
    [property: Description("The entry, as docs/schemas/journal.schema.json describes it.")] JsonElement Entry,
    [property: Description("Counts from 1; a change sends the one it was made on.")] int Revision,
    bool IsRemoved,
    [property: Description("Who wrote it; empty where there are no accounts.")] string By,
    DateTimeOffset At,
    long Sequence);

/// <summary>A part of the journal.</summary>
public sealed record JournalPage(
    IReadOnlyList<EntryItem> Entries,
    [property: Description("Id to send as 'after' for the next part; absent at the end.")] Guid? Next);

/// <summary>A wish to write an entry.</summary>
public sealed record ChangeItem(
    Guid Id,
    [property: Description("The revision it was made on; 0 for a new entry.")] int BasedOn,
    [property: Description("What is to stand; absent or null to remove the entry.")] JsonElement? Entry);

/// <summary>Changes that are written together or not at all.</summary>
public sealed record JournalWrite(IReadOnlyList<ChangeItem> Changes);

/// <summary>The garden's newest version after a write.</summary>
public sealed record GardenWritten(long Version);
