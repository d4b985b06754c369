namespace Ashery.Photos;

/// <summary>How large a photograph may be when it comes, and how large it is kept.</summary>
public static class PhotoLimits
{
    /// <summary>Largest file, bytes.</summary>
    public const int MostBytes = 25 * 1024 * 1024;

    /// <summary>Most pixels a picture may claim; a few bytes can claim thousands of millions.</summary>
    public const long MostPixels = 120_000_000;

    /// <summary>Most pixels of one that has to be held whole while it is read: PNG, WebP, and JPEG in passes.</summary>
    public const long MostWholePixels = 40_000_000;

    /// <summary>Most passes of a JPEG in passes: each draws the whole picture again, and an empty one takes but a few bytes.</summary>
    public const int MostPasses = 60;

    /// <summary>Longest side kept.</summary>
    public const int LongSide = 2048;

    /// <summary>Longest side of the small one.</summary>
    public const int SmallSide = 480;

    /// <summary>JPEG quality of both.</summary>
    public const int Quality = 85;
}
