namespace Ashery.Exchange.Materials;

/// <summary>Why a file is not read further.</summary>
internal enum FileFault
{
    TooLarge,
    Binary,
}

/// <summary>Thrown out of a read that has to stop; caught where the file is read and said as a problem.</summary>
internal sealed class FileFaultException(FileFault fault) : IOException(fault.ToString())
{
    public FileFault Fault { get; } = fault;
}

/// <summary>
/// Passes a stream through until it turns out too large or not text. Nothing is held: a file of any size costs one buffer, and one that says
/// its size beforehand is not read at all.
/// </summary>
internal sealed class GuardedStream : Stream
{
    private readonly Stream inner;
    private readonly long largest;
    private long passed;

    public GuardedStream(Stream inner, long largest)
    {
        this.inner = inner;
        this.largest = largest;
        if (inner.CanSeek && inner.Length - inner.Position > largest)
        {
            throw new FileFaultException(FileFault.TooLarge);
        }
    }

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => passed;
        set => throw new NotSupportedException();
    }

    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    public override int Read(Span<byte> buffer)
    {
        var count = inner.Read(buffer);
        passed += count;
        if (passed > largest)
        {
            throw new FileFaultException(FileFault.TooLarge);
        }

        // No text in UTF-8 holds a zero byte; pictures, archives and spreadsheets do within their first block.
        return buffer[..count].Contains((byte)0) ? throw new FileFaultException(FileFault.Binary) : count;
    }

    public override void Flush()
    {
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
}
