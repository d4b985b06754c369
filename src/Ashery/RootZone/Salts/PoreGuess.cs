namespace Ashery.RootZone.Salts;

/// <summary>How the ions of a pore water were paired: where the search for those of the next evening begins.</summary>
/// <param name="Strength">Ionic strength over that without pairs; 0 where nothing is known.</param>
/// <param name="Sulfate">Free part of sulfate.</param>
/// <param name="Phosphate">Part of phosphate that is free H2PO4-.</param>
/// <param name="SecondPhosphate">Part that is free HPO4--.</param>
/// <param name="Bicarbonate">Free, mol/L.</param>
internal readonly record struct PoreGuess(double Strength, double Sulfate, double Phosphate, double SecondPhosphate, double Bicarbonate)
{
    /// <summary>Of a water never seen before.</summary>
    public static PoreGuess Cold => new(1, 0.7, 1, 0, 0);
}
