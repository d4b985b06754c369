using System.Text.Json;
using System.Text.Json.Serialization;
using Ashery.Exchange.Json;

namespace Ashery.Exchange.Solutions;

/// <summary>Generated descriptions of the records of the can.</summary>
[JsonSerializable(typeof(CanJson))]
[JsonSerializable(typeof(TargetJson))]
public sealed partial class SolutionJsonContext : JsonSerializerContext
{
    /// <summary>The context in the shared form.</summary>
    public static SolutionJsonContext Shared { get; } = new(new JsonSerializerOptions(AsheryJson.Options));
}
