namespace Ashery.Climate.Evapotranspiration;

/// <summary>
/// Reference evapotranspiration of a day at one place: what does not change with the weather (pressure, the sun's course for every day of the year) is
/// worked out once. Safe to use from several threads.
/// </summary>
public sealed class DayEt
{
    private readonly double psychrometric;
    private readonly double clear;
    private readonly double[] extraterrestrial = new double[367];
    private readonly double[] daylight = new double[367];

    /// <param name="latitude">Degrees, north positive.</param>
    /// <param name="elevation">Metres above sea level.</param>
    public DayEt(double latitude, double elevation)
    {
        psychrometric = Air.Psychrometric(Air.Pressure(elevation));
        clear = SolarRadiation.ClearSky(elevation, 1);
        for (var day = 1; day <= 366; day++)
        {
            extraterrestrial[day] = SolarGeometry.Extraterrestrial(latitude, day);
            daylight[day] = SolarGeometry.DaylightHours(latitude, day);
        }
    }

    /// <summary>Share of the extraterrestrial radiation that a clear sky lets through.</summary>
    public double Clear => clear;

    /// <summary>Extraterrestrial radiation, MJ/m² a day.</summary>
    public double Extraterrestrial(int dayNumber) => extraterrestrial[dayNumber];

    /// <summary>Daylight, h.</summary>
    public double Daylight(int dayNumber) => daylight[dayNumber];

    /// <summary>Reference evapotranspiration, mm, never below 0: dew is not counted as water gained.</summary>
    /// <param name="dayNumber">Day of the year.</param>
    /// <param name="max">Day's maximum, °C.</param>
    /// <param name="min">Day's minimum, °C.</param>
    /// <param name="radiation">Solar radiation, MJ/m² a day.</param>
    /// <param name="wind">Wind at 2 m, m/s.</param>
    /// <param name="vapour">Actual vapour pressure, kPa.</param>
    public double Of(int dayNumber, double max, double min, double radiation, double wind, double vapour) =>
        Under(dayNumber, max, min, radiation, radiation, wind, vapour);

    /// <summary>The same in shade: less sun arrives, but the sky is as clear as over the open.</summary>
    /// <param name="dayNumber">Day of the year.</param>
    /// <param name="max">Day's maximum, °C.</param>
    /// <param name="min">Day's minimum, °C.</param>
    /// <param name="radiation">Solar radiation in the shade, MJ/m² a day.</param>
    /// <param name="open">Solar radiation in the open, MJ/m² a day.</param>
    /// <param name="wind">Wind at 2 m, m/s.</param>
    /// <param name="vapour">Actual vapour pressure, kPa.</param>
    public double Under(int dayNumber, double max, double min, double radiation, double open, double wind, double vapour)
    {
        var mean = (max + min) / 2;
        var top = clear * extraterrestrial[dayNumber];
        var clearness = top > 0 ? open / top : PolarNight;
        var energy = NetRadiation.ShortWave(radiation) - NetRadiation.LongWave(max, min, vapour, clearness);
        var deficit = Math.Max(0, VapourPressure.MeanSaturation(max, min) - vapour);
        return Math.Max(0, ReferenceEt.PenmanMonteith(mean, VapourPressure.Slope(mean), psychrometric, energy, wind, deficit));
    }

    // Without sun the cloud cover cannot be seen; 0.4 to 0.6 in humid and 0.7 to 0.8 in dry climates (FAO-56, hourly equation). It only matters where it freezes.
    private const double PolarNight = 0.6;
}
