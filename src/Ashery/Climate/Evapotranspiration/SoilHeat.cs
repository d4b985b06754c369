namespace Ashery.Climate.Evapotranspiration;

/// <summary>Heat that goes into the ground below the reference grass, MJ/m² a day or an hour. Over a single day it is taken as 0 (42).</summary>
public static class SoilHeat
{
    /// <summary>Of a month, from the mean temperatures of the months before and after, °C (43).</summary>
    public static double Month(double previous, double next) => 0.07 * (next - previous);

    /// <summary>Of a month, from its mean temperature and that of the month before, °C (44).</summary>
    public static double MonthSinceLast(double previous, double current) => 0.14 * (current - previous);

    /// <summary>Of an hour, from its net radiation: a tenth by day, half by night (45, 46).</summary>
    public static double Hour(double netRadiation, bool daylight) => (daylight ? 0.1 : 0.5) * netRadiation;
}
