namespace Ashery.Climate.Evapotranspiration;

/// <summary>
/// Air pressure and what follows from it. Equations and constants of this folder: Allen, Pereira, Raes and Smith (1998), Crop
/// evapotranspiration, FAO Irrigation and Drainage Paper 56 (seen); the numbers in brackets are theirs.
/// </summary>
public static class Air
{
    /// <summary>Lowest and highest place the equations are used for, metres above sea level.</summary>
    public const double LowestPlace = -430, HighestPlace = 5500;

    /// <summary>Air pressure, kPa, at a height above sea level, m (7).</summary>
    public static double Pressure(double elevation) => 101.3 * Math.Pow((293 - (0.0065 * elevation)) / 293, 5.26);

    /// <summary>Psychrometric constant, kPa/°C, at a pressure, kPa, with a latent heat of 2.45 MJ/kg (8).</summary>
    public static double Psychrometric(double pressure) => 0.665e-3 * pressure;

    /// <summary>Depth of water, mm, that an energy, MJ/m², evaporates (20).</summary>
    public static double Millimetres(double energy) => 0.408 * energy;

    /// <summary>Day's mean of temperature, °C, as FAO-56 defines it: the middle of the extremes (9).</summary>
    public static double MeanTemperature(double max, double min) => (max + min) / 2;
}
