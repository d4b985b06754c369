using Ashery.Climate;
using Ashery.RootZone;
using Ashery.RootZone.Calibration;
using Ashery.Solutions.Waters;

namespace Ashery.Exchange.RootZone;

/// <summary>One pot as its file tells it: materials, crop, medium and water by name, so that it can be written back as it was read.</summary>
public sealed record PotDocument
{
    public string Name { get; init; } = "pot";

    /// <summary>First day.</summary>
    public required DateOnly From { get; init; }

    public int? Days { get; init; }

    /// <summary>Steps of the calculation a day; null for one.</summary>
    public int? StepsPerDay { get; init; }

    public required double Litres { get; init; }

    /// <summary>Height of the medium and width of the mouth, cm; null for a pot of the usual shape.</summary>
    public double? HeightCm { get; init; }

    public double? MouthCm { get; init; }

    /// <summary>Id of a medium.</summary>
    public required string Medium { get; init; }

    public PotPlant Plant { get; init; } = new();

    public IrrigationRule Watering { get; init; } = new();

    public Exposure Standing { get; init; } = Exposure.Open;

    /// <summary>Id of a water that ships; null for pure or the own one.</summary>
    public string? Water { get; init; }

    public WaterReport? OwnWater { get; init; }

    public StartState Start { get; init; } = new();

    /// <summary>Where it stands; its normals make the weather.</summary>
    public Place? Place { get; init; }

    /// <summary>A file of measured weather, for the days it has.</summary>
    public string? WeatherFile { get; init; }

    public IReadOnlyList<PotDocumentEvent> Events { get; init; } = [];

    public IReadOnlyList<PotReading> Readings { get; init; } = [];
}

/// <summary>The plant of a file: by its crop, or by what is told.</summary>
public sealed record PotPlant
{
    /// <summary>Id of a crop.</summary>
    public string? Crop { get; init; }

    /// <summary>How much of its last size it has, 0 to 1.</summary>
    public double? Filled { get; init; }

    /// <summary>Ground it covers now and at most, m².</summary>
    public double? Canopy { get; init; }

    public double? CanopyMost { get; init; }

    public double? FlowerLoad { get; init; }

    /// <summary>EC of the saturated extract it bears, mS/cm.</summary>
    public double? EcLimit { get; init; }

    /// <summary>Growth lost for each mS/cm above that, %.</summary>
    public double? SaltSlope { get; init; }

    public double? Vigour { get; init; }
}

/// <summary>Something done to the pot.</summary>
/// <param name="Date">When.</param>
/// <param name="Kind">What.</param>
public sealed record PotDocumentEvent(DateOnly Date, PotEventKind Kind)
{
    /// <summary>Materials by id: grams a pot for a dry feed, grams a litre for the can.</summary>
    public IReadOnlyList<KeyValuePair<string, double>> Parts { get; init; } = [];

    /// <summary>Strength of the can, mg N/L: the parts are then proportions by weight. Null where they are grams a litre.</summary>
    public double? NitrogenMg { get; init; }

    /// <summary>Days a coat names for 21 °C; its grade stands in the parts as N, P2O5 and K2O in percent, its grams a pot in <see cref="Grams"/>.</summary>
    public double CoatDays { get; init; }

    public double Grams { get; init; }

    /// <summary>L from the can or of the flush; of the new pot.</summary>
    public double Litres { get; init; }

    /// <summary>Share pruned, or of the old root ball kept.</summary>
    public double Share { get; init; }

    /// <summary>Medium after repotting.</summary>
    public string? Medium { get; init; }
}

public enum PotEventKind
{
    Feed,
    Can,
    Flush,
    Prune,
    Repot,
    Coated,
}
