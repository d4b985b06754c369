using Ashery.Climate.Generation;

namespace Ashery.RootZone.Draws;

/// <summary>
/// What one measurement would narrow most. On the draws of a forecast each measurement is simulated with its error; the variance of the target that stays when it is known is that left by a
/// regression on the reading and its square (preposterior variance; the linear case is that of an ensemble Kalman filter). A better estimator could only leave less.
/// </summary>
public static class MeasurementWorth
{
    /// <summary>Worth of all measurements that a grower can make on a day, best first.</summary>
    /// <param name="report">A forecast.</param>
    /// <param name="day">Day of the measurement, from the first; the target is taken over the days after it.</param>
    /// <param name="target">What is to be known better.</param>
    public static IReadOnlyList<Worth> Of(PotForecastReport report, int day, PotTarget target)
    {
        var table = report.Draws;
        ArgumentOutOfRangeException.ThrowIfNegative(day);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(day, table.Days - 1);
        var y = Target(table, day + 1, target);
        var deviation = Deviation(y);
        var worth = new List<Worth>();
        foreach (var kind in Enum.GetValues<MeasurementKind>())
        {
            if (Reading(report, kind, day) is { } reading)
            {
                var square = reading.Select(static v => v * v).ToArray();
                var known = Regression.Explained(y, reading, square);
                worth.Add(new(kind, deviation, deviation * Math.Sqrt(1 - known), known));
            }
        }

        return [.. worth.OrderByDescending(static w => w.Known)];
    }

    /// <summary>One number a draw.</summary>
    internal static double[] Target(DrawTable table, int from, PotTarget target)
    {
        var figure = target switch { PotTarget.ExtractEc => PotFigure.ExtractEc, PotTarget.MineralN => PotFigure.MineralN, PotTarget.PH => PotFigure.PH, _ => PotFigure.LeachedN };
        var y = new double[table.Draws];
        for (var i = 0; i < y.Length; i++)
        {
            if (target == PotTarget.LeachedN)
            {
                y[i] = table[figure, table.Days - 1, i] - table[figure, from - 1, i];
                continue;
            }

            for (var d = from; d < table.Days; d++)
            {
                y[i] += table[figure, d, i] / (table.Days - from);
            }
        }

        return y;
    }

    private static double[]? Reading(PotForecastReport report, MeasurementKind kind, int day)
    {
        var row = Measurements.Of(kind);
        var values = row.Figure is { } figure ? Column(report.Draws, figure, day) : report.ColumnOf(row.UncertainId!);
        if (values is null)
        {
            return null;
        }

        var random = new WeatherStream(report.Request.Seed, -1 - (int)kind);
        for (var i = 0; i < values.Length; i++)
        {
            values[i] += random.Normal() * (row.Absolute + (row.Relative * Math.Abs(values[i])));
        }

        return values;
    }

    private static double[] Column(DrawTable table, PotFigure figure, int day)
    {
        var values = new double[table.Draws];
        for (var i = 0; i < values.Length; i++)
        {
            values[i] = table[figure, day, i];
        }

        return values;
    }

    private static double Deviation(double[] y)
    {
        var mean = y.Average();
        return Math.Sqrt(y.Sum(v => (v - mean) * (v - mean)) / Math.Max(1, y.Length - 1));
    }
}

/// <summary>What a measurement would do.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Before">Standard deviation of the target now.</param>
/// <param name="After">Expected after it.</param>
/// <param name="Known">Part of the variance it takes away, 0 to 1.</param>
public sealed record Worth(MeasurementKind Kind, double Before, double After, double Known)
{
    /// <summary>How a grower would say it.</summary>
    public string Name => Measurements.Of(Kind).Name;
}
