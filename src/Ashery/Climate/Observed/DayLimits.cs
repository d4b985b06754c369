namespace Ashery.Climate.Observed;

/// <summary>What a day on earth can bring: outside it a figure is a slip, another unit or a missing value that was not said to be one.</summary>
public static class DayLimits
{
    /// <summary>°C; records are -89 and 57.</summary>
    public const double Coldest = -90, Hottest = 60;

    /// <summary>mm a day; the record is 1825.</summary>
    public const double MostRain = 2000;

    /// <summary>MJ/m² a day; outside the air no more than 45 arrive.</summary>
    public const double MostRadiation = 46;

    /// <summary>m/s as the mean of a day.</summary>
    public const double MostWind = 70;

    /// <summary>%; a little above 100 is a sensor's error and is taken as 100.</summary>
    public const double MostHumidity = 105;
}
