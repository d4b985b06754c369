namespace Ashery.Climate.Evapotranspiration;

/// <summary>Solar radiation on level ground, MJ/m² a day, from what is known. <c>extraterrestrial</c> is that of <see cref="SolarGeometry"/>.</summary>
public static class SolarRadiation
{
    /// <summary>Share of the extraterrestrial radiation that comes through on a wholly overcast day, and the further share with full sun (35).</summary>
    public const double Overcast = 0.25, FullSun = 0.50;

    /// <summary>Factor of the temperature range inland and near a coast, 1/√°C (50).</summary>
    public const double Inland = 0.16, Coast = 0.19;

    /// <summary>From hours of bright sunshine and daylight hours (35).</summary>
    public static double FromSunshine(double sunshine, double daylight, double extraterrestrial) =>
        daylight <= 0 ? 0 : (Overcast + (FullSun * sunshine / daylight)) * extraterrestrial;

    /// <summary>With a clear sky, at a height above sea level, m (37); height 0 gives equation 36.</summary>
    public static double ClearSky(double elevation, double extraterrestrial) => (0.75 + (2e-5 * elevation)) * extraterrestrial;

    /// <summary>From the day's temperature range (50), capped at the clear-sky radiation as the text asks.</summary>
    public static double FromRange(double max, double min, double extraterrestrial, double factor, double elevation = 0) =>
        Math.Min(factor * Math.Sqrt(Math.Max(0, max - min)) * extraterrestrial, ClearSky(elevation, extraterrestrial));

    /// <summary>On an island, as a monthly mean, at 0 to 100 m (51).</summary>
    public static double Island(double extraterrestrial) => Math.Max(0, (0.7 * extraterrestrial) - 4);
}
