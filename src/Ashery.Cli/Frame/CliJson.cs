using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Ashery.Exchange.Json;

namespace Ashery.Cli.Frame;

/// <summary>What <c>completion --json</c> prints.</summary>
internal sealed record CompletionJson(string Shell, string Script);

/// <summary>What <c>serve --json</c> prints: the command it would become.</summary>
internal sealed record ServeJson(IReadOnlyList<string> Command);

/// <summary>What <c>backup</c>, <c>restore</c>, <c>copy</c>, <c>export</c> and <c>import</c> print with <c>--json</c>.</summary>
/// <param name="Done">What was done, in words.</param>
/// <param name="File">What was written or read.</param>
/// <param name="ContentHash">Hash of all rows; null of exports and imports.</param>
/// <param name="KeptIn">Backup of what was there before a restore; null when there was nothing.</param>
internal sealed record MovedJson(string Done, string File, string? ContentHash = null, string? KeptIn = null);

/// <summary>JSON of what only the command line knows; all else is described in Ashery.Exchange.</summary>
[JsonSerializable(typeof(CompletionJson))]
[JsonSerializable(typeof(ServeJson))]
[JsonSerializable(typeof(MovedJson))]
internal sealed partial class CliJson : JsonSerializerContext
{
    private static readonly CliJson Shared = new(new JsonSerializerOptions(AsheryJson.Options));

    public static string Write(CompletionJson value) => AsheryJson.Write(value, Shared.CompletionJson);

    /// <summary>The same description for whoever checks it.</summary>
    public static JsonTypeInfo<MovedJson> Moved => Shared.MovedJson;

    public static string Write(MovedJson value) => AsheryJson.Write(value, Shared.MovedJson);

    public static string Write(ServeJson value) => AsheryJson.Write(value, Shared.ServeJson);
}
