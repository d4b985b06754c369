namespace Ashery.Tests;

/// <summary>Files of the repository that tests hold against the code, such as documentation.</summary>
internal static class RepositoryFile
{
    public static string Read(string path) => File.ReadAllText(Place(path));

    /// <summary>Where a file of the repository lies on this machine.</summary>
    public static string Place(string path)
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Ashery.slnx")))
        {
            folder = folder.Parent;
        }

        return Path.Combine(folder!.FullName, path);
    }
}
