using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;
using Ashery.Exchange.Journal;
using Ashery.Gardens;
using Ashery.Journal;
using Ashery.Problems;

namespace Ashery.Client;

/// <summary>A garden in the list.</summary>
/// <param name="Key">Key for the other calls.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Role"><c>owner</c>, <c>helper</c> or <c>reader</c>.</param>
public sealed record GardenInfo(string Key, string Name, string Role);

/// <summary>A garden and its version.</summary>
public sealed record VersionedGarden(Garden Garden, long Version);

/// <summary>A wish to write an entry.</summary>
/// <param name="Id">Which.</param>
/// <param name="BasedOn">The revision it was made on; 0 for a new one.</param>
/// <param name="Entry">What is to stand; null to remove it.</param>
public sealed record EntryWish(Guid Id, int BasedOn, Entry? Entry);

/// <summary>A revision of an entry.</summary>
public sealed record EntryRevision(
    [property: JsonConverter(typeof(EntryConverter))] Entry Entry, int Revision, bool IsRemoved, string By, DateTimeOffset At, long Sequence);

/// <summary>A part of the journal.</summary>
/// <param name="Entries">Newest day first.</param>
/// <param name="Next">Goes on with this as <see cref="JournalFilter.After"/>; null at the end.</param>
public sealed record JournalPart(IReadOnlyList<EntryRevision> Entries, Guid? Next);

/// <summary>Which entries.</summary>
public sealed record JournalFilter
{
    public DateOnly? From { get; init; }

    public DateOnly? To { get; init; }

    /// <summary>About any of these pots; none: any.</summary>
    public IReadOnlyList<string> Pots { get; init; } = [];

    /// <summary>Of these kinds (<see cref="EntryKind"/>); none: any.</summary>
    public IReadOnlyList<string> Kinds { get; init; } = [];

    /// <summary>Every word must stand in the entry.</summary>
    public string Words { get; init; } = "";

    public int AtMost { get; init; } = 100;

    public Guid? After { get; init; }

    internal string Query()
    {
        var query = new StringBuilder("?atMost=").Append(AtMost.ToString(CultureInfo.InvariantCulture));
        Add(query, "from", From?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        Add(query, "to", To?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        Add(query, "words", Words.Length > 0 ? Words : null);
        Add(query, "after", After?.ToString());
        foreach (var pot in Pots)
        {
            Add(query, "pot", pot);
        }

        foreach (var kind in Kinds)
        {
            Add(query, "kind", kind);
        }

        return query.ToString();
    }

    private static void Add(StringBuilder query, string name, string? value)
    {
        if (value is not null)
        {
            query.Append('&').Append(name).Append('=').Append(Uri.EscapeDataString(value));
        }
    }
}

/// <summary>Problem details (RFC 9457) with our problems.</summary>
internal sealed record ProblemDetails(string? Title, string? Detail, IReadOnlyList<Problem>? Problems);

/// <summary>Reads an entry as the journal's JSON.</summary>
internal sealed class EntryConverter : JsonConverter<Entry>
{
    public override Entry? Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => JsonSerializer.Deserialize(ref reader, JournalJson.TypeInfo);

    public override void Write(Utf8JsonWriter writer, Entry value, JsonSerializerOptions options) => JsonSerializer.Serialize(writer, value, JournalJson.TypeInfo);
}

[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, UseStringEnumConverter = true)]
[JsonSerializable(typeof(IReadOnlyList<GardenInfo>))]
[JsonSerializable(typeof(JournalPart))]
[JsonSerializable(typeof(EntryRevision))]
[JsonSerializable(typeof(ProblemDetails))]
internal sealed partial class ClientJson : JsonSerializerContext;
