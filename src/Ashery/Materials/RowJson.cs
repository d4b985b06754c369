using System.Text.Json;
using Ashery.Sources;

namespace Ashery.Materials;

/// <summary>Fields of a data row. What is missing is null or empty; what is of the wrong kind is our own mistake and throws.</summary>
internal static class RowJson
{
    public static string? Text(JsonElement row, string key) => row.TryGetProperty(key, out var value) ? value.GetString() : null;

    public static double? Number(JsonElement row, string key) => row.TryGetProperty(key, out var value) ? value.GetDouble() : null;

    public static Provenance How(JsonElement row) => MaterialWords.Provenance(row.GetProperty("how").GetString()!);

    public static bool Flag(JsonElement row, string key) => row.TryGetProperty(key, out var value) && value.GetBoolean();

    // Plain loops in this file: LINQ over JsonElement, a value type, would be compiled anew in every process.
    public static string[] Texts(JsonElement row, string key)
    {
        if (!row.TryGetProperty(key, out var list))
        {
            return [];
        }

        var texts = new string[list.GetArrayLength()];
        for (var i = 0; i < texts.Length; i++)
        {
            texts[i] = list[i].GetString()!;
        }

        return texts;
    }
}
