using System.Runtime.InteropServices;

namespace Ashery.Bench;

/// <summary>Holds back what a native library prints on standard output (one solver prints a banner a solve).</summary>
internal sealed partial class Quiet : IDisposable
{
    private readonly int kept = -1;

    public Quiet()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        Console.Out.Flush();
        kept = Duplicate(1);
        var nowhere = Open("/dev/null", 1);
        _ = Replace(nowhere, 1);
        _ = Close(nowhere);
    }

    public void Dispose()
    {
        if (kept >= 0)
        {
            _ = Flush(0);
            _ = Replace(kept, 1);
            _ = Close(kept);
        }
    }

    [LibraryImport("libc", EntryPoint = "dup")]
    private static partial int Duplicate(int descriptor);

    [LibraryImport("libc", EntryPoint = "dup2")]
    private static partial int Replace(int from, int to);

    [LibraryImport("libc", EntryPoint = "open", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Open(string path, int flags);

    [LibraryImport("libc", EntryPoint = "close")]
    private static partial int Close(int descriptor);

    [LibraryImport("libc", EntryPoint = "fflush")]
    private static partial int Flush(nint stream);
}
