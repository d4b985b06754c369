using System.Text;

namespace Ashery.Exchange.Weather;

/// <summary>
/// Lines of a text one by one over a single buffer: a file of any length costs a few kilobytes. A byte order mark is dropped; bytes that are not UTF-8 come as
/// replacement characters.
/// </summary>
internal sealed class WeatherLines(Stream stream) : IDisposable
{
    /// <summary>No weather file has longer lines.</summary>
    public const int LongestLine = 8192;

    private readonly StreamReader reader = new(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), detectEncodingFromByteOrderMarks: true, bufferSize: 1 << 16, leaveOpen: true);
    private readonly char[] buffer = new char[1 << 16];
    private int start;
    private int end;

    /// <summary>Number of the line in <see cref="Current"/>, from 1.</summary>
    public long Number { get; private set; }

    /// <summary>True when the last <see cref="Next"/> stopped at a line too long or with a zero character in it.</summary>
    public bool Broken { get; private set; }

    private int currentStart;
    private int currentLength;

    /// <summary>The line without its end; valid until the next call.</summary>
    public ReadOnlySpan<char> Current => buffer.AsSpan(currentStart, currentLength);

    /// <summary>Moves to the next line; false at the end or at something that is no line of text.</summary>
    public bool Next()
    {
        if (Broken)
        {
            return false;
        }

        while (true)
        {
            var at = buffer.AsSpan(start, end - start).IndexOf('\n');
            if (at >= 0)
            {
                return Take(at, at + 1);
            }

            if (end - start > LongestLine)
            {
                Number++;
                Broken = true;
                return false;
            }

            if (start > 0)
            {
                buffer.AsSpan(start, end - start).CopyTo(buffer);
                (start, end) = (0, end - start);
            }

            var read = reader.Read(buffer.AsSpan(end));
            if (read == 0)
            {
                return end > start && Take(end - start, end - start);
            }

            end += read;
        }
    }

    private bool Take(int length, int step)
    {
        Number++;
        (currentStart, currentLength) = (start, length);
        start += step;
        if (currentLength > 0 && buffer[currentStart + currentLength - 1] == '\r')
        {
            currentLength--;
        }

        Broken = length > LongestLine || Current.Contains('\0');
        return !Broken;
    }

    public void Dispose() => reader.Dispose();
}
