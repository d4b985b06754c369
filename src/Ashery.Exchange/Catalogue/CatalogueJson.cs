using System.Text.Json;
using System.Text.Json.Serialization;
using Ashery.Exchange.Json;

namespace Ashery.Exchange.Catalogue;

/// <summary>Generated descriptions of the catalogue's JSON.</summary>
[JsonSerializable(typeof(MaterialsJson))]
[JsonSerializable(typeof(CropsJson))]
[JsonSerializable(typeof(ShelfJson))]
public sealed partial class CatalogueJson : JsonSerializerContext
{
    /// <summary>In the form every JSON text here has; what is not known is null.</summary>
    public static CatalogueJson Shared { get; } = new(new JsonSerializerOptions(AsheryJson.Options));
}
