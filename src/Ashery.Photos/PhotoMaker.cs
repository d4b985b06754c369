using System.Globalization;
using Ashery.Problems;
using SkiaSharp;

namespace Ashery.Photos;

/// <summary>
/// Makes a photograph ready to keep. The picture is decoded and drawn anew, so that nothing of the file that came is kept: no place, no
/// camera, no program hidden behind the picture. What claims to be too large is refused before it is decoded.
/// </summary>
public static class PhotoMaker
{
    private const string Field = "photo";

    private static readonly SKSamplingOptions Smooth = new(SKFilterMode.Linear, SKMipmapMode.Linear);

    // One picture in memory at a time: several at once could take all of a small machine.
    private static readonly Lock OneAtATime = new();

    public static Result<MadePhoto> Make(byte[] file)
    {
        if (file.Length > PhotoLimits.MostBytes)
        {
            return TooLong(file.Length);
        }

        lock (OneAtATime)
        {
            using var data = SKData.CreateCopy(file);
            using var codec = SKCodec.Create(data);
            if (codec is null)
            {
                return None();
            }

            if (codec.EncodedFormat is not (SKEncodedImageFormat.Jpeg or SKEncodedImageFormat.Png or SKEncodedImageFormat.Webp))
            {
                return None();
            }

            return TooLarge(file, codec) is { } problem ? Result.Fail<MadePhoto>(problem) : Draw(file, codec);
        }
    }

    /// <summary>Says that a file has too many bytes, for whoever need not read it first.</summary>
    public static Result<MadePhoto> TooLong(long bytes) => Fail(
        string.Create(CultureInfo.InvariantCulture, $"The photograph has {bytes / 1048576.0:0.#} MB; {PhotoLimits.MostBytes / 1048576} MB is the most."), "Choose a smaller size in the camera, or send it through an editor.");

    private static Problem? TooLarge(byte[] file, SKCodec codec)
    {
        var pixels = (long)codec.Info.Width * codec.Info.Height;
        var isJpeg = codec.EncodedFormat == SKEncodedImageFormat.Jpeg;
        var shape = isJpeg ? JpegShape.Of(file) : default;
        var most = isJpeg && !shape.InPasses ? PhotoLimits.MostPixels : PhotoLimits.MostWholePixels;
        if (codec.Info.Width < 1 || codec.Info.Height < 1 || pixels > most)
        {
            return new(Field, string.Create(CultureInfo.InvariantCulture, $"The picture has {codec.Info.Width} × {codec.Info.Height} pixels; {most / 1_000_000} million are the most."), "Choose a smaller size in the camera.");
        }

        return shape.Passes > PhotoLimits.MostPasses
            ? new(Field, string.Create(CultureInfo.InvariantCulture, $"The picture is drawn in {shape.Passes} passes; {PhotoLimits.MostPasses} are the most."), "Save it again from a picture program.")
            : null;
    }

    private static Result<MadePhoto> Draw(byte[] file, SKCodec codec)
    {
        using var colours = SKColorSpace.CreateSrgb();
        var size = Decoded(codec);
        var info = new SKImageInfo(size.Width, size.Height, SKColorType.Rgba8888, SKAlphaType.Premul, colours);
        using var bitmap = new SKBitmap();
        if (!bitmap.TryAllocPixels(info))
        {
            return Fail("There is not enough memory for this picture just now.", "Try again in a minute, or choose a smaller size.");
        }

        // A picture that breaks off is kept as far as it goes only when the camera's file is whole: half a picture helps nobody.
        if (codec.GetPixels(info, bitmap.GetPixels()) != SKCodecResult.Success)
        {
            return Fail("The picture breaks off or is damaged.", "Send it again from the camera.");
        }

        using var large = Upright(bitmap, codec.EncodedOrigin, PhotoLimits.LongSide, colours);
        using var small = Upright(bitmap, codec.EncodedOrigin, PhotoLimits.SmallSide, colours);
        return Result.Of(new MadePhoto(Jpeg(large), Jpeg(small), large.Width, large.Height, CameraDay.Of(file)));
    }

    /// <summary>A JPEG can be decoded at a part of its size; the smallest that is still large enough to keep.</summary>
    private static SKSizeI Decoded(SKCodec codec)
    {
        var full = codec.Info.Size;
        var wanted = (float)PhotoLimits.LongSide / Math.Max(full.Width, full.Height);
        if (wanted >= 1)
        {
            return full;
        }

        var part = codec.GetScaledDimensions(wanted);
        return Math.Max(part.Width, part.Height) >= PhotoLimits.LongSide || (long)full.Width * full.Height > PhotoLimits.MostWholePixels ? part : full;
    }

    /// <summary>Drawn as it is to be seen (EXIF orientation 1 to 8), on white, no longer than a side.</summary>
    private static SKBitmap Upright(SKBitmap source, SKEncodedOrigin origin, int side, SKColorSpace colours)
    {
        var turned = (int)origin >= (int)SKEncodedOrigin.LeftTop;
        var (wide, high) = turned ? (source.Height, source.Width) : (source.Width, source.Height);
        var scale = Math.Min(1, (double)side / Math.Max(wide, high));
        var (width, height) = (Math.Max(1, (int)Math.Round(wide * scale)), Math.Max(1, (int)Math.Round(high * scale)));
        var drawn = new SKBitmap(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Opaque, colours));
        using var canvas = new SKCanvas(drawn);
        canvas.Clear(SKColors.White);
        canvas.Scale((float)width / wide, (float)height / high);
        canvas.Concat(Turn(origin, source.Width, source.Height));
        using var image = SKImage.FromBitmap(source);
        canvas.DrawImage(image, 0, 0, Smooth);
        return drawn;
    }

    private static SKMatrix Turn(SKEncodedOrigin origin, float w, float h) => origin switch
    {
        SKEncodedOrigin.TopRight => new(-1, 0, w, 0, 1, 0, 0, 0, 1),
        SKEncodedOrigin.BottomRight => new(-1, 0, w, 0, -1, h, 0, 0, 1),
        SKEncodedOrigin.BottomLeft => new(1, 0, 0, 0, -1, h, 0, 0, 1),
        SKEncodedOrigin.LeftTop => new(0, 1, 0, 1, 0, 0, 0, 0, 1),
        SKEncodedOrigin.RightTop => new(0, -1, h, 1, 0, 0, 0, 0, 1),
        SKEncodedOrigin.RightBottom => new(0, -1, h, -1, 0, w, 0, 0, 1),
        SKEncodedOrigin.LeftBottom => new(0, 1, 0, -1, 0, w, 0, 0, 1),
        _ => SKMatrix.Identity,
    };

    private static byte[] Jpeg(SKBitmap bitmap)
    {
        using var data = bitmap.Encode(SKEncodedImageFormat.Jpeg, PhotoLimits.Quality);
        return data.ToArray();
    }

    private static Result<MadePhoto> None() => Fail("This is not a picture that can be read.", "Send a JPEG, PNG or WebP; a phone that keeps HEIC can be set to JPEG (“most compatible”).");

    private static Result<MadePhoto> Fail(string message, string wayOut) => Result.Fail<MadePhoto>(Field, message, wayOut);
}
