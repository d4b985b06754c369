namespace Ashery.Climate.Evapotranspiration;

/// <summary>Sun above a place by date: latitudes in degrees, north positive; day numbers 1 to 366; energy in MJ/m².</summary>
public static class SolarGeometry
{
    /// <summary>Solar constant, MJ/m² a minute.</summary>
    public const double SolarConstant = 0.0820;

    /// <summary>Degrees to radians (22).</summary>
    public static double Radians(double degrees) => degrees * Math.PI / 180;

    /// <summary>Number of the day in the year by FAO-56 Annex 2: 60 is 1 March, in a leap year 29 February.</summary>
    public static int DayNumber(int month, int day, bool leap)
    {
        var number = (int)((275 * month / 9.0) - 30 + day) - 2;
        return month < 3 ? number + 2 : leap ? number + 1 : number;
    }

    /// <summary>Day number in the middle of a month (Annex 2).</summary>
    public static int MidMonth(int month) => (int)((30.4 * month) - 15);

    /// <summary>Inverse relative distance of earth and sun (23).</summary>
    public static double EarthSunFactor(int dayNumber) => 1 + (0.033 * Math.Cos(2 * Math.PI * dayNumber / 365));

    /// <summary>Solar declination, radians (24).</summary>
    public static double Declination(int dayNumber) => 0.409 * Math.Sin((2 * Math.PI * dayNumber / 365) - 1.39);

    /// <summary>Sunset hour angle, radians (25): 0 in the polar night, π when the sun does not set.</summary>
    public static double SunsetAngle(double latitude, int dayNumber) =>
        Math.Acos(Math.Clamp(-Math.Tan(Radians(latitude)) * Math.Tan(Declination(dayNumber)), -1, 1));

    /// <summary>Daylight hours (34).</summary>
    public static double DaylightHours(double latitude, int dayNumber) => 24 / Math.PI * SunsetAngle(latitude, dayNumber);

    /// <summary>Extraterrestrial radiation of a day (21); 0 in the polar night.</summary>
    public static double Extraterrestrial(double latitude, int dayNumber)
    {
        var (phi, delta, sunset) = (Radians(latitude), Declination(dayNumber), SunsetAngle(latitude, dayNumber));
        var sum = (sunset * Math.Sin(phi) * Math.Sin(delta)) + (Math.Cos(phi) * Math.Cos(delta) * Math.Sin(sunset));
        return Math.Max(0, 24 * 60 / Math.PI * SolarConstant * EarthSunFactor(dayNumber) * sum);
    }

    /// <summary>Solar time angle at the middle of a period, radians (31 to 33).</summary>
    /// <param name="dayNumber">Day of the year.</param>
    /// <param name="clock">Standard clock time at the middle of the period, h: 14.5 for 14 to 15 o'clock.</param>
    /// <param name="zoneWest">Longitude of the middle of the time zone, degrees west of Greenwich.</param>
    /// <param name="west">Longitude of the place, degrees west of Greenwich.</param>
    public static double TimeAngle(int dayNumber, double clock, double zoneWest, double west)
    {
        var b = 2 * Math.PI * (dayNumber - 81) / 364;
        var correction = (0.1645 * Math.Sin(2 * b)) - (0.1255 * Math.Cos(b)) - (0.025 * Math.Sin(b));
        return Math.PI / 12 * (clock + (0.06667 * (zoneWest - west)) + correction - 12);
    }

    /// <summary>Extraterrestrial radiation of a period of hours (28 to 30); 0 while the sun is down.</summary>
    /// <param name="latitude">Degrees.</param>
    /// <param name="dayNumber">Day of the year.</param>
    /// <param name="middle">Solar time angle at the middle of the period, radians.</param>
    /// <param name="hours">Length of the period, h.</param>
    public static double ExtraterrestrialPeriod(double latitude, int dayNumber, double middle, double hours)
    {
        var (phi, delta, sunset) = (Radians(latitude), Declination(dayNumber), SunsetAngle(latitude, dayNumber));
        var half = Math.PI * hours / 24;
        var (from, to) = (Math.Max(middle - half, -sunset), Math.Min(middle + half, sunset));
        if (from >= to)
        {
            return 0;
        }

        var sum = ((to - from) * Math.Sin(phi) * Math.Sin(delta)) + (Math.Cos(phi) * Math.Cos(delta) * (Math.Sin(to) - Math.Sin(from)));
        return Math.Max(0, 12 * 60 / Math.PI * SolarConstant * EarthSunFactor(dayNumber) * sum);
    }
}
