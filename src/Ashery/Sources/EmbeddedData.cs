using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace Ashery.Sources;

/// <summary>Reference data that travels inside the library, by its path in the repository: <c>data/sources.json</c>.</summary>
public static class EmbeddedData
{
    /// <summary>The bytes of a file, or an exception when it is not there: a missing file is our own mistake.</summary>
    public static byte[] Read(string path)
    {
        using var stream = typeof(EmbeddedData).Assembly.GetManifestResourceStream(path)
            ?? throw new InvalidOperationException($"Reference data {path} is not in the library.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    /// <summary>A file as values of a source-generated shape: start-up has no time for reflection.</summary>
    public static T Read<T>(string path, JsonTypeInfo<T> type) =>
        JsonSerializer.Deserialize(Read(path), type) ?? throw new InvalidOperationException($"Reference data {path} is empty.");

    /// <summary>Paths of all files that end so, e.g. <c>sources.json</c>, in ordinal order.</summary>
    public static IReadOnlyList<string> Paths(string ending)
    {
        var paths = typeof(EmbeddedData).Assembly.GetManifestResourceNames()
            .Where(name => name.EndsWith(ending, StringComparison.Ordinal)).ToArray();
        Array.Sort(paths, StringComparer.Ordinal);
        return paths;
    }
}
