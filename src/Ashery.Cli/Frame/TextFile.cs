using System.Text;
using Ashery.Problems;

namespace Ashery.Cli.Frame;

/// <summary>Reads a file that a grower names: of a sensible size, text, and there.</summary>
internal static class TextFile
{
    /// <summary>No garden or price list comes near it.</summary>
    public const int LongestMegabytes = 16;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    public static Result<string> Read(string path, string field)
    {
        try
        {
            var file = new FileInfo(path);
            if (Directory.Exists(path))
            {
                return Fail(field, path, "is a folder", "Name a file in it.");
            }

            if (!file.Exists)
            {
                return Fail(field, path, "is not there", "Check the name; a relative one starts at the folder you are in.");
            }

            // A size cannot be asked of a pipe or device, so the reading stops by itself too.
            if (file.Length > LongestMegabytes * 1024L * 1024L)
            {
                return TooLong(field, path);
            }

            return Read(file, path, field);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Fail(field, path, "cannot be read", "Check that you may read it.");
        }
    }

    /// <summary>Writes a text in one step: the old file stays whole until the new one is.</summary>
    public static Result<string> Write(string path, string text, string field) => Write(path, Strict.GetBytes(text), field);

    /// <summary>The same with bytes.</summary>
    public static Result<string> Write(string path, byte[] bytes, string field)
    {
        try
        {
            var full = Path.GetFullPath(path);
            var beside = full + ".part";
            File.WriteAllBytes(beside, bytes);
            File.Move(beside, full, overwrite: true);
            return Result.Of(full);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Fail(field, path, "cannot be written", "Name a file in a folder that exists and that you may write to.");
        }
    }

    private static Result<string> Read(FileInfo file, string path, string field)
    {
        using var stream = file.OpenRead();
        var most = LongestMegabytes * 1024 * 1024;
        var bytes = new byte[Math.Max(4096, Math.Min(most, file.Length) + 1)];
        var length = 0;
        for (var read = 1; read > 0; length += read)
        {
            if (length == bytes.Length)
            {
                Array.Resize(ref bytes, Math.Min(bytes.Length * 2, most + 1));
            }

            read = length > most ? 0 : stream.Read(bytes, length, bytes.Length - length);
        }

        if (length > most)
        {
            return TooLong(field, path);
        }

        var text = bytes.AsSpan(0, length);
        if (text.StartsWith("\uFEFF"u8))
        {
            text = text[3..];
        }

        try
        {
            return text.Contains((byte)0)
                ? Fail(field, path, "is not a text", "Save it as text (UTF-8); a spreadsheet is exported as CSV.")
                : Result.Of(Strict.GetString(text));
        }
        catch (DecoderFallbackException)
        {
            return Fail(field, path, "is not a text in UTF-8", "Save it as text (UTF-8); a spreadsheet is exported as CSV.");
        }
    }

    private static Result<string> TooLong(string field, string path) =>
        Fail(field, path, FormattableString.Invariant($"is longer than {LongestMegabytes} MB"), "Check that it is the right file; nothing of it was read.");

    private static Result<string> Fail(string field, string path, string what, string wayOut) =>
        Result.Fail<string>(field, $"{SafeText.Quoted(path)} {what}.", wayOut);
}
