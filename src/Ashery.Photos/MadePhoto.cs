namespace Ashery.Photos;

/// <summary>A photograph made ready to keep: drawn anew, upright, with nothing in it but the picture.</summary>
/// <param name="Jpeg">The picture as JPEG.</param>
/// <param name="Small">A small one for lists, as JPEG.</param>
/// <param name="Width">Pixels of the picture.</param>
/// <param name="Height">Pixels.</param>
/// <param name="TakenOn">Day the camera wrote; null where it wrote none.</param>
public sealed record MadePhoto(byte[] Jpeg, byte[] Small, int Width, int Height, DateOnly? TakenOn);
