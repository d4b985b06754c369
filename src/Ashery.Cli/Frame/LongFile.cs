using Ashery.Problems;

namespace Ashery.Cli.Frame;

/// <summary>Opens a file that is read line by line, however long it is.</summary>
internal static class LongFile
{
    public static Result<T> Read<T>(string path, string field, Func<Stream, Result<T>> read)
        where T : notnull
    {
        try
        {
            if (Directory.Exists(path))
            {
                return Fail<T>(field, path, "is a folder", "Name a file in it.");
            }

            if (!File.Exists(path))
            {
                return Fail<T>(field, path, "is not there", "Check the name; a relative one starts at the folder you are in.");
            }

            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read, bufferSize: 1 << 16, FileOptions.SequentialScan);
            return read(stream);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Fail<T>(field, path, "cannot be read", "Check that you may read it.");
        }
    }

    private static Result<T> Fail<T>(string field, string path, string what, string wayOut)
        where T : notnull => Result.Fail<T>(field, $"{SafeText.Quoted(path)} {what}.", wayOut);
}
