namespace Ashery.Climate.Observed;

/// <summary>A day as a station or file gives it. NaN stands for what is missing.</summary>
public readonly record struct ObservedDay(DateOnly Date)
{
    /// <summary>°C.</summary>
    public double Max { get; init; } = double.NaN;

    /// <summary>°C.</summary>
    public double Min { get; init; } = double.NaN;

    /// <summary>mm.</summary>
    public double Rain { get; init; } = double.NaN;

    /// <summary>Solar radiation, MJ/m².</summary>
    public double Radiation { get; init; } = double.NaN;

    /// <summary>Bright sunshine, h.</summary>
    public double Sunshine { get; init; } = double.NaN;

    /// <summary>Mean wind at 2 m, m/s.</summary>
    public double Wind { get; init; } = double.NaN;

    /// <summary>Mean vapour pressure, kPa.</summary>
    public double Vapour { get; init; } = double.NaN;

    /// <summary>°C.</summary>
    public double DewPoint { get; init; } = double.NaN;

    /// <summary>Mean relative humidity, %.</summary>
    public double Humidity { get; init; } = double.NaN;

    /// <summary>Highest relative humidity, %.</summary>
    public double HighestHumidity { get; init; } = double.NaN;

    /// <summary>Lowest relative humidity, %.</summary>
    public double LowestHumidity { get; init; } = double.NaN;
}
