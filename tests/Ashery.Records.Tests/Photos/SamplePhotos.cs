using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;
using SkiaSharp;

namespace Ashery.Records.Tests.Photos;

/// <summary>Pictures made for the tests: left half red, right half blue, with a white corner at the top left.</summary>
internal static class SamplePhotos
{
    public static byte[] Jpeg(int width, int height) => Encode(width, height, SKEncodedImageFormat.Jpeg);

    public static byte[] Encode(int width, int height, SKEncodedImageFormat format)
    {
        using var bitmap = new SKBitmap(width, height);
        using (var canvas = new SKCanvas(bitmap))
        {
            canvas.Clear(SKColors.Red);
            using var paint = new SKPaint { Color = SKColors.Blue };
            canvas.DrawRect(width / 2f, 0, width / 2f, height, paint);
            paint.Color = SKColors.White;
            canvas.DrawRect(0, 0, width / 4f, height / 4f, paint);
        }

        using var data = bitmap.Encode(format, 95);
        return data.ToArray();
    }

    /// <summary>The JPEG with an EXIF block after its first marker: orientation, day and place (EXIF 2.3 and TIFF 6.0, tags from memory).</summary>
    public static byte[] WithExif(byte[] jpeg, ushort orientation, string taken)
    {
        // One directory with orientation, EXIF pointer and GPS pointer; each pointed directory behind it.
        var tiff = new byte[200];
        void Short(int at, int value) => BinaryPrimitives.WriteUInt16LittleEndian(tiff.AsSpan(at), (ushort)value);
        void Long(int at, int value) => BinaryPrimitives.WriteUInt32LittleEndian(tiff.AsSpan(at), (uint)value);
        void Row(int at, int tag, int type, int count, int value)
        {
            Short(at, tag);
            Short(at + 2, type);
            Long(at + 4, count);
            Long(at + 8, value);
        }

        Encoding.ASCII.GetBytes("II*\0").CopyTo(tiff, 0);
        Long(4, 8);
        Short(8, 3);
        Row(10, 0x0112, 3, 1, orientation);
        Row(22, 0x8769, 4, 1, 50);
        Row(34, 0x8825, 4, 1, 90);
        Short(50, 1);
        Row(52, 0x9003, 2, 20, 68);
        Encoding.ASCII.GetBytes(taken + "\0").CopyTo(tiff, 68);
        Short(90, 4);
        Row(92, 1, 2, 2, 'N');
        Row(104, 2, 5, 3, 146);
        Row(116, 3, 2, 2, 'E');
        Row(128, 4, 5, 3, 170);
        foreach (var (at, degrees) in new[] { (146, 43), (170, 16) })
        {
            Long(at, degrees);
            Long(at + 4, 1);
            Long(at + 8, 30);
            Long(at + 12, 1);
            Long(at + 16, 0);
            Long(at + 20, 1);
        }

        byte[] head = [0xFF, 0xE1, 0, 0, .. "Exif\0\0"u8];
        BinaryPrimitives.WriteUInt16BigEndian(head.AsSpan(2), (ushort)(2 + 6 + tiff.Length));
        return [.. jpeg[..2], .. head, .. tiff, .. jpeg[2..]];
    }

    /// <summary>A PNG of a few hundred bytes that claims any size.</summary>
    public static byte[] PngThatClaims(int width, int height)
    {
        var header = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(header, width);
        BinaryPrimitives.WriteInt32BigEndian(header.AsSpan(4), height);
        header[8] = 8;
        header[9] = 2;
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.Fastest, leaveOpen: true))
        {
            zlib.Write(new byte[100_000]);
        }

        return [0x89, .. "PNG\r\n\u001a\n"u8, .. Chunk("IHDR", header), .. Chunk("IDAT", packed.ToArray()), .. Chunk("IEND", [])];
    }

    /// <summary>The header of a JPEG changed to claim another size (frame header of ITU-T T.81: height and width after the precision).</summary>
    public static byte[] JpegThatClaims(int width, int height)
    {
        var jpeg = Jpeg(64, 64);
        var at = jpeg.AsSpan().IndexOf([(byte)0xFF, (byte)0xC0]);
        BinaryPrimitives.WriteUInt16BigEndian(jpeg.AsSpan(at + 5), (ushort)height);
        BinaryPrimitives.WriteUInt16BigEndian(jpeg.AsSpan(at + 7), (ushort)width);
        return jpeg;
    }

    private static byte[] Chunk(string name, byte[] data)
    {
        byte[] body = [.. Encoding.ASCII.GetBytes(name), .. data];
        var chunk = new byte[12 + data.Length];
        BinaryPrimitives.WriteInt32BigEndian(chunk, data.Length);
        body.CopyTo(chunk, 4);
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(8 + data.Length), Crc(body));
        return chunk;
    }

    private static uint Crc(byte[] bytes)
    {
        var crc = 0xFFFFFFFFu;
        foreach (var b in bytes)
        {
            crc ^= b;
            for (var i = 0; i < 8; i++)
            {
                crc = (crc >> 1) ^ ((crc & 1) * 0xEDB88320u);
            }
        }

        return ~crc;
    }
}
