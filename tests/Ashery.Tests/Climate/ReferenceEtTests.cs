using Ashery.Climate.Evapotranspiration;
using CsCheck;

namespace Ashery.Tests.Climate;

/// <summary>Which way evapotranspiration must go, whatever the place.</summary>
public class ReferenceEtTests
{
    private static readonly Gen<(double Latitude, double Height, int Day, double Min, double Range, double Clear, double Wind, double Humidity)> AnyDay =
        Gen.Select(Gen.Double[-60, 60], Gen.Double[0, 3000], Gen.Int[1, 365], Gen.Double[-5, 28], Gen.Double[1, 20], Gen.Double[0.3, 1], Gen.Double[0.5, 8], Gen.Double[0.1, 1]);

    [Fact]
    public void More_sun_never_evaporates_less() => AnyDay.Sample(x =>
    {
        var et = new DayEt(x.Latitude, x.Height);
        var top = et.Clear * et.Extraterrestrial(x.Day);
        var ea = x.Humidity * VapourPressure.MeanSaturation(x.Min + x.Range, x.Min);
        var (less, more) = (Of(et, x, top * x.Clear * 0.9, ea), Of(et, x, top * x.Clear, ea));
        // More sun also means a clearer sky that lets more long wave out: with a low winter sun that outweighs it, so only a real sun is judged.
        return top < 15 || more >= less;
    });

    [Fact]
    public void Drier_air_evaporates_more() => AnyDay.Sample(x =>
    {
        var et = new DayEt(x.Latitude, x.Height);
        var rs = x.Clear * et.Clear * et.Extraterrestrial(x.Day);
        var es = VapourPressure.MeanSaturation(x.Min + x.Range, x.Min);
        var (gamma, mean) = (Air.Psychrometric(Air.Pressure(x.Height)), x.Min + (x.Range / 2));
        double Et(double ea) => ReferenceEt.PenmanMonteith(mean, VapourPressure.Slope(mean), gamma, NetRadiation.ShortWave(rs), x.Wind, es - ea);
        return Et(x.Humidity * es * 0.8) > Et(x.Humidity * es);
    });

    [Fact]
    public void More_wind_evaporates_more_when_the_air_is_drier_than_the_sun_demands() => AnyDay.Sample(x =>
    {
        // The derivative by wind has one sign: that of the aerodynamic less 0.34 of the whole.
        var (gamma, mean) = (Air.Psychrometric(Air.Pressure(x.Height)), x.Min + (x.Range / 2));
        var (slope, deficit) = (VapourPressure.Slope(mean), (1 - x.Humidity) * VapourPressure.MeanSaturation(x.Min + x.Range, x.Min));
        double Et(double u) => ReferenceEt.PenmanMonteith(mean, slope, gamma, 10, u, deficit);
        var aerodynamic = 900 / (mean + 273) * deficit * (slope + gamma);
        var energy = 0.34 * 0.408 * slope * 10 * 1.0;
        return Math.Sign(Et(x.Wind + 1) - Et(x.Wind)) == Math.Sign(aerodynamic - energy) || Math.Abs(aerodynamic - energy) < 1e-9;
    });

    [Fact]
    public void Nothing_is_negative_or_unbounded() => AnyDay.Sample(x =>
    {
        var et = new DayEt(x.Latitude * 1.5, x.Height);
        var ea = x.Humidity * VapourPressure.MeanSaturation(x.Min + x.Range, x.Min);
        var mm = Of(et, x, x.Clear * et.Clear * et.Extraterrestrial(x.Day), ea);
        return mm is >= 0 and < 25;
    });

    // Bound of energy: with saturated air evaporation cannot exceed what the net radiation can evaporate.
    [Fact]
    public void Saturated_air_evaporates_no_more_than_the_energy_allows() => AnyDay.Sample(x =>
        ReferenceEt.PenmanMonteith(x.Min, VapourPressure.Slope(x.Min), Air.Psychrometric(Air.Pressure(x.Height)), 12, x.Wind, 0) <= Air.Millimetres(12));

    [Fact]
    public void Dew_point_and_vapour_pressure_are_each_others_inverse() =>
        Gen.Double[-40, 45].Sample(static t => Math.Abs(VapourPressure.DewPoint(VapourPressure.Saturation(t)) - t) < 1e-9);

    [Fact]
    public void The_slope_is_the_derivative() =>
        Gen.Double[-20, 45].Sample(static t => Math.Abs(VapourPressure.Slope(t) - ((VapourPressure.Saturation(t + 1e-4) - VapourPressure.Saturation(t - 1e-4)) / 2e-4)) < 1e-4);

    // Islands (51), months (43 against 44 in a steady warming) and wind below the least: the remaining substitutes.
    [Fact]
    public void Substitutes_do_what_the_book_says()
    {
        Assert.Equal((0.7 * 38) - 4, SolarRadiation.Island(38), 12);
        Assert.Equal(0, SolarRadiation.Island(3));
        Assert.Equal(SoilHeat.Month(10, 14), SoilHeat.MonthSinceLast(10, 12), 12);
        Assert.Equal(
            ReferenceEt.PenmanMonteith(20, 0.145, 0.066, 12, 0, 1),
            ReferenceEt.PenmanMonteith(20, 0.145, 0.066, 12, 0.5, 1), 12);
        Assert.True(VapourPressure.FromMinimum(15, 2) < VapourPressure.FromMinimum(15));
        Assert.Equal(SolarRadiation.ClearSky(0, 40), SolarRadiation.FromRange(40, 5, 40, SolarRadiation.Coast), 12);
        Assert.Equal(0.25 * 40, SolarRadiation.FromSunshine(0, 12, 40), 12);
        Assert.Equal(0, SolarRadiation.FromSunshine(0, 0, 0));
        Assert.Equal(VapourPressure.Saturation(12) * 0.9, VapourPressure.FromHighestHumidity(12, 90), 12);
        Assert.Equal(VapourPressure.Saturation(9), VapourPressure.FromDewPoint(9), 12);
    }

    private static double Of(DayEt et, (double Latitude, double Height, int Day, double Min, double Range, double Clear, double Wind, double Humidity) x, double radiation, double vapour) =>
        et.Of(x.Day, x.Min + x.Range, x.Min, radiation, x.Wind, vapour);
}
