using System.Security.Cryptography;
using Ashery.Problems;

namespace Ashery.Records.Photos;

/// <summary>
/// Photographs as files in a folder beside the database, each under the SHA-256 of its bytes, with its small one beside it. A file is written to
/// a name nobody asks for, flushed to the disk and then renamed, so that under its hash it is whole or not there. The same picture sent twice is
/// one file. Knows nothing of pictures: it keeps bytes.
/// </summary>
public sealed class PhotoFiles
{
    private const string Field = "photo", Ending = ".jpg", SmallEnding = "-small.jpg";

    /// <param name="folder">Made when the first photograph comes.</param>
    public PhotoFiles(string folder) => Folder = Path.GetFullPath(folder);

    /// <summary>Where they lie.</summary>
    public string Folder { get; }

    /// <summary>The folder <c>photos</c> beside a database file.</summary>
    public static PhotoFiles Beside(string databaseFile) => new(Path.Combine(Path.GetDirectoryName(Path.GetFullPath(databaseFile))!, "photos"));

    /// <summary>The key a picture is kept under.</summary>
    public static string HashOf(ReadOnlySpan<byte> picture) => Convert.ToHexStringLower(SHA256.HashData(picture));

    /// <summary>Keeps a picture and its small one; on the disk when it returns.</summary>
    /// <returns>The hash to name it by.</returns>
    public Result<string> Keep(ReadOnlySpan<byte> picture, ReadOnlySpan<byte> small)
    {
        var hash = HashOf(picture);
        try
        {
            if (!OperatingSystem.IsWindows())
            {
                Directory.CreateDirectory(Folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
            }
            else
            {
                Directory.CreateDirectory(Folder);
            }

            // The small one first: where the picture is, both are.
            Put(PathOf(hash, small: true), small);
            Put(PathOf(hash, small: false), picture);
            FolderFlush.Of(Folder);
            return Result.Of(hash);
        }
        catch (IOException)
        {
            return Result.Fail<string>(Field, "The photograph could not be written: the disk is full or cannot be written to. Nothing was kept.", "Make room on the disk that holds the garden, then send it again.");
        }
        catch (UnauthorizedAccessException)
        {
            return Result.Fail<string>(Field, "The photograph could not be written: its folder may only be read. Nothing was kept.", "Give this program the right to write beside the garden's database.");
        }
    }

    /// <summary>True when a picture of this hash is kept.</summary>
    public bool Has(string hash) => IsHash(hash) && File.Exists(PathOf(hash, small: false));

    /// <summary>The bytes of a kept picture; null when there is none of this hash.</summary>
    public Stream? Open(string hash, bool small = false)
    {
        if (!IsHash(hash))
        {
            return null;
        }

        try
        {
            return new FileStream(PathOf(hash, small), FileMode.Open, FileAccess.Read, FileShare.Read);
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            return null;
        }
    }

    /// <summary>Names of all kept files, pictures and small ones, in order; files that were never finished are not among them.</summary>
    public IReadOnlyList<string> Names() => Directory.Exists(Folder)
        ? [.. Directory.EnumerateFiles(Folder, "*" + Ending).Select(static f => Path.GetFileName(f)).Where(IsName).Order(StringComparer.Ordinal)]
        : [];

    /// <summary>True for the name of a kept file, as <see cref="Names"/> gives it: no path can hide in it.</summary>
    public static bool IsName(string name) =>
        (name.EndsWith(SmallEnding, StringComparison.Ordinal) && IsHash(name[..^SmallEnding.Length]))
        || (name.EndsWith(Ending, StringComparison.Ordinal) && IsHash(name[..^Ending.Length]));

    /// <summary>True for 64 hexadecimal signs.</summary>
    public static bool IsHash(string? text) => text is { Length: 64 } && text.All(char.IsAsciiHexDigitLower);

    private string PathOf(string hash, bool small) => Path.Combine(Folder, hash + (small ? SmallEnding : Ending));

    private static void Put(string path, ReadOnlySpan<byte> bytes)
    {
        if (File.Exists(path) && new FileInfo(path).Length == bytes.Length)
        {
            return;
        }

        var unfinished = $"{path}.{Guid.NewGuid():N}.part";
        try
        {
            using (var file = new FileStream(unfinished, FileMode.CreateNew, FileAccess.Write, FileShare.None))
            {
                file.Write(bytes);
                file.Flush(flushToDisk: true);
            }

            File.Move(unfinished, path, overwrite: true);
        }
        catch
        {
            TryDelete(unfinished);
            throw;
        }
    }

    private static void TryDelete(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // It stays as a .part file, which nothing reads.
        }
    }
}
