namespace Ashery.Climate.Evapotranspiration;

/// <summary>Vapour pressure of the air, kPa, at saturation and from each kind of humidity data. Temperatures in °C, humidity in %.</summary>
public static class VapourPressure
{
    /// <summary>Coefficients of a psychrometer, 1/°C (16): aspirated at about 5 m/s, naturally ventilated at about 1 m/s, indoors without ventilation.</summary>
    public const double Aspirated = 0.000662, Natural = 0.000800, Indoors = 0.001200;

    /// <summary>Saturation vapour pressure at a temperature (11).</summary>
    public static double Saturation(double celsius) => 0.6108 * Math.Exp(17.27 * celsius / (celsius + 237.3));

    /// <summary>Mean saturation vapour pressure of a day (12): of the extremes, never of their mean, which is too low.</summary>
    public static double MeanSaturation(double max, double min) => (Saturation(max) + Saturation(min)) / 2;

    /// <summary>Slope of the saturation curve, kPa/°C (13).</summary>
    public static double Slope(double celsius) => 4098 * Saturation(celsius) / ((celsius + 237.3) * (celsius + 237.3));

    /// <summary>From the dew point (14).</summary>
    public static double FromDewPoint(double dewPoint) => Saturation(dewPoint);

    /// <summary>From wet and dry bulb, at a pressure in kPa (15).</summary>
    public static double FromPsychrometer(double wet, double dry, double pressure, double coefficient = Aspirated) =>
        Saturation(wet) - (coefficient * pressure * (dry - wet));

    /// <summary>From the day's highest and lowest humidity: the best kind (17).</summary>
    public static double FromHumidityExtremes(double max, double min, double highest, double lowest) =>
        ((Saturation(min) * highest / 100) + (Saturation(max) * lowest / 100)) / 2;

    /// <summary>From the highest humidity alone, where the lowest is not trusted (18).</summary>
    public static double FromHighestHumidity(double min, double highest) => Saturation(min) * highest / 100;

    /// <summary>From the mean humidity, less good (19).</summary>
    public static double FromMeanHumidity(double max, double min, double mean) => mean / 100 * MeanSaturation(max, min);

    /// <summary>Without humidity data (48): the dew point is near the day's minimum, in dry places 2 to 3 °C below it.</summary>
    /// <param name="min">Day's minimum, °C.</param>
    /// <param name="below">How far the dew point stays below it, °C.</param>
    public static double FromMinimum(double min, double below = 0) => Saturation(min - below);

    /// <summary>Dew point of a vapour pressure, °C: equation 14 turned round.</summary>
    public static double DewPoint(double vapour)
    {
        var ln = Math.Log(vapour / 0.6108);
        return 237.3 * ln / (17.27 - ln);
    }
}
