using Ashery.Pots;

namespace Ashery.RootZone;

/// <summary>What the model needs of a pot's shape.</summary>
/// <param name="Litres">Volume of medium.</param>
/// <param name="HeightCm">Height of the medium, cm.</param>
/// <param name="MouthCm">Inside width at the rim, cm: where rain enters and the surface dries.</param>
public sealed record PotShape(double Litres, double HeightCm, double MouthCm)
{
    // Height over width of the usual round pot (makers' nominal sizes 13 to 40 cm, from memory: 0.90 to 0.93).
    private const double UsualHeight = 0.92;

    /// <summary>m² of the mouth.</summary>
    public double MouthArea => Math.PI / 4 * MouthCm * MouthCm * 1e-4;

    /// <summary>A round pot of the usual shape that holds this much, from the cone V = pi h (D² + D d + d²)/12 filled to the usual share.</summary>
    public static PotShape OfLitres(double litres)
    {
        var cone = PotVolume.FillFraction * Math.PI / 12 * UsualHeight * (1 + PotVolume.UsualTaper + (PotVolume.UsualTaper * PotVolume.UsualTaper));
        var mouth = Math.Cbrt(litres * 1000 / cone);
        return new(litres, mouth * UsualHeight * PotVolume.FillFraction, mouth);
    }

    /// <summary>A round pot by its width at the rim and the height of its medium; of the usual height where none is told.</summary>
    public static PotShape OfMouth(double mouthCm, double? heightCm = null)
    {
        var height = heightCm ?? (mouthCm * UsualHeight * PotVolume.FillFraction);
        var litres = Math.PI / 12 * height * mouthCm * mouthCm * (1 + PotVolume.UsualTaper + (PotVolume.UsualTaper * PotVolume.UsualTaper)) / 1000;
        return new(litres, height, mouthCm);
    }

    /// <summary>By its measures where told, else by its litres.</summary>
    public static PotShape Of(Pot pot) => pot.Size is { } size
        ? new(pot.Volume.Litres, size.Height * PotVolume.FillFraction, size.TopDiameter)
        : OfLitres(pot.Volume.Litres);
}
