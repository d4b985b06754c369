using System.Text;
using System.Text.Json;
using Ashery.Exchange.Journal;
using Ashery.Records;
using Ashery.Web.Gardens;

namespace Ashery.Web.Api;

/// <summary>The answer to entries that were sent, as JSON.</summary>
internal static class JournalAnswer
{
    /// <summary><c>saved</c> is the mark with which the next page tells what was written, with its Undo.</summary>
    public static string Write(IReadOnlyList<WriteResult> results, IReadOnlyList<StoredEntry> written)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartObject();
            json.WriteString("saved", WrittenEntries.Mark(written));
            json.WriteStartArray("results");
            foreach (var result in results)
            {
                json.WriteStartObject();
                Write(json, result);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static void Write(Utf8JsonWriter json, WriteResult result)
    {
        switch (result)
        {
            case WriteResult.Done done:
                json.WriteString("id", done.Entry.Entry.Id);
                json.WriteString("outcome", "written");
                json.WriteNumber("revision", done.Entry.Revision);
                break;
            case WriteResult.Overtaken overtaken:
                json.WriteString("id", overtaken.Theirs.Entry.Id);
                json.WriteString("outcome", "overtaken");
                json.WriteNumber("revision", overtaken.Theirs.Revision);
                json.WriteBoolean("isRemoved", overtaken.Theirs.IsRemoved);
                json.WritePropertyName("theirs");
                json.WriteRawValue(JournalJson.WriteLine(overtaken.Theirs.Entry));
                break;
            case WriteResult.Refused refused:
                if (refused.Id is { } id)
                {
                    json.WriteString("id", id);
                }

                json.WriteString("outcome", "refused");
                json.WriteStartArray("problems");
                foreach (var problem in refused.Problems)
                {
                    json.WriteStartObject();
                    json.WriteString("field", problem.Field);
                    json.WriteString("message", problem.Message);
                    json.WriteString("wayOut", problem.WayOut);
                    json.WriteEndObject();
                }

                json.WriteEndArray();
                break;
        }
    }
}
