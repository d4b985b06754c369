using System.Text.Json;

namespace Ashery.Sources;

/// <summary>
/// One row of a data file, read field by field. Generated readers compile several hundred methods in every process for a handful of
/// files (enums, numbers and flags are value types); this reads the same rows with none. Every field must be asked for: one that
/// nobody knows is a slip in the data, and <see cref="Done"/> says so.
/// </summary>
internal sealed class ReferenceRow(JsonElement row, string path)
{
    private int known;

    /// <summary>Makes a value of each row of a file: a list at the root, or under <c>rows</c>.</summary>
    public static T[] Read<T>(string path, Func<ReferenceRow, T> make)
        where T : class
    {
        using var document = JsonDocument.Parse(EmbeddedData.Read(path));
        var root = document.RootElement;
        var list = root.ValueKind is JsonValueKind.Array ? root : root.GetProperty("rows");
        var values = new T[list.GetArrayLength()];
        for (var i = 0; i < values.Length; i++)
        {
            var row = new ReferenceRow(list[i], path);
            values[i] = make(row);
            row.Done();
        }

        return values;
    }

    public string Text(string name) => Field(name).GetString()!;

    public string? Maybe(string name) => TryField(name, out var value) ? value.GetString() : null;

    public bool Flag(string name) => TryField(name, out var value) && value.GetBoolean();

    public double Number(string name) => Field(name).GetDouble();

    public int Whole(string name) => Field(name).GetInt32();

    public string[] Texts(string name)
    {
        var list = Field(name);
        var texts = new string[list.GetArrayLength()];
        for (var i = 0; i < texts.Length; i++)
        {
            texts[i] = list[i].GetString()!;
        }

        return texts;
    }

    /// <summary>A word that is none of those known.</summary>
    public static InvalidOperationException Unknown(string word) => new($"The reference data has an unknown word: {word}.");

    private void Done()
    {
        if (row.GetPropertyCount() != known)
        {
            throw new InvalidOperationException($"A row of {path} has a field that nothing reads: {row.GetRawText()}");
        }
    }

    private JsonElement Field(string name) => TryField(name, out var value)
        ? value
        : throw new InvalidOperationException($"A row of {path} has no {name}: {row.GetRawText()}");

    private bool TryField(string name, out JsonElement value)
    {
        var found = row.TryGetProperty(name, out value);
        known += found ? 1 : 0;
        return found;
    }
}
