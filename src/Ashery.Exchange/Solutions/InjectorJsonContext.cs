using System.Text.Json;
using System.Text.Json.Serialization;
using Ashery.Exchange.Json;

namespace Ashery.Exchange.Solutions;

/// <summary>Generated descriptions of the records of acid, tanks and spray.</summary>
[JsonSerializable(typeof(AcidJson))]
[JsonSerializable(typeof(TanksJson))]
[JsonSerializable(typeof(SprayJson))]
public sealed partial class InjectorJsonContext : JsonSerializerContext
{
    /// <summary>The context in the shared form.</summary>
    public static InjectorJsonContext Shared { get; } = new(new JsonSerializerOptions(AsheryJson.Options));
}
