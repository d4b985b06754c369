namespace Ashery.Climate;

/// <summary>The weather of one day in the open, above grass: what a pot that stands free would meet.</summary>
/// <param name="Date">The day.</param>
/// <param name="MinCelsius">Lowest air temperature, °C.</param>
/// <param name="MaxCelsius">Highest air temperature, °C.</param>
/// <param name="RainMm">Rain and melted snow, mm (litres a square metre).</param>
/// <param name="RadiationMj">Solar radiation on level ground, MJ/m² a day.</param>
/// <param name="WindMs">Mean wind 2 m above ground, m/s.</param>
/// <param name="VapourKpa">Actual vapour pressure of the air, kPa.</param>
/// <param name="ReferenceEtMm">Reference evapotranspiration of FAO-56, mm.</param>
public readonly record struct DailyWeather(
    DateOnly Date,
    double MinCelsius,
    double MaxCelsius,
    double RainMm,
    double RadiationMj,
    double WindMs,
    double VapourKpa,
    double ReferenceEtMm)
{
    /// <summary>Mean of the day's extremes, °C (FAO-56 equation 9).</summary>
    public double MeanCelsius => (MinCelsius + MaxCelsius) / 2;
}
