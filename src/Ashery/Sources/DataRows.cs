using System.Text.Json;

namespace Ashery.Sources;

/// <summary>
/// Reads rows of data/*.json by hand. A typed deserialiser, source-generated or not, has to be compiled for every shape when a command
/// starts, which costs more than reading the files; what is read here is compiled already.
/// </summary>
internal static class DataRows
{
    /// <summary>Rows of a file: the array itself, or the one called <c>rows</c>. The order is that of the file.</summary>
    public static List<T> Read<T>(string path, Func<JsonElement, T> row)
        where T : class
    {
        using var document = JsonDocument.Parse(EmbeddedData.Read(path));
        var root = document.RootElement;
        var array = root.ValueKind == JsonValueKind.Array ? root : root.GetProperty("rows");
        var rows = new List<T>(array.GetArrayLength());
        foreach (var element in array.EnumerateArray())
        {
            rows.Add(row(element));
        }

        return rows;
    }

    public static string Text(this JsonElement row, string key) => row.GetProperty(key).GetString()!;

    public static string? TextOrNull(this JsonElement row, string key) => row.TryGetProperty(key, out var value) ? value.GetString() : null;

    public static double Number(this JsonElement row, string key) => row.GetProperty(key).GetDouble();

    /// <summary>A list of numbers; empty when the row has none of that name.</summary>
    public static double[] Numbers(this JsonElement row, string key)
    {
        if (!row.TryGetProperty(key, out var list))
        {
            return [];
        }

        var numbers = new double[list.GetArrayLength()];
        var i = 0;
        foreach (var number in list.EnumerateArray())
        {
            numbers[i++] = number.GetDouble();
        }

        return numbers;
    }

    public static bool Flag(this JsonElement row, string key) => row.TryGetProperty(key, out var value) && value.GetBoolean();

    public static string[] Texts(this JsonElement row, string key)
    {
        if (!row.TryGetProperty(key, out var list))
        {
            return [];
        }

        var texts = new string[list.GetArrayLength()];
        var i = 0;
        foreach (var text in list.EnumerateArray())
        {
            texts[i++] = text.GetString()!;
        }

        return texts;
    }

    public static Provenance Provenance(this JsonElement row) => row.Text("provenance") switch
    {
        "seen" => Sources.Provenance.Seen,
        "computed" => Sources.Provenance.Computed,
        "commonPractice" => Sources.Provenance.CommonPractice,
        "fromMemory" => Sources.Provenance.FromMemory,
        var word => throw Unknown(word),
    };

    /// <summary>A word of the data that the library does not know: our own mistake.</summary>
    public static InvalidOperationException Unknown(string word) => new($"The data files use a word the library does not know: {word}.");
}
