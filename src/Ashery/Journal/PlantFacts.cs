namespace Ashery.Journal;

/// <summary>A figure read on the entry's one pot.</summary>
/// <param name="What">Which figure; it carries the unit.</param>
/// <param name="Value">In that unit.</param>
/// <param name="Celsius">Temperature of the sample where the meter does not correct for it; null else.</param>
public sealed record Measured(MeasuredKind What, double Value, double? Celsius = null) : EntryFacts;

/// <summary>What can be measured beside a pot, each in one unit.</summary>
public enum MeasuredKind
{
    /// <summary>EC of drainage water (pour-through), mS/cm at 25 °C.</summary>
    LeachateEc,

    /// <summary>pH of drainage water.</summary>
    LeachatePh,

    /// <summary>EC of the 1:2 extract, mS/cm at 25 °C.</summary>
    ExtractEc,

    /// <summary>pH of the 1:2 extract.</summary>
    ExtractPh,

    /// <summary>Weight of pot, medium, water and plant, g.</summary>
    Weight,

    /// <summary>Open flowers.</summary>
    Flowers,

    /// <summary>Buds.</summary>
    Buds,

    /// <summary>Leaf colour against the card, 1 (yellow) to 5 (dark green).</summary>
    LeafColour,

    /// <summary>Height of the plant, cm.</summary>
    Height,

    /// <summary>Width of the plant, cm.</summary>
    Width,
}

/// <summary>Something done to the entry's pots, or that happened to them.</summary>
/// <param name="What">What.</param>
/// <param name="Litres">Volume of medium after potting on, or water given; null when it does not apply.</param>
/// <param name="Medium">Medium after repotting, by its word; null when it stays.</param>
/// <param name="Place">Where they stand now; null when that stays.</param>
public sealed record PlantEvent(PlantEventKind What, double? Litres = null, string? Medium = null, string? Place = null) : EntryFacts;

public enum PlantEventKind
{
    Planted,
    Repotted,
    Pruned,
    Moved,
    Flushed,
    Watered,
    Treated,
    Died,
    Other,
}

/// <summary>A pest, disease or sign seen on the entry's pots.</summary>
/// <param name="What">Word of the grower or of the clinic's signs.</param>
/// <param name="Severity">1 a few, 2 many, 3 everywhere; 0 gone.</param>
public sealed record Sighting(string What, int Severity) : EntryFacts;

/// <summary>A photograph of the entry's pots. The file lies beside the records under its hash; nothing of the place is kept in it.</summary>
/// <param name="Hash">SHA-256 of the kept file, 64 hexadecimal signs.</param>
/// <param name="Width">Pixels.</param>
/// <param name="Height">Pixels.</param>
public sealed record Photograph(string Hash, int Width, int Height) : EntryFacts;
