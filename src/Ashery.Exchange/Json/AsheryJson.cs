using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Ashery.Problems;

namespace Ashery.Exchange.Json;

/// <summary>
/// How every JSON text of Ashery looks: camelCase names, enums as camelCase words (<see cref="WordConverter{TEnum}"/>),
/// letters as they are, indented, figures with a point. Types are described by generated contexts, never by reflection.
/// </summary>
public static class AsheryJson
{
    /// <summary>No honest file of one garden comes near it; what is longer is refused before it is read.</summary>
    public const int LongestText = 16 * 1024 * 1024;

    /// <summary>
    /// The shared settings. A generated context takes a copy:
    /// <c>static readonly MixContext Shared = new(new JsonSerializerOptions(AsheryJson.Options))</c>.
    /// </summary>
    public static JsonSerializerOptions Options { get; } = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        NewLine = "\n",

        // The text goes to a terminal or a file, not into a page: a name in any script stays readable there.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,

        // A file is often written by hand.
        ReadCommentHandling = JsonCommentHandling.Skip,
        AllowTrailingCommas = true,

        // A misspelt or doubled field must not be dropped in silence.
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        AllowDuplicateProperties = false,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
    };

    /// <summary>The text of a value, closed by a line end.</summary>
    public static string Write<T>(T value, JsonTypeInfo<T> type) => JsonSerializer.Serialize(value, type) + "\n";

    /// <summary>A value from a text that a grower or another program wrote.</summary>
    /// <param name="text">The whole file.</param>
    /// <param name="type">From a generated context over <see cref="Options"/>.</param>
    /// <param name="field">What to call the text in a problem, e.g. <c>garden</c>.</param>
    public static Result<T> Read<T>(string text, JsonTypeInfo<T> type, string field)
        where T : notnull
    {
        if (text.Length > LongestText)
        {
            return Result.Fail<T>(
                field,
                string.Create(CultureInfo.InvariantCulture, $"The text is longer than {LongestText / (1024 * 1024)} MB; no garden is."),
                "Check that it is the right file.");
        }

        try
        {
            return JsonSerializer.Deserialize(text, type) is { } value
                ? Result.Of(value)
                : Result.Fail<T>(field, "The text is only 'null'.", "Give an object in braces, as the schema in docs/schemas shows.");
        }
        catch (JsonException wrong)
        {
            return Result.Fail<T>(JsonFault.Place(field, wrong), JsonFault.Message(wrong), JsonFault.WayOut(wrong));
        }
    }
}
