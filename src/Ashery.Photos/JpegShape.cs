using System.Buffers.Binary;

namespace Ashery.Photos;

/// <summary>
/// What the markers of a JPEG say of the work it will make, read before anything is decoded (ITU-T T.81, annex B, markers from memory):
/// whether it comes in passes (SOF2) and in how many (SOS).
/// </summary>
/// <param name="InPasses">True for a progressive one.</param>
/// <param name="Passes">Scans in the file.</param>
internal readonly record struct JpegShape(bool InPasses, int Passes)
{
    private const byte Mark = 0xFF, StartOfScan = 0xDA, Progressive = 0xC2, ProgressiveArithmetic = 0xCA;

    public static bool IsJpeg(ReadOnlySpan<byte> file) => file.Length > 3 && file[0] == Mark && file[1] == 0xD8 && file[2] == Mark;

    public static JpegShape Of(ReadOnlySpan<byte> file)
    {
        var (inPasses, passes, at) = (false, 0, 2);
        while (at + 4 <= file.Length)
        {
            if (file[at] != Mark)
            {
                // Within a scan: entropy-coded bytes, in which 0xFF is always followed by 0 or a restart mark.
                var next = file[at..].IndexOf(Mark);
                if (next < 0)
                {
                    break;
                }

                at += next;
                continue;
            }

            var code = file[at + 1];
            if (code is 0 or Mark or (>= 0xD0 and <= 0xD8) or 0x01)
            {
                at += code == Mark ? 1 : 2;
                continue;
            }

            if (code == 0xD9)
            {
                break;
            }

            inPasses |= code is Progressive or ProgressiveArithmetic;
            passes += code == StartOfScan ? 1 : 0;
            at += 2 + BinaryPrimitives.ReadUInt16BigEndian(file[(at + 2)..]);
        }

        return new(inPasses, passes);
    }
}
