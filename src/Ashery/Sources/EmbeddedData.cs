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

    /// <summary>Paths of all files that end so, e.g. <c>sources.json</c>, in ordinal order.</summary>
    public static IReadOnlyList<string> Paths(string ending)
    {
        var paths = typeof(EmbeddedData).Assembly.GetManifestResourceNames()
            .Where(name => name.EndsWith(ending, StringComparison.Ordinal)).ToArray();
        Array.Sort(paths, StringComparer.Ordinal);
        return paths;
    }
}
