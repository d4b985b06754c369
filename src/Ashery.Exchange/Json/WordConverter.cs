using System.Text.Json;
using System.Text.Json.Serialization;

namespace Ashery.Exchange.Json;

/// <summary>An enum as a camelCase word, never as a number: <c>[JsonConverter(typeof(WordConverter&lt;Verdict&gt;))]</c>.</summary>
public sealed class WordConverter<TEnum>() : JsonStringEnumConverter<TEnum>(JsonNamingPolicy.CamelCase, allowIntegerValues: false)
    where TEnum : struct, Enum;
