using Ashery.Quantities;

namespace Ashery.Pots;

/// <summary>A pot (or a group of equal pots) with what grows in it.</summary>
public sealed record Pot
{
    public required string Id { get; init; }

    public required string Name { get; init; }

    /// <summary>Crop of the catalogue.</summary>
    public required string CropId { get; init; }

    /// <summary>Volume of medium; given, or worked out from diameter and height.</summary>
    public required Volume Volume { get; init; }

    /// <summary>Inside measures, when <see cref="Volume"/> was worked out from them.</summary>
    public PotSize? Size { get; init; }

    public required MediumKind Medium { get; init; }

    public PlantStage Stage { get; init; } = PlantStage.Mature;

    /// <summary>When planted, where known; the stage may be worked out from it.</summary>
    public DateOnly? Planted { get; init; }

    public DateOnly? LastRepotted { get; init; }

    /// <summary>How many equal pots this line stands for.</summary>
    public int Count { get; init; } = 1;

    /// <summary>Where it stands; decides the walking order.</summary>
    public string? Place { get; init; }

    /// <summary>Whether it needs trace elements; null to judge from medium and last repotting.</summary>
    public bool? NeedsTraceElements { get; init; }

    /// <summary>Whether the medium is known to hold little phosphorus, as a soil test says; null when unknown.</summary>
    public bool? LowPhosphorus { get; init; }
}

public enum MediumKind
{
    PeatMix,
    BarkMix,
    CoirMix,
    LoamMix,
    Mineral,
}

/// <summary>Stage of the plant, which sets the fraction of the full rate.</summary>
public enum PlantStage
{
    Seedling,
    Liner,
    Young,
    Mature,
    RootBound,
    Dormant,
}
