using Ashery.Crops;

namespace Ashery.RootZone;

/// <summary>The plant of a pot as the model sees it.</summary>
public sealed record PlantSpec
{
    public string CropId { get; init; } = "plant";

    public FeederClass Feeder { get; init; } = FeederClass.Medium;

    /// <summary>Ground its canopy covers at the start, m².</summary>
    public required double CanopyStart { get; init; }

    /// <summary>Ground it covers when the pot lets it grow no further, m².</summary>
    public required double CanopyMost { get; init; }

    /// <summary>°C below which it does not grow, and between which it grows best.</summary>
    public double BaseCelsius { get; init; } = 8;

    public double BestFromCelsius { get; init; } = 20;

    public double BestToCelsius { get; init; } = 30;

    /// <summary>0 no flowers, 1 in full flower.</summary>
    public double FlowerLoad { get; init; }

    /// <summary>Saturated extract EC at which growth begins to fall, mS/cm, and % a mS/cm after that.</summary>
    public double SaltThreshold { get; init; } = 2.5;

    public double SaltSlope { get; init; } = 10;

    /// <summary>Multiplies what the canopy uses of water and of light: 1 the usual plant, 0.5 a slow one.</summary>
    public double Vigour { get; init; } = 1;

    /// <summary>Multiplies the nitrogen wanted; null by feeder class.</summary>
    public double? NitrogenWanted { get; init; }

    /// <summary>A plant of the catalogue in a pot of this shape: canopy by the pot, temperatures and salt from the crop where known.</summary>
    /// <param name="crop">The crop.</param>
    /// <param name="shape">The pot.</param>
    /// <param name="filled">How much of its last size it has, 0 to 1.</param>
    public static PlantSpec Of(Crop crop, PotShape shape, double filled = 0.6)
    {
        var most = UsualCanopy(shape);
        return new()
        {
            CropId = crop.Id,
            Feeder = crop.Feeder,
            CanopyStart = most * Math.Clamp(filled, 0.02, 1),
            CanopyMost = most,
            BaseCelsius = crop.BaseCelsius ?? 8,
            BestFromCelsius = crop.OptimumCelsius?.Low ?? 20,
            BestToCelsius = crop.OptimumCelsius?.High ?? 30,
            SaltThreshold = crop.SaturatedExtractEc?.High ?? 2.5,
        };
    }

    /// <summary>
    /// m² a grown plant covers: twice the width of its pot (common practice: a plant is potted on when its crown is twice as wide as
    /// the pot), so four times the mouth.
    /// </summary>
    public static double UsualCanopy(PotShape shape) => 4 * shape.MouthArea;
}
