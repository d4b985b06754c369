using Ashery.Photos;
using MetadataExtractor;
using MetadataExtractor.Formats.Exif;
using SkiaSharp;

namespace Ashery.Records.Tests.Photos;

public class PhotoMakerTests
{
    private const string Taken = "2027:04:03 10:15:00";

    /// <summary>The file that came names a place, as a general library reads it; the kept ones name none, nor anything else of EXIF.</summary>
    [Fact]
    public void The_place_is_taken_out_and_the_day_is_read()
    {
        var sent = SamplePhotos.WithExif(SamplePhotos.Jpeg(400, 300), 1, Taken);
        var place = ImageMetadataReader.ReadMetadata(new MemoryStream(sent)).OfType<GpsDirectory>().Single();
        Assert.Equal(43.5, place.GetGeoLocation()!.Latitude, 0.001);

        var made = Make(sent);
        Assert.Equal(new DateOnly(2027, 4, 3), made.TakenOn);
        foreach (var kept in new[] { made.Jpeg, made.Small })
        {
            var all = ImageMetadataReader.ReadMetadata(new MemoryStream(kept));
            Assert.Empty(all.OfType<GpsDirectory>());
            Assert.Empty(all.OfType<ExifDirectoryBase>());
            Assert.True(kept.AsSpan().IndexOf("Exif"u8) < 0);
            Assert.True(kept.AsSpan().IndexOf("2027:04"u8) < 0);
        }
    }

    /// <summary>EXIF orientation: where the white corner of the stored picture is to be seen (EXIF 2.3, table of tag 0x0112, from memory).</summary>
    [Theory]
    [InlineData(1, false, 0, 0)]
    [InlineData(2, false, 1, 0)]
    [InlineData(3, false, 1, 1)]
    [InlineData(4, false, 0, 1)]
    [InlineData(5, true, 0, 0)]
    [InlineData(6, true, 1, 0)]
    [InlineData(7, true, 1, 1)]
    [InlineData(8, true, 0, 1)]
    public void It_is_kept_upright(ushort orientation, bool turned, int right, int below)
    {
        var made = Make(SamplePhotos.WithExif(SamplePhotos.Jpeg(400, 300), orientation, Taken));
        Assert.Equal(turned ? (300, 400) : (400, 300), (made.Width, made.Height));
        using var kept = SKBitmap.Decode(made.Jpeg);
        Assert.Equal((made.Width, made.Height), (kept.Width, kept.Height));
        foreach (var (x, y) in new[] { (0, 0), (1, 0), (0, 1), (1, 1) })
        {
            var colour = kept.GetPixel(10 + (x * (kept.Width - 21)), 10 + (y * (kept.Height - 21)));
            Assert.Equal((x, y) == (right, below), colour.Green > 200);
        }
    }

    [Fact]
    public void A_large_one_is_kept_smaller_and_a_small_one_as_it_is()
    {
        var made = Make(SamplePhotos.Jpeg(4000, 1000));
        Assert.Equal((2048, 512), (made.Width, made.Height));
        using var small = SKBitmap.Decode(made.Small);
        Assert.Equal((480, 120), (small.Width, small.Height));
        Assert.Equal((30, 20), (Make(SamplePhotos.Jpeg(30, 20)).Width, Make(SamplePhotos.Jpeg(30, 20)).Height));
    }

    [Fact]
    public void Png_and_webp_are_taken_and_the_same_picture_gives_the_same_bytes()
    {
        foreach (var format in new[] { SKEncodedImageFormat.Png, SKEncodedImageFormat.Webp })
        {
            var sent = SamplePhotos.Encode(200, 100, format);
            Assert.Equal(Make(sent).Jpeg, Make(sent).Jpeg);
            Assert.Null(Make(sent).TakenOn);
        }
    }

    [Fact]
    public void What_claims_too_many_pixels_is_refused_before_it_is_decoded()
    {
        var before = GC.GetTotalAllocatedBytes();
        foreach (var bomb in new[] { SamplePhotos.PngThatClaims(50_000, 50_000), SamplePhotos.PngThatClaims(40_001, 1000), SamplePhotos.JpegThatClaims(65_000, 65_000) })
        {
            Assert.True(bomb.Length < 10_000);
            var made = PhotoMaker.Make(bomb);
            Assert.False(made.Ok);
            Assert.Contains("pixels", made.Problems[0].Message, StringComparison.Ordinal);
        }

        Assert.True(GC.GetTotalAllocatedBytes() - before < 50_000_000);
    }

    [Fact]
    public void A_picture_of_hundreds_of_passes_is_refused()
    {
        var jpeg = SamplePhotos.Jpeg(64, 64);
        var scan = jpeg.AsSpan().IndexOf([(byte)0xFF, (byte)0xDA]);
        byte[] many = [.. jpeg[..^2], .. Enumerable.Repeat(jpeg[scan..^2], 100).SelectMany(static s => s), .. jpeg[^2..]];
        var made = PhotoMaker.Make(many);
        Assert.Contains("101 passes", made.Problems[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_no_picture_says_so()
    {
        foreach (var sent in new[] { [], "GIF89a not really"u8.ToArray(), "<svg xmlns='http://www.w3.org/2000/svg'/>"u8.ToArray(), new byte[1000], SamplePhotos.Encode(20, 20, SKEncodedImageFormat.Png)[..40] })
        {
            var made = PhotoMaker.Make(sent);
            Assert.False(made.Ok);
            Assert.Equal("photo", made.Problems[0].Field);
        }

        Assert.Contains("MB", PhotoMaker.Make(new byte[PhotoLimits.MostBytes + 1]).Problems[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Half_a_picture_is_refused()
    {
        var jpeg = SamplePhotos.Jpeg(800, 600);
        Assert.False(PhotoMaker.Make(jpeg[..(jpeg.Length / 2)]).Ok);
    }

    private static MadePhoto Make(byte[] sent)
    {
        var made = PhotoMaker.Make(sent);
        Assert.True(made.Ok, string.Join(' ', made.Problems));
        return made.Value;
    }
}
