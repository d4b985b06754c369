using System.Text.Json;
using System.Text.Json.Serialization;
using Ashery.Exchange.Json;

namespace Ashery.Cli.Frame;

/// <summary>What <c>completion --json</c> prints.</summary>
internal sealed record CompletionJson(string Shell, string Script);

/// <summary>What <c>serve --json</c> prints: the command it would become.</summary>
internal sealed record ServeJson(IReadOnlyList<string> Command);

/// <summary>JSON of what only the command line knows; all else is described in Ashery.Exchange.</summary>
[JsonSerializable(typeof(CompletionJson))]
[JsonSerializable(typeof(ServeJson))]
internal sealed partial class CliJson : JsonSerializerContext
{
    private static readonly CliJson Shared = new(new JsonSerializerOptions(AsheryJson.Options));

    public static string Write(CompletionJson value) => AsheryJson.Write(value, Shared.CompletionJson);

    public static string Write(ServeJson value) => AsheryJson.Write(value, Shared.ServeJson);
}
