using Ashery.Climate.Evapotranspiration;

namespace Ashery.Climate.Generation;

/// <summary>Parameters of one month, worked out from its normals.</summary>
internal sealed class MonthModel
{
    /// <summary>Least rain of a wet day, mm: what a gauge can measure.</summary>
    public const double LeastRain = 0.1;

    // Days a month has in the long run; February with its share of leap days.
    private static readonly double[] Lengths = [31, 28.25, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

    /// <param name="month">1 to 12.</param>
    /// <param name="normal">Its normals.</param>
    /// <param name="sun">The place's sun.</param>
    /// <param name="estimatedRadiation">Solar radiation where the normals give none, MJ/m² a day.</param>
    public MonthModel(int month, MonthlyNormal normal, DayEt sun, double estimatedRadiation)
    {
        var days = Lengths[month - 1];
        WetDaysEstimated = normal.WetDays is null && normal.RainMm > 0;
        WetShare = Share(normal, days);
        var onWet = WetShare > 0 ? normal.RainMm / (WetShare * days) : 0;
        RainShape = 1;
        if (WetShare > 0)
        {
            // Geng and others (1986). Below 2.6 mm a wet day their line would give a shape above 1; there rain is taken as exponential.
            var line = GeneratorData.Of("amount");
            var scale = Math.Max(onWet, line[0] + (line[1] * onWet));
            RainShape = onWet / scale;
            RainScale = (onWet - LeastRain) / RainShape;
        }

        Range = normal.MeanMax - normal.MeanMin;
        LeastRange = Math.Min(0.5, Range / 4);
        var drop = GeneratorData.Of("maximumDrop")[0] * Range;
        Dry = Temperatures(normal, WetShare * drop, "Dry");
        Wet = Temperatures(normal, (WetShare - 1) * drop, "Wet");

        var top = Mean(month, sun);
        var clearness = top <= 0 ? 0 : Math.Min((normal.RadiationMj ?? estimatedRadiation) / top, 0.99 * sun.Clear);
        var wetToDry = GeneratorData.Of("radiationDrop")[0];
        var dry = Math.Min(clearness / (1 - WetShare + (wetToDry * WetShare)), 0.98 * sun.Clear);
        dry = Math.Max(dry, clearness);
        var wet = WetShare > 0 ? (clearness - ((1 - WetShare) * dry)) / WetShare : dry;
        DrySun = Sun(dry, sun.Clear);
        WetSun = Sun(wet, sun.Clear);
        Wind = normal.WindMs ?? GeneratorData.Of("wind")[0];
        Humidity = normal.Humidity;

        // "Dry place" of FAO-56 by the month's rain against its evapotranspiration.
        var dew = GeneratorData.Of("dewPointBelowMinimum");
        DewBelow = normal.RainMm < dew[1] * days * ReferenceEt.Hargreaves(normal.MeanMax, normal.MeanMin, top) ? dew[0] : 0;
    }

    public double WetShare { get; }

    public bool WetDaysEstimated { get; }

    /// <summary>Shape and scale, mm, of the gamma distribution of what a wet day brings above <see cref="LeastRain"/>.</summary>
    public double RainShape { get; }

    public double RainScale { get; }

    public double Range { get; }

    /// <summary>Least difference of the day's extremes, °C.</summary>
    public double LeastRange { get; }

    public DayTemperatures Dry { get; }

    public DayTemperatures Wet { get; }

    public DaySun DrySun { get; }

    public DaySun WetSun { get; }

    public double Wind { get; }

    /// <summary>Mean relative humidity, %; null when not known.</summary>
    public double? Humidity { get; }

    /// <summary>How far the dew point stays below the minimum where humidity is not known, °C.</summary>
    public double DewBelow { get; }

    /// <summary>Mean extraterrestrial radiation of a month, MJ/m² a day.</summary>
    public static double Mean(int month, DayEt sun)
    {
        var (sum, first) = (0.0, new DateOnly(2023, month, 1));
        var length = DateTime.DaysInMonth(2023, month);
        for (var d = 0; d < length; d++)
        {
            sum += sun.Extraterrestrial(first.DayOfYear + d);
        }

        return sum / length;
    }

    /// <summary>Wet days of a month the generator will make on average.</summary>
    public static double WetDays(MonthlyNormal normal, int month) => Share(normal, Lengths[month - 1]) * Lengths[month - 1];

    private static double Share(MonthlyNormal normal, double days)
    {
        if (normal.RainMm <= 0)
        {
            return 0;
        }

        var line = GeneratorData.Of("wetDays");
        var wet = normal.WetDays ?? (line[0] * Math.Pow(normal.RainMm, line[1]));

        // A wet day brings twice the least rain on average, or there are fewer of them; and not every day is wet.
        return Math.Min(Math.Min(wet, normal.RainMm / (2 * LeastRain)) / days, 0.97);
    }

    // Offsets are so that, after days with too small a range are spread apart around their middle, both means come out.
    private DayTemperatures Temperatures(MonthlyNormal normal, double maximumAbove, string kind)
    {
        var upper = GeneratorData.Spread("maximumSpread" + kind, normal.MeanMax + maximumAbove);
        var lower = GeneratorData.Spread("minimumSpread" + kind, normal.MeanMin);
        var together = ResidualModel.Default.Correlation[1];
        var spread = Math.Sqrt((upper * upper) + (lower * lower) - (2 * together * upper * lower));
        var wanted = Range + maximumAbove;
        var before = ClampedNormal.MeanFor(Math.Max(wanted, LeastRange), spread, LeastRange, double.PositiveInfinity);
        var shift = (before - wanted) / 2;
        return new(maximumAbove + shift, -shift, upper, lower);
    }

    private static DaySun Sun(double clearness, double clear)
    {
        var (low, high) = (0.05 * clear, clear);
        var spread = GeneratorData.Of("radiationSpread")[0] * Math.Max(0, clear - clearness);
        return new(ClampedNormal.MeanFor(clearness, spread, Math.Min(low, clearness), high), spread, Math.Min(low, clearness), high);
    }
}

/// <summary>Offsets from the month's course and standard deviations of the day's extremes, °C, on dry or on wet days.</summary>
internal readonly record struct DayTemperatures(double MaxAbove, double MinAbove, double MaxSpread, double MinSpread);

/// <summary>Share of the extraterrestrial radiation that reaches the ground on dry or on wet days.</summary>
internal readonly record struct DaySun(double Mean, double Spread, double Low, double High);
