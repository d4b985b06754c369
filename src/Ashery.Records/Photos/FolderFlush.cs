using System.Runtime.InteropServices;

namespace Ashery.Records.Photos;

/// <summary>Brings a folder's list of names to the disk: a rename is only safe against a power cut once its folder is written (fsync, POSIX.1).</summary>
internal static partial class FolderFlush
{
    private const int ReadOnly = 0;

    /// <summary>Does nothing where the system has no such call; there the file system keeps its own log of names.</summary>
    public static void Of(string folder)
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        var handle = OpenFile(folder, ReadOnly);
        if (handle < 0)
        {
            throw new IOException("The folder of the photographs cannot be opened.");
        }

        try
        {
            if (Flush(handle) != 0)
            {
                throw new IOException("The folder of the photographs cannot be flushed.");
            }
        }
        finally
        {
            _ = Close(handle);
        }
    }

    [LibraryImport("libc", EntryPoint = "open", StringMarshalling = StringMarshalling.Utf8, SetLastError = true)]
    private static partial int OpenFile(string path, int flags);

    [LibraryImport("libc", EntryPoint = "fsync", SetLastError = true)]
    private static partial int Flush(int handle);

    [LibraryImport("libc", EntryPoint = "close", SetLastError = true)]
    private static partial int Close(int handle);
}
