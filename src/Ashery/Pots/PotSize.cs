namespace Ashery.Pots;

/// <summary>Inside measures of a pot, cm.</summary>
/// <param name="TopDiameter">Across the rim, cm; for a square pot its side.</param>
/// <param name="Height">Inside height, cm.</param>
/// <param name="BottomDiameter">Across the bottom, cm; null for the usual taper.</param>
public sealed record PotSize(double TopDiameter, double Height, double? BottomDiameter = null);
