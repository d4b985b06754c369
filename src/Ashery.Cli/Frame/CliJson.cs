using System.Text.Json;
using System.Text.Json.Serialization;
using Ashery.Exchange.Json;

namespace Ashery.Cli.Frame;

/// <summary>What <c>completion --json</c> prints.</summary>
internal sealed record CompletionJson(string Shell, string Script);

/// <summary>JSON of what only the command line knows; all else is described in Ashery.Exchange.</summary>
[JsonSerializable(typeof(CompletionJson))]
internal sealed partial class CliJson : JsonSerializerContext
{
    private static readonly CliJson Shared = new(new JsonSerializerOptions(AsheryJson.Options));

    public static string Write(CompletionJson value) => AsheryJson.Write(value, Shared.CompletionJson);
}
