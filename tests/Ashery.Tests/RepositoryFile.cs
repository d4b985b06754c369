namespace Ashery.Tests;

/// <summary>Files of the repository that tests hold against the code, such as documentation.</summary>
internal static class RepositoryFile
{
    public static string Read(string path)
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Ashery.slnx")))
        {
            folder = folder.Parent;
        }

        return File.ReadAllText(Path.Combine(folder!.FullName, path));
    }
}
