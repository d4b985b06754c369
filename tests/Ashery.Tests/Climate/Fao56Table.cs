using System.Globalization;
using Ashery.Climate.Evapotranspiration;

namespace Ashery.Tests.Climate;

/// <summary>
/// Worked examples 2 to 20 and 37 of Allen, Pereira, Raes and Smith (1998), FAO Irrigation and Drainage Paper 56 (seen): every printed
/// result beside ours, worked without rounding in between. Misprints of the book are noted where they are.
/// </summary>
internal static class Fao56Table
{
    /// <param name="Example">Number of the example.</param>
    /// <param name="What">The quantity and its unit.</param>
    /// <param name="Printed">As printed: its digits count.</param>
    /// <param name="Ours">Ours, not rounded.</param>
    public sealed record Row(string Example, string What, string Printed, double Ours)
    {
        public double Value => double.Parse(Printed, CultureInfo.InvariantCulture);

        public int Digits => Printed.Contains('.', StringComparison.Ordinal) ? Printed.Length - Printed.IndexOf('.', StringComparison.Ordinal) - 1 : 0;

        public double Difference => Ours - Value;

        /// <summary>Whether ours rounds to what is printed.</summary>
        public bool Same => Math.Abs(Difference) <= (0.5 * Math.Pow(10, -Digits)) + 1e-12;
    }

    private const double Rio = -(22 + (54 / 60.0)), Lyon = 45 + (43 / 60.0), Bangkok = 13 + (44 / 60.0), Uccle = 50 + (48 / 60.0), NDiaye = 16 + (13 / 60.0);

    public static IReadOnlyList<Row> Rows { get; } = [.. Vapour(), .. Sun(), .. Radiation(), .. Ground(), .. Whole(), .. Hourly(), .. Missing(), .. Stress()];

    public static string Markdown()
    {
        var text = new System.Text.StringBuilder("| example | quantity | printed | ours | difference |\n|---|---|---|---|---|\n");
        foreach (var r in Rows)
        {
            var format = "0." + new string('0', r.Digits + 2);
            var sign = r.Difference < 0 ? "−" : "+";
            text.Append(CultureInfo.InvariantCulture, $"| {r.Example} | {r.What} | {r.Printed} | {r.Ours.ToString(format, CultureInfo.InvariantCulture)} | {sign}{Math.Abs(r.Difference).ToString(format, CultureInfo.InvariantCulture)} |\n");
        }

        return text.ToString();
    }

    private static IEnumerable<Row> Vapour()
    {
        var p = Air.Pressure(1800);
        yield return new("2", "pressure at 1800 m, kPa", "81.8", p);
        yield return new("2", "psychrometric constant, kPa/°C", "0.054", Air.Psychrometric(p));
        yield return new("3", "saturation at 24.5 °C, kPa", "3.075", VapourPressure.Saturation(24.5));
        yield return new("3", "saturation at 15 °C, kPa", "1.705", VapourPressure.Saturation(15));
        yield return new("3", "mean saturation, kPa", "2.39", VapourPressure.MeanSaturation(24.5, 15));
        yield return new("3", "saturation at the mean, kPa", "2.30", VapourPressure.Saturation(Air.MeanTemperature(24.5, 15)));
        p = Air.Pressure(1200);
        yield return new("4", "pressure at 1200 m, kPa", "87.9", p);
        yield return new("4", "saturation at the wet bulb, kPa", "2.267", VapourPressure.Saturation(19.5));
        yield return new("4", "actual vapour pressure by psychrometer, kPa", "1.91", VapourPressure.FromPsychrometer(19.5, 25.6, p));
        yield return new("5", "saturation at 18 °C, kPa", "2.064", VapourPressure.Saturation(18));
        yield return new("5", "saturation at 25 °C, kPa", "3.168", VapourPressure.Saturation(25));
        var ea = VapourPressure.FromHumidityExtremes(25, 18, 82, 54);
        yield return new("5", "actual vapour pressure, kPa (a working line omits / 2)", "1.70", ea);
        yield return new("5", "the same by mean humidity, kPa", "1.78", VapourPressure.FromMeanHumidity(25, 18, (82 + 54) / 2.0));
        yield return new("6", "vapour pressure deficit, kPa", "0.91", VapourPressure.MeanSaturation(25, 18) - ea);
    }

    private static IEnumerable<Row> Sun()
    {
        yield return new("7", "13°44' N, rad", "0.240", SolarGeometry.Radians(Bangkok));
        yield return new("7", "22°54' S, rad", "-0.400", SolarGeometry.Radians(Rio));
        var j = SolarGeometry.DayNumber(9, 3, leap: false);
        yield return new("8", "day number of 3 September", "246", j);
        yield return new("8", "earth-sun factor", "0.985", SolarGeometry.EarthSunFactor(j));
        yield return new("8", "declination, rad", "0.120", SolarGeometry.Declination(j));
        yield return new("8", "sunset angle at 20° S, rad", "1.527", SolarGeometry.SunsetAngle(-20, j));
        yield return new("8", "extraterrestrial radiation, MJ/m²", "32.2", SolarGeometry.Extraterrestrial(-20, j));
        yield return new("8", "the same as water, mm", "13.1", Air.Millimetres(SolarGeometry.Extraterrestrial(-20, j)));
        yield return new("9", "daylight, h", "11.7", SolarGeometry.DaylightHours(-20, j));
    }

    private static IEnumerable<Row> Radiation()
    {
        var ra = SolarGeometry.Extraterrestrial(Rio, 135);
        var day = SolarGeometry.DaylightHours(Rio, 135);
        var rs = SolarRadiation.FromSunshine(220.0 / 31, day, ra);
        yield return new("10", "extraterrestrial radiation, MJ/m²", "25.1", ra);
        yield return new("10", "daylight, h", "10.9", day);
        yield return new("10", "sunshine, h", "7.1", 220.0 / 31);
        yield return new("10", "solar radiation, MJ/m²", "14.5", rs);
        yield return new("10", "the same as water, mm", "5.9", Air.Millimetres(rs));
        var rso = SolarRadiation.ClearSky(0, ra);
        var rnl = NetRadiation.LongWave(25.1, 19.1, 2.1, rs / rso);
        yield return new("11", "clear-sky radiation, MJ/m²", "18.8", rso);
        yield return new("11", "emission at 25.1 °C, MJ/m² (38.7 in the last line)", "38.8", NetRadiation.Emission(25.1));
        yield return new("11", "emission at 19.1 °C, MJ/m² (35.7 in the last line)", "35.8", NetRadiation.Emission(19.1));
        yield return new("11", "clearness", "0.77", rs / rso);
        yield return new("11", "net long wave, MJ/m²", "3.5", rnl);
        yield return new("11", "the same as water, mm", "1.4", Air.Millimetres(rnl));
        yield return new("12", "net short wave, MJ/m²", "11.1", NetRadiation.ShortWave(rs));
        yield return new("12", "net radiation, MJ/m²", "7.6", NetRadiation.ShortWave(rs) - rnl);
        yield return new("12", "the same as water, mm", "3.1", Air.Millimetres(NetRadiation.ShortWave(rs) - rnl));
    }

    private static IEnumerable<Row> Ground()
    {
        yield return new("13", "soil heat of the month, MJ/m²", "0.33", SoilHeat.Month(14.1, 18.8));
        yield return new("13", "the same as water, mm", "0.13", Air.Millimetres(SoilHeat.Month(14.1, 18.8)));
        yield return new("14", "factor from 10 m to 2 m", "0.75", Wind.Factor(10));
        yield return new("14", "wind at 2 m, m/s", "2.4", Wind.AtTwoMetres(3.2, 10));
        var ra = SolarGeometry.Extraterrestrial(Lyon, 196);
        var rs = SolarRadiation.FromRange(26.6, 14.8, ra, SolarRadiation.Inland, 200);
        yield return new("15", "extraterrestrial radiation, MJ/m²", "40.6", ra);
        yield return new("15", "solar radiation by range, MJ/m²", "22.3", rs);
        yield return new("15", "the same as water, mm", "9.1", Air.Millimetres(rs));
        ra = SolarGeometry.Extraterrestrial(Bangkok, 105);
        rs = SolarRadiation.FromRange(34.8, 25.6, ra, SolarRadiation.Coast);
        var rso = SolarRadiation.ClearSky(0, ra);
        var rnl = NetRadiation.LongWave(34.8, 25.6, 2.85, rs / rso);
        var rn = NetRadiation.ShortWave(rs) - rnl;
        yield return new("16", "extraterrestrial radiation, MJ/m² (latitude misprinted as −0.24)", "38.1", ra);
        yield return new("16", "solar radiation by range, MJ/m²", "21.9", rs);
        yield return new("16", "clear-sky radiation, MJ/m²", "28.5", rso);
        yield return new("16", "net short wave, MJ/m²", "16.9", NetRadiation.ShortWave(rs));
        yield return new("16", "net long wave, MJ/m² (2.9 in the last line)", "3.0", rnl);
        yield return new("16", "net radiation, MJ/m²", "13.9", rn);
        yield return new("16", "the same as water, mm", "5.7", Air.Millimetres(rn));
    }

    private static IEnumerable<Row> Whole()
    {
        var (p, mean) = (Air.Pressure(2), 30.2);
        var (slope, gamma, es) = (VapourPressure.Slope(mean), Air.Psychrometric(p), VapourPressure.MeanSaturation(34.8, 25.6));
        var (ra, n) = (SolarGeometry.Extraterrestrial(Bangkok, 105), SolarGeometry.DaylightHours(Bangkok, 105));
        var rs = SolarRadiation.FromSunshine(8.5, n, ra);
        var rso = SolarRadiation.ClearSky(2, ra);
        var rns = NetRadiation.ShortWave(rs);
        var rnl = NetRadiation.LongWave(34.8, 25.6, 2.85, rs / rso);
        var g = SoilHeat.MonthSinceLast(29.2, 30.2);
        yield return new("17", "slope, kPa/°C", "0.246", slope);
        yield return new("17", "pressure, kPa", "101.3", p);
        yield return new("17", "psychrometric constant, kPa/°C (0.0667 in a working line; 0.0674 follows from the rounded pressure, 101.3)", "0.0674", gamma);
        yield return new("17", "mean saturation, kPa", "4.42", es);
        yield return new("17", "daylight, h", "12.31", n);
        yield return new("17", "extraterrestrial radiation, MJ/m²", "38.06", ra);
        yield return new("17", "solar radiation, MJ/m²", "22.65", rs);
        yield return new("17", "clear-sky radiation, MJ/m²", "28.54", rso);
        yield return new("17", "net short wave, MJ/m²", "17.44", rns);
        yield return new("17", "net long wave, MJ/m²", "3.11", rnl);
        yield return new("17", "net radiation, MJ/m²", "14.33", rns - rnl);
        yield return new("17", "soil heat of the month, MJ/m²", "0.14", g);
        yield return new("17", "reference evapotranspiration, mm", "5.72", ReferenceEt.PenmanMonteith(mean, slope, gamma, rns - rnl - g, 2, es - 2.85));

        var j = SolarGeometry.DayNumber(7, 6, leap: false);
        (p, mean) = (Air.Pressure(100), Air.MeanTemperature(21.5, 12.3));
        (slope, gamma, es) = (VapourPressure.Slope(mean), Air.Psychrometric(p), VapourPressure.MeanSaturation(21.5, 12.3));
        var (u2, ea) = (Wind.AtTwoMetres(10 / 3.6, 10), VapourPressure.FromHumidityExtremes(21.5, 12.3, 84, 63));
        (ra, n) = (SolarGeometry.Extraterrestrial(Uccle, j), SolarGeometry.DaylightHours(Uccle, j));
        rs = SolarRadiation.FromSunshine(9.25, n, ra);
        rso = SolarRadiation.ClearSky(100, ra);
        rns = NetRadiation.ShortWave(rs);
        rnl = NetRadiation.LongWave(21.5, 12.3, ea, rs / rso);
        yield return new("18", "day number of 6 July", "187", j);
        yield return new("18", "wind at 2 m, m/s", "2.078", u2);
        yield return new("18", "pressure, kPa", "100.1", p);
        yield return new("18", "slope, kPa/°C", "0.122", slope);
        yield return new("18", "psychrometric constant, kPa/°C", "0.0666", gamma);
        yield return new("18", "mean saturation, kPa (a working line omits / 2)", "1.997", es);
        yield return new("18", "actual vapour pressure, kPa", "1.409", ea);
        yield return new("18", "vapour pressure deficit, kPa", "0.589", es - ea);
        yield return new("18", "extraterrestrial radiation, MJ/m²", "41.09", ra);
        yield return new("18", "daylight, h (16.3 in a working line)", "16.1", n);
        yield return new("18", "solar radiation, MJ/m²", "22.07", rs);
        yield return new("18", "clear-sky radiation, MJ/m²", "30.90", rso);
        yield return new("18", "net short wave, MJ/m²", "17.00", rns);
        yield return new("18", "net long wave, MJ/m²", "3.71", rnl);
        yield return new("18", "net radiation, MJ/m²", "13.28", rns - rnl);
        yield return new("18", "reference evapotranspiration, mm", "3.88", ReferenceEt.PenmanMonteith(mean, slope, gamma, rns - rnl, u2, es - ea));
        yield return new("18", "the same in one step", "3.88", new DayEt(Uccle, 100).Of(j, 21.5, 12.3, rs, u2, ea));
    }

    private static IEnumerable<Row> Hourly()
    {
        var j = SolarGeometry.DayNumber(10, 1, leap: false);
        var angle = SolarGeometry.TimeAngle(j, 14.5, 15, 16.25);
        var ra = SolarGeometry.ExtraterrestrialPeriod(NDiaye, j, angle, 1);
        var rso = SolarRadiation.ClearSky(8, ra);
        var gamma = Air.Psychrometric(Air.Pressure(8));
        var ea = VapourPressure.Saturation(38) * 0.52;
        var rnl = NetRadiation.LongWaveHour(38, ea, 2.45 / rso);
        var rn = NetRadiation.ShortWave(2.45) - rnl;
        var g = SoilHeat.Hour(rn, daylight: true);
        yield return new("19, 14 to 15 h", "extraterrestrial radiation, MJ/m²", "3.543", ra);
        yield return new("19, 14 to 15 h", "clear-sky radiation, MJ/m²", "2.658", rso);
        yield return new("19, 14 to 15 h", "net long wave, MJ/m²", "0.137", rnl);
        yield return new("19, 14 to 15 h", "net radiation, MJ/m²", "1.749", rn);
        yield return new("19, 14 to 15 h", "soil heat, MJ/m²", "0.175", g);
        yield return new("19, 14 to 15 h", "reference evapotranspiration, mm", "0.63", ReferenceEt.PenmanMonteithHour(38, VapourPressure.Slope(38), gamma, rn - g, 3.3, VapourPressure.Saturation(38) - ea));

        ea = VapourPressure.Saturation(28) * 0.90;
        rnl = NetRadiation.LongWaveHour(28, ea, 0.8);
        g = SoilHeat.Hour(-rnl, daylight: false);
        yield return new("19, 2 to 3 h", "net long wave, MJ/m²", "0.100", rnl);
        yield return new("19, 2 to 3 h", "net radiation, MJ/m²", "-0.100", -rnl);
        yield return new("19, 2 to 3 h", "soil heat, MJ/m²", "-0.050", g);
        yield return new("19, 2 to 3 h", "reference evapotranspiration, mm", "0.00", ReferenceEt.PenmanMonteithHour(28, VapourPressure.Slope(28), gamma, -rnl - g, 1.9, VapourPressure.Saturation(28) - ea));
    }

    private static IEnumerable<Row> Missing()
    {
        var (ea, es, mean) = (VapourPressure.FromMinimum(14.8), VapourPressure.MeanSaturation(26.6, 14.8), Air.MeanTemperature(26.6, 14.8));
        var ra = SolarGeometry.Extraterrestrial(Lyon, 196);
        var (rs, rso) = (SolarRadiation.FromRange(26.6, 14.8, ra, SolarRadiation.Inland, 200), SolarRadiation.ClearSky(200, ra));
        var rnl = NetRadiation.LongWave(26.6, 14.8, ea, rs / rso);
        var rn = NetRadiation.ShortWave(rs) - rnl;
        double Et(double wind) => ReferenceEt.PenmanMonteith(mean, VapourPressure.Slope(mean), Air.Psychrometric(Air.Pressure(200)), rn, wind, es - ea);
        yield return new("20", "actual vapour pressure from the minimum, kPa", "1.68", ea);
        yield return new("20", "mean saturation, kPa", "2.58", es);
        yield return new("20", "extraterrestrial radiation, MJ/m²", "40.55", ra);
        yield return new("20", "solar radiation by range, MJ/m²", "22.29", rs);
        yield return new("20", "clear-sky radiation, MJ/m²", "30.58", rso);
        yield return new("20", "net long wave, MJ/m²", "3.68", rnl);
        yield return new("20", "net radiation, MJ/m²", "13.48", rn);
        yield return new("20", "reference evapotranspiration, wind 2 m/s, mm", "4.56", Et(2));
        yield return new("20", "the same, wind 1 m/s", "4.2", Et(1));
        yield return new("20", "the same, wind 3 m/s", "4.8", Et(3));
        yield return new("20", "by Hargreaves, mm", "5.0", ReferenceEt.Hargreaves(26.6, 14.8, ra));
    }

    private static IEnumerable<Row> Stress()
    {
        string[] ks = ["1.00", "1.00", "0.97", "0.91", "0.85", "0.80", "0.75", "0.70", "0.66", "0.62"];
        string[] use = ["6.0", "6.0", "5.8", "5.4", "5.1", "4.8", "4.5", "4.2", "3.9", "3.7"];
        string[] missing = ["61.0", "67.0", "72.8", "78.3", "83.4", "88.2", "92.6", "96.9", "100.8", "104.5"];
        var total = SoilWater.TotalAvailable(0.32, 0.12, 0.8);
        yield return new("37", "total available water, mm", "160", total);
        yield return new("37", "readily available water, mm", "64", SoilWater.ReadilyAvailable(0.4, total));
        var depletion = 55.0;
        for (var day = 0; day < 10; day++)
        {
            var label = FormattableString.Invariant($"37, day {day + 1}");
            var stress = SoilWater.Stress(depletion, total, 0.4);
            depletion = SoilWater.DryDay(depletion, total, stress * 1.2 * 5);
            yield return new(label, "stress coefficient", ks[day], stress);
            yield return new(label, "evapotranspiration, mm", use[day], stress * 6);
            yield return new(label, "depletion at its end, mm", missing[day], depletion);
        }
    }
}
