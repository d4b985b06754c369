namespace Ashery.RootZone.Draws;

/// <summary>Something a grower can measure.</summary>
public enum MeasurementKind
{
    LeachateEc,
    LeachatePh,
    PotWeight,
    ScoopWeighed,
    WaterReport,
    RunOffCaught,
    FullPotWeighed,
    FeedAnalysed,
    PlantMeasured,
}

/// <summary>What each measurement reads and how surely (errors from general knowledge of hobby meters and scales, no source).</summary>
internal static class Measurements
{
    private static readonly Row[] Rows =
    [
        new("EC of what runs out below (pour-through)", PotFigure.LeachateEc, null, 0.05, 0.1),
        new("pH of what runs out below (pour-through)", PotFigure.PH, null, 0.15, 0),
        new("weight of the pot before watering", PotFigure.WaterShare, null, 0.03, 0),
        new("ten scoops weighed together", null, "scoop-habit", 0, 0.02),
        new("a report of the source water", null, "water-strength", 0, 0.05),
        new("what runs out at watering, caught and measured", null, "watering-leaching", 0, 0.15),
        new("weight of the pot dry and just drained", null, "medium-capacity", 0, 0.03),
        new("an analysis of the feed", null, "feed-1", 0, 0.02),
        new("width of the plant with a tape", null, "plant-canopy", 0, 0.1),
    ];

    public static Row Of(MeasurementKind kind) => Rows[(int)kind];

    /// <summary>Error is <c>Absolute + Relative x reading</c>, one standard deviation.</summary>
    public sealed record Row(string Name, PotFigure? Figure, string? UncertainId, double Absolute, double Relative);
}
