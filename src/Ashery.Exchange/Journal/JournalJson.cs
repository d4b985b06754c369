using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Ashery.Exchange.Json;
using Ashery.Journal;
using Ashery.Problems;

namespace Ashery.Exchange.Journal;

/// <summary>
/// An entry of the journal as JSON (schema: docs/schemas/journal.schema.json): in the tables of the records, in exported files and in the
/// HTTP interface the same text. <c>facts.kind</c> is a word of <see cref="EntryKind"/>.
/// </summary>
public static class JournalJson
{
    private static readonly (Type Type, string Word)[] Kinds =
    [
        (typeof(FeedGiven), EntryKind.FeedGiven), (typeof(TaskSkipped), EntryKind.TaskSkipped), (typeof(TaskMoved), EntryKind.TaskMoved),
        (typeof(Measured), EntryKind.Measured), (typeof(PlantEvent), EntryKind.PlantEvent), (typeof(Sighting), EntryKind.Sighting),
        (typeof(WeatherNoted), EntryKind.WeatherNoted),
        (typeof(Photograph), EntryKind.Photograph), (typeof(BagBought), EntryKind.BagBought), (typeof(StockCounted), EntryKind.StockCounted),
        (typeof(BatchMade), EntryKind.BatchMade), (typeof(Discarded), EntryKind.Discarded), (typeof(KeptDocument), EntryKind.KeptDocument),
    ];

    private static readonly JsonTypeInfo<Entry> Whole = Context(indented: true), OneLine = Context(indented: false);

    /// <summary>As a file holds it.</summary>
    public static string Write(Entry entry) => AsheryJson.Write(entry, Whole);

    /// <summary>On one line, as a table or a line of a file holds it.</summary>
    public static string WriteLine(Entry entry) => JsonSerializer.Serialize(entry, OneLine);

    /// <summary>Reads an entry somebody sent, and checks it.</summary>
    public static Result<Entry> Read(string text)
    {
        if (HalfSigns.In(text, "entry") is { } half)
        {
            return Result.Fail<Entry>(half);
        }

        var read = AsheryJson.Read(text, Whole, "entry");
        if (!read.Ok)
        {
            return read;
        }

        var entry = Filled(read.Value);
        return EntryRules.Check(entry) is { Count: > 0 } problems ? Result.Fail<Entry>(problems) : Result.Of(entry);
    }

    /// <summary>Reads what the records kept; it was checked when it was written.</summary>
    public static Entry ReadKept(string text) => Filled(JsonSerializer.Deserialize(text, OneLine) ?? throw new JsonException("An entry of the records is empty."));

    /// <summary>For whoever puts entries into JSON of their own.</summary>
    public static JsonTypeInfo<Entry> TypeInfo => OneLine;

    // Generated readers set a member that the text leaves out to null, whatever its initial value.
    private static Entry Filled(Entry entry) => entry with { Pots = entry.Pots ?? [], Note = entry.Note ?? "" };

    private static JsonTypeInfo<Entry> Context(bool indented)
    {
        var options = new JsonSerializerOptions(AsheryJson.Options)
        {
            WriteIndented = indented,
            DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,

            // Tables that know JSON may hand its fields back in another order.
            AllowOutOfOrderMetadataProperties = true,
            TypeInfoResolver = JournalContext.Default.WithAddedModifier(NameKinds),
        };
        options.Converters.Add(new TaskIdConverter());
        options.Converters.Add(new WordConverter<MeasuredKind>());
        options.Converters.Add(new WordConverter<PlantEventKind>());
        options.Converters.Add(new WordConverter<WeatherSign>());
        return (JsonTypeInfo<Entry>)options.GetTypeInfo(typeof(Entry));
    }

    private static void NameKinds(JsonTypeInfo type)
    {
        if (type.Type != typeof(EntryFacts))
        {
            return;
        }

        type.PolymorphismOptions = new() { TypeDiscriminatorPropertyName = "kind", UnknownDerivedTypeHandling = JsonUnknownDerivedTypeHandling.FailSerialization };
        foreach (var (kind, word) in Kinds)
        {
            type.PolymorphismOptions.DerivedTypes.Add(new(kind, word));
        }
    }
}
