using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace Ashery.Cautions;

/// <summary>Reads a file of <c>data/</c>, which travels inside the library.</summary>
internal static class ReferenceFile
{
    /// <summary>Reads one file; a file that is missing or does not parse is our own mistake, so it throws.</summary>
    /// <param name="path">As in the repository, <c>data/crops/crops.json</c>.</param>
    /// <param name="type">Source-generated shape: start-up has no time for reflection.</param>
    public static T Read<T>(string path, JsonTypeInfo<T> type)
    {
        using var stream = typeof(ReferenceFile).Assembly.GetManifestResourceStream(path)
            ?? throw new InvalidOperationException($"The reference file {path} is not part of the library.");
        return JsonSerializer.Deserialize(stream, type)
            ?? throw new InvalidOperationException($"The reference file {path} is empty.");
    }
}
