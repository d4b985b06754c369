namespace Ashery.Pots;

/// <summary>How a pot is today, as far as somebody looked; null where nobody did.</summary>
public sealed record PotState
{
    /// <summary>Fraction of the available water left, 0 to 1.</summary>
    public double? AvailableWater { get; init; }

    public bool Wilted { get; init; }

    public bool Waterlogged { get; init; }

    /// <summary>Root rot, cold injury, or moved in the last days.</summary>
    public bool SickRoots { get; init; }

    /// <summary>Last hard pruning.</summary>
    public DateOnly? Pruned { get; init; }

    public bool Repotted { get; init; }

    /// <summary>Temperature of the medium, °C.</summary>
    public double? MediumCelsius { get; init; }

    public double? MediumPh { get; init; }
}

/// <summary>The day's weather, as far as known.</summary>
/// <param name="MaxCelsius">Highest temperature of the day.</param>
/// <param name="MeanCelsius">Daily mean.</param>
/// <param name="RainMm">Rain expected, mm.</param>
/// <param name="NowCelsius">Temperature at the hour of feeding or spraying.</param>
public sealed record DayWeather(double? MaxCelsius = null, double? MeanCelsius = null, double? RainMm = null, double? NowCelsius = null);
