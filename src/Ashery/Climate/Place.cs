namespace Ashery.Climate;

/// <summary>Where the garden is, as far as feeding cares.</summary>
public sealed record Place
{
    public required string Name { get; init; }

    /// <summary>Degrees, north positive. Decides hemisphere and daylight.</summary>
    public required double Latitude { get; init; }

    /// <summary>Metres above sea level; null when not told (sea level is then assumed).</summary>
    public double? ElevationMetres { get; init; }

    /// <summary>True where a large water body is near and governs the air: its radiation is estimated higher for the same temperature range.</summary>
    public bool NearCoast { get; init; }

    /// <summary>Twelve monthly normals, January first; null when the grower names the seasons instead.</summary>
    public IReadOnlyList<MonthlyNormal>? Normals { get; init; }

    /// <summary>Seasons the grower named; they win over what the normals suggest.</summary>
    public IReadOnlyList<Season> Seasons { get; init; } = [];
}

/// <summary>A month's usual weather.</summary>
/// <param name="MeanMax">Mean daily maximum, °C.</param>
/// <param name="MeanMin">Mean daily minimum, °C.</param>
/// <param name="RainMm">mm a month.</param>
public sealed record MonthlyNormal(double MeanMax, double MeanMin, double RainMm)
{
    /// <summary>Days with rain in the month; null when not known.</summary>
    public double? WetDays { get; init; }

    /// <summary>Mean wind at 2 m, m/s; null when not known.</summary>
    public double? WindMs { get; init; }

    /// <summary>Mean relative humidity, %; null when not known.</summary>
    public double? Humidity { get; init; }

    /// <summary>Mean solar radiation, MJ/m² a day; null when not known.</summary>
    public double? RadiationMj { get; init; }
}

/// <summary>A stretch of the year, first and last day included; may wrap the year's end.</summary>
public sealed record Season(SeasonKind Kind, MonthDay From, MonthDay To);

/// <summary>A day of any year.</summary>
public readonly record struct MonthDay(int Month, int Day);

public enum SeasonKind
{
    Growing,
    Hot,
    Rainy,
    Resting,
}
