using Ashery.Climate.Evapotranspiration;
using CsCheck;

namespace Ashery.Tests.Climate;

/// <summary>The sun's course: both hemispheres, polar latitudes, leap years.</summary>
public class SunTests
{
    // The calendar of the general library is the judge of the day numbers, the 60th day among them.
    [Fact]
    public void Day_numbers_are_those_of_the_calendar()
    {
        foreach (var year in new[] { 2023, 2024, 2000, 2100 })
        {
            for (var day = new DateOnly(year, 1, 1); day.Year == year; day = day.AddDays(1))
            {
                Assert.Equal(day.DayOfYear, SolarGeometry.DayNumber(day.Month, day.Day, DateTime.IsLeapYear(year)));
            }
        }

        Assert.Equal(60, SolarGeometry.DayNumber(2, 29, leap: true));
        Assert.Equal(60, SolarGeometry.DayNumber(3, 1, leap: false));
        Assert.Equal(61, SolarGeometry.DayNumber(3, 1, leap: true));
        Assert.Equal([15, 45, 76, 106, 137, 167, 197, 228, 258, 289, 319, 349], Enumerable.Range(1, 12).Select(SolarGeometry.MidMonth));
    }

    // Half a year shifts the season: the south has the north's daylight half a year later; only the earth's distance from the sun differs (3.3 %).
    [Fact]
    public void Hemispheres_mirror_each_other() => Gen.Select(Gen.Double[0, 90], Gen.Int[1, 365]).Sample((latitude, day) =>
    {
        var opposite = -Math.Tan(SolarGeometry.Radians(latitude)) * Math.Tan(SolarGeometry.Declination(day));
        Assert.Equal(24, SolarGeometry.DaylightHours(latitude, day) + SolarGeometry.DaylightHours(-latitude, day), 9);
        Assert.True(Math.Abs(opposite) >= 1 || SolarGeometry.DaylightHours(latitude, day) is > 0 and < 24);
        var there = SolarGeometry.Extraterrestrial(-latitude, day) / SolarGeometry.EarthSunFactor(day);
        var delta = SolarGeometry.Declination(day);
        Assert.Equal(there, Mirror(latitude, -delta), 9);
    });

    [Theory]
    [InlineData(51.5)]
    [InlineData(35)]
    [InlineData(66)]
    public void Days_are_longest_and_sun_strongest_at_the_summer_solstice(double latitude)
    {
        var days = Enumerable.Range(1, 365).ToArray();
        Assert.InRange(days.MaxBy(d => SolarGeometry.DaylightHours(latitude, d)), 170, 174);
        Assert.InRange(days.MinBy(d => SolarGeometry.DaylightHours(latitude, d)), 352, 358);
        Assert.InRange(days.MaxBy(d => SolarGeometry.Extraterrestrial(latitude, d)), 166, 174);
        Assert.InRange(days.MaxBy(d => SolarGeometry.DaylightHours(-latitude, d)), 352, 358);
        Assert.InRange(days.MinBy(d => SolarGeometry.Extraterrestrial(-latitude, d)), 168, 176);
    }

    [Theory]
    [InlineData(70)]
    [InlineData(80)]
    [InlineData(90)]
    [InlineData(-70)]
    [InlineData(-90)]
    public void Polar_day_and_night_are_whole(double latitude)
    {
        var (summer, winter) = latitude > 0 ? (172, 355) : (355, 172);
        Assert.Equal(24, SolarGeometry.DaylightHours(latitude, summer), 9);
        Assert.Equal(0, SolarGeometry.DaylightHours(latitude, winter), 9);
        Assert.True(SolarGeometry.Extraterrestrial(latitude, summer) > 35);
        Assert.Equal(0, SolarGeometry.Extraterrestrial(latitude, winter), 9);
    }

    // Every hour of the day together is the day, wherever the sun stands.
    [Fact]
    public void Hours_add_up_to_the_day() => Gen.Select(Gen.Double[-89, 89], Gen.Int[1, 366]).Sample((latitude, day) =>
    {
        var sum = Enumerable.Range(0, 24).Sum(h => SolarGeometry.ExtraterrestrialPeriod(latitude, day, (h + 0.5 - 12) * Math.PI / 12, 1));
        Assert.Equal(SolarGeometry.Extraterrestrial(latitude, day), sum, 6);
    });

    [Fact]
    public void Hours_while_the_sun_is_down_bring_nothing() =>
        Assert.Equal(0, SolarGeometry.ExtraterrestrialPeriod(45, 355, SolarGeometry.TimeAngle(355, 2.5, 0, 0), 1));

    // On the equator a day is twelve hours all year round.
    [Fact]
    public void The_equator_has_twelve_hours() =>
        Assert.All(Enumerable.Range(1, 366), static d => Assert.Equal(12, SolarGeometry.DaylightHours(0, d), 9));

    private static double Mirror(double latitude, double delta)
    {
        var phi = SolarGeometry.Radians(latitude);
        var ws = Math.Acos(Math.Clamp(-Math.Tan(phi) * Math.Tan(delta), -1, 1));
        return Math.Max(0, 24 * 60 / Math.PI * 0.0820 * ((ws * Math.Sin(phi) * Math.Sin(delta)) + (Math.Cos(phi) * Math.Cos(delta) * Math.Sin(ws))));
    }
}
