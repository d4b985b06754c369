namespace Ashery.Solutions.Waters;

/// <summary>How a figure of a water lies for a plant.</summary>
public enum WaterLevel
{
    Fine,
    Watch,
    Trouble,
}

/// <summary>One figure of a water, judged.</summary>
public sealed record WaterFinding
{
    public required WaterFigureKind Kind { get; init; }

    /// <summary>In the unit of the figure.</summary>
    public required WaterRange Value { get; init; }

    /// <summary>The figure hangs on something that was put in.</summary>
    public required bool Estimated { get; init; }

    public required WaterLevel Level { get; init; }

    /// <summary>Level at the far end of the range, when that is worse.</summary>
    public required WaterLevel Worst { get; init; }

    /// <summary>From here on it wants watching; null when no limit is known.</summary>
    public required WaterLimit? Watch { get; init; }

    /// <summary>From here on it is trouble.</summary>
    public required WaterLimit? Trouble { get; init; }

    /// <summary>Part of the water to replace with rain to come below the first limit, 0 to 1; null where rain does not help or is not needed.</summary>
    public double? RainShare { get; init; }

    /// <summary>The limit that decided: the one passed, or the next one.</summary>
    public WaterLimit? Deciding => Level == WaterLevel.Trouble ? Trouble : Watch;
}
