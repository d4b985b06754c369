using Ashery.Crops;
using Ashery.Feeds;
using Ashery.Materials;

namespace Ashery.Pots;

/// <summary>What a dose is worked out from.</summary>
public sealed record DoseRequest
{
    public required Pot Pot { get; init; }

    public required Crop Crop { get; init; }

    public required Feed Feed { get; init; }

    public required DateOnly On { get; init; }

    /// <summary>How many feeds that supply nitrogen share the season's amount.</summary>
    public required int FeedsInSeason { get; init; }

    /// <summary>Length of the growing season, months.</summary>
    public required double SeasonMonths { get; init; }

    /// <summary>Scale resolution, g.</summary>
    public double ScaleStep { get; init; } = 1;

    /// <summary>Scoop to measure with; null to weigh.</summary>
    public Scoop? Scoop { get; init; }
}
