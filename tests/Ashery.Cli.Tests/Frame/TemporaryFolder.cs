namespace Ashery.Cli.Tests.Frame;

/// <summary>A folder that goes with the test. Its name has a blank and a letter outside ASCII, since folders of growers do.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("ashery täst ").FullName;

    public string File(string name) => System.IO.Path.Combine(Path, name);

    public string Write(string name, string text)
    {
        System.IO.File.WriteAllText(File(name), text);
        return File(name);
    }

    /// <summary>Words of an example with the files they write moved into this folder.</summary>
    public string[] Into(string[] words) =>
        [.. words.Select(w => System.IO.Path.GetExtension(w) is ".ics" or ".pdf" or ".html" or ".svg" or ".txt" or ".csv" or ".json" ? File(w) : w)];

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
