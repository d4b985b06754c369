using System.Text.Json;
using System.Text.Json.Serialization;
using Ashery.Exchange.Json;

namespace Ashery.Exchange.Mix;

/// <summary>Generated descriptions of the records of <c>mix</c> and <c>compatible</c>.</summary>
[JsonSerializable(typeof(MixJson))]
[JsonSerializable(typeof(CompatibleJson))]
public sealed partial class MixJsonContext : JsonSerializerContext
{
    /// <summary>The context in the shared form.</summary>
    public static MixJsonContext Shared { get; } = new(new JsonSerializerOptions(AsheryJson.Options));
}
