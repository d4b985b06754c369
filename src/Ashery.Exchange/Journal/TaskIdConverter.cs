using System.Text.Json;
using System.Text.Json.Serialization;
using Ashery.Journal;

namespace Ashery.Exchange.Journal;

/// <summary>A planned feed as <c>"2027-04-03/spring-feed"</c>.</summary>
internal sealed class TaskIdConverter : JsonConverter<TaskId>
{
    public override TaskId Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType == JsonTokenType.String && TaskId.Parse(reader.GetString()) is { } task
            ? task
            : throw new JsonException("A planned feed is written as its day and the feed's id: \"2027-04-03/spring-feed\".");

    public override void Write(Utf8JsonWriter writer, TaskId value, JsonSerializerOptions options) => writer.WriteStringValue(value.ToString());
}
