using System.Globalization;
using System.Text;
using System.Text.Json;
using Ashery.Exchange.Gardens;
using Ashery.Exchange.Journal;
using Ashery.Gardens;
using Ashery.Problems;

namespace Ashery.Records.Moving.Exports;

/// <summary>A line of an exported file: a state of the garden, or a revision of an entry. Shapes: docs/records.md.</summary>
internal static class ExportLines
{
    public static string State(Change change, Garden garden) => Line(json =>
    {
        json.WriteNumber("version", change.Version);
        Who(json, change.At, change.By);
        json.WriteString("what", change.What);
        json.WritePropertyName("garden");
        using var whole = JsonDocument.Parse(GardenFile.Write(garden));
        whole.RootElement.WriteTo(json);
    });

    public static string Revision(StoredEntry entry) => Line(json =>
    {
        json.WriteNumber("sequence", entry.Sequence);
        json.WriteNumber("revision", entry.Revision);
        json.WriteBoolean("removed", entry.IsRemoved);
        Who(json, entry.At, entry.By);
        json.WritePropertyName("entry");
        json.WriteRawValue(JournalJson.WriteLine(entry.Entry));
    });

    public static Result<(Change Change, Garden Garden)> ReadState(string file, int number, string line) => Read(file, number, line, root =>
    {
        var garden = GardenFile.Read(root.GetProperty("garden").GetRawText());
        var change = new Change(root.GetProperty("version").GetInt64(), At(root), root.GetProperty("what").GetString() ?? "", root.GetProperty("by").GetString() ?? "");
        return garden.Ok ? Result.Of((change, garden.Value)) : Result.Fail<(Change, Garden)>([.. garden.Problems.Select(p => p with { Field = $"{Place(file, number)}: {p.Field}" })]);
    });

    public static Result<StoredEntry> ReadRevision(string file, int number, string line) => Read(file, number, line, root =>
    {
        var entry = JournalJson.Read(root.GetProperty("entry").GetRawText());
        return entry.Ok
            ? Result.Of(new StoredEntry(entry.Value, root.GetProperty("revision").GetInt32(), root.GetProperty("removed").GetBoolean(), root.GetProperty("by").GetString() ?? "", At(root), root.GetProperty("sequence").GetInt64()))
            : Result.Fail<StoredEntry>([.. entry.Problems.Select(p => p with { Field = $"{Place(file, number)}: {p.Field}" })]);
    });

    private static Result<T> Read<T>(string file, int number, string line, Func<JsonElement, Result<T>> read)
        where T : notnull
    {
        try
        {
            using var whole = JsonDocument.Parse(line);
            return read(whole.RootElement);
        }
        catch (Exception e) when (e is JsonException or KeyNotFoundException or InvalidOperationException or FormatException)
        {
            return Result.Fail<T>(Place(file, number), "This line is not one that an export writes.", "Compare it with docs/records.md. Nothing was brought in.");
        }
    }

    private static string Place(string file, int number) => FormattableString.Invariant($"{file}, line {number}");

    private static DateTimeOffset At(JsonElement root) => DateTimeOffset.ParseExact(root.GetProperty("at").GetString()!, "O", CultureInfo.InvariantCulture, DateTimeStyles.RoundtripKind);

    private static void Who(Utf8JsonWriter json, DateTimeOffset at, string by)
    {
        json.WriteString("at", at.ToUniversalTime().ToString("O", CultureInfo.InvariantCulture));
        json.WriteString("by", by);
    }

    private static string Line(Action<Utf8JsonWriter> write)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
