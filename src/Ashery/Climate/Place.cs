namespace Ashery.Climate;

/// <summary>Where the garden is, as far as feeding cares.</summary>
public sealed record Place
{
    public required string Name { get; init; }

    /// <summary>Degrees, north positive. Decides hemisphere and daylight.</summary>
    public required double Latitude { get; init; }

    /// <summary>Twelve monthly normals, January first; null when the grower names the seasons instead.</summary>
    public IReadOnlyList<MonthlyNormal>? Normals { get; init; }

    /// <summary>Seasons the grower named; they win over what the normals suggest.</summary>
    public IReadOnlyList<Season> Seasons { get; init; } = [];
}

/// <summary>A month's usual weather.</summary>
/// <param name="MeanMax">Mean daily maximum, °C.</param>
/// <param name="MeanMin">Mean daily minimum, °C.</param>
/// <param name="RainMm">mm a month.</param>
public sealed record MonthlyNormal(double MeanMax, double MeanMin, double RainMm);

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
