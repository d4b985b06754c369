using System.Globalization;
using MetadataExtractor;
using MetadataExtractor.Formats.Exif;

namespace Ashery.Photos;

/// <summary>The day on which the camera says it took the picture.</summary>
internal static class CameraDay
{
    private static readonly int[] Tags = [ExifDirectoryBase.TagDateTimeOriginal, ExifDirectoryBase.TagDateTimeDigitized, ExifDirectoryBase.TagDateTime];

    /// <summary>As written in the camera's own clock; null where there is none or it cannot be.</summary>
    public static DateOnly? Of(byte[] file)
    {
        IReadOnlyList<MetadataExtractor.Directory> all;
        try
        {
            using var stream = new MemoryStream(file, writable: false);
            all = ImageMetadataReader.ReadMetadata(stream);
        }
        catch (Exception e) when (e is ImageProcessingException or IOException or ArgumentException or FormatException or OverflowException or IndexOutOfRangeException)
        {
            // A picture whose notes are broken is a picture all the same.
            return null;
        }

        foreach (var tag in Tags)
        {
            foreach (var directory in all.OfType<ExifDirectoryBase>())
            {
                // EXIF 2.3, section 4.6.4: "YYYY:MM:DD HH:MM:SS" (from memory).
                if (directory.GetString(tag) is { Length: >= 10 } text
                    && DateOnly.TryParseExact(text.AsSpan(0, 10), "yyyy:MM:dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
                    && day.Year >= 1990)
                {
                    return day;
                }
            }
        }

        return null;
    }
}
