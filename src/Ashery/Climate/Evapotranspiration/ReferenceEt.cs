namespace Ashery.Climate.Evapotranspiration;

/// <summary>Evapotranspiration of the reference grass: 12 cm high, well watered, surface resistance 70 s/m, mm.</summary>
public static class ReferenceEt
{
    /// <summary>Penman-Monteith of a day, mm (6).</summary>
    /// <param name="mean">Mean temperature, °C.</param>
    /// <param name="slope">Slope of the saturation curve, kPa/°C.</param>
    /// <param name="psychrometric">Psychrometric constant, kPa/°C.</param>
    /// <param name="energy">Net radiation less soil heat, MJ/m² a day.</param>
    /// <param name="wind">Wind at 2 m, m/s; never taken below <see cref="Wind.Least"/>.</param>
    /// <param name="deficit">Vapour pressure deficit, kPa.</param>
    public static double PenmanMonteith(double mean, double slope, double psychrometric, double energy, double wind, double deficit)
    {
        var u = Math.Max(wind, Evapotranspiration.Wind.Least);
        return ((0.408 * slope * energy) + (psychrometric * 900 / (mean + 273) * u * deficit)) / (slope + (psychrometric * (1 + (0.34 * u))));
    }

    /// <summary>Penman-Monteith of an hour, mm (53). Parameters as for a day, energy in MJ/m² an hour.</summary>
    public static double PenmanMonteithHour(double celsius, double slope, double psychrometric, double energy, double wind, double deficit)
    {
        var u = Math.Max(wind, Evapotranspiration.Wind.Least);
        return ((0.408 * slope * energy) + (psychrometric * 37 / (celsius + 273) * u * deficit)) / (slope + (psychrometric * (1 + (0.34 * u))));
    }

    /// <summary>From temperatures alone, mm (52; Hargreaves and Samani 1985): too low above 3 m/s of wind, too high in humid air.</summary>
    /// <param name="max">Day's maximum, °C.</param>
    /// <param name="min">Day's minimum, °C.</param>
    /// <param name="extraterrestrial">Extraterrestrial radiation, MJ/m² a day.</param>
    public static double Hargreaves(double max, double min, double extraterrestrial) => Math.Max(
        0, 0.0023 * (Air.MeanTemperature(max, min) + 17.8) * Math.Sqrt(Math.Max(0, max - min)) * Air.Millimetres(extraterrestrial));
}
