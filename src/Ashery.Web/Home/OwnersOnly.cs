namespace Ashery.Web.Home;

/// <summary>Files and folders that only their owner may read. On Windows the folder of the user's own data has that by itself.</summary>
internal static class OwnersOnly
{
    public static void Folder(string path)
    {
        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(path);
            return;
        }

        Directory.CreateDirectory(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        System.IO.File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
    }

    /// <summary>Writes a file that was never readable by others, not even for a moment, and is whole or not there.</summary>
    public static void File(string path, string text)
    {
        var options = new FileStreamOptions { Mode = FileMode.Create, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        var half = path + ".new";
        System.IO.File.Delete(half);
        using (var writer = new StreamWriter(half, options))
        {
            writer.Write(text);
        }

        System.IO.File.Move(half, path, overwrite: true);
    }
}
