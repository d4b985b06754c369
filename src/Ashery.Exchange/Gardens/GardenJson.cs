using System.Text.Json;
using System.Text.Json.Serialization;
using Ashery.Exchange.Json;

namespace Ashery.Exchange.Gardens;

/// <summary>Source-generated JSON of the garden file.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
[JsonSerializable(typeof(GardenDto))]
public sealed partial class GardenJson : JsonSerializerContext
{
    /// <summary>In the form every JSON text here has; what is not known is left out, not written as null.</summary>
    public static GardenJson Shared { get; } = new(new JsonSerializerOptions(AsheryJson.Options)
    {
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    });
}
