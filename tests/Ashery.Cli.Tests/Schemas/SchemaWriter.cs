using System.ComponentModel;
using System.Reflection;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;
using System.Text.Json.Serialization.Metadata;

namespace Ashery.Cli.Tests.Schemas;

/// <summary>
/// Writes the JSON schema (draft 2020-12) of a type from its generated description, with the words of its documentation. It is used by
/// the tests only: the program itself never makes a schema.
/// </summary>
internal static class SchemaWriter
{
    private static readonly JsonSerializerOptions Layout = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static string Write(JsonTypeInfo type, string title)
    {
        var node = (JsonObject)JsonSchemaExporter.GetJsonSchemaAsNode(type, new JsonSchemaExporterOptions
        {
            TreatNullObliviousAsNonNullable = true,
            TransformSchemaNode = Describe,
        });
        var schema = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = title,
        };
        foreach (var (name, value) in node.ToList())
        {
            node.Remove(name);
            schema[name] = value;
        }

        return schema.ToJsonString(Layout) + "\n";
    }

    private static JsonNode Describe(JsonSchemaExporterContext context, JsonNode schema)
    {
        if (schema is not JsonObject node || Words(context) is not { Length: > 0 } words)
        {
            return schema;
        }

        var described = new JsonObject { ["description"] = words };
        foreach (var (name, value) in node.ToList())
        {
            node.Remove(name);
            described[name] = value;
        }

        return described;
    }

    private static string? Words(JsonSchemaExporterContext context)
    {
        if (context.PropertyInfo is { } property)
        {
            var member = property.AttributeProvider as MemberInfo;
            return Description(property.AttributeProvider)
                ?? (member is null ? null : Documentation.Of(member))
                ?? Documentation.Of(context.TypeInfo.Type);
        }

        return Description(context.TypeInfo.Type) ?? Documentation.Of(context.TypeInfo.Type);
    }

    private static string? Description(ICustomAttributeProvider? provider) =>
        provider?.GetCustomAttributes(typeof(DescriptionAttribute), inherit: false).OfType<DescriptionAttribute>().FirstOrDefault()?.Description;
}
