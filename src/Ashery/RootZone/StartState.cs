namespace Ashery.RootZone;

/// <summary>How the pot is on the first morning; null for what the medium usually is.</summary>
/// <param name="PH">pH of the medium.</param>
/// <param name="SolutionStrength">Salts in the pore water as starter feed, mS/cm about; 0 for none but the source water.</param>
/// <param name="WaterShare">Water as a share of container capacity.</param>
/// <param name="LimeGramsPerLitre">Unreacted lime, g CaCO3 a litre.</param>
public sealed record StartState(double? PH = null, double SolutionStrength = 0.8, double WaterShare = 0.95, double? LimeGramsPerLitre = null);
