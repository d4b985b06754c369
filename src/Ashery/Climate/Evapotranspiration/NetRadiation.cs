namespace Ashery.Climate.Evapotranspiration;

/// <summary>Radiation that the reference grass keeps, MJ/m² a day or an hour.</summary>
public static class NetRadiation
{
    /// <summary>Share of the sun that the reference grass throws back.</summary>
    public const double Albedo = 0.23;

    // Stefan-Boltzmann constant, MJ/(K⁴ m² day) and a 24th of it as printed for the hour.
    private const double Day = 4.903e-9, Hour = 2.043e-10;

    /// <summary>Net short wave from solar radiation (38).</summary>
    public static double ShortWave(double solar) => (1 - Albedo) * solar;

    /// <summary>Emission σT⁴ of a day at a temperature, °C.</summary>
    public static double Emission(double celsius) => Day * Fourth(celsius);

    /// <summary>Net long wave of a day (39), away from the ground.</summary>
    /// <param name="max">Day's maximum, °C.</param>
    /// <param name="min">Day's minimum, °C.</param>
    /// <param name="vapour">Actual vapour pressure, kPa.</param>
    /// <param name="clearness">Solar over clear-sky radiation, at most 1; without sun 0.8 is a fair guess (see the hourly equation).</param>
    public static double LongWave(double max, double min, double vapour, double clearness) =>
        (Emission(max) + Emission(min)) / 2 * Humidity(vapour) * Cloud(clearness);

    /// <summary>Net long wave of an hour (39 with the hour's constant).</summary>
    public static double LongWaveHour(double celsius, double vapour, double clearness) =>
        Hour * Fourth(celsius) * Humidity(vapour) * Cloud(clearness);

    private static double Humidity(double vapour) => 0.34 - (0.14 * Math.Sqrt(vapour));

    // Equation 39 limits the ratio to 1; below 0.25 / 0.75, the ratio of an overcast day by equations 35 and 36, the outgoing
    // radiation would turn negative near 0.26, so it stops there.
    private static double Cloud(double clearness) => (1.35 * Math.Clamp(clearness, 1.0 / 3, 1)) - 0.35;

    private static double Fourth(double celsius)
    {
        var square = (celsius + 273.16) * (celsius + 273.16);
        return square * square;
    }
}
