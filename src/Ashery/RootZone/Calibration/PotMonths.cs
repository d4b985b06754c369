using Ashery.RootZone.Draws;

namespace Ashery.RootZone.Calibration;

/// <summary>A calendar month of a forecast: bands of each draw's mean over its days, of what it leached, and days above the limit.</summary>
/// <param name="First">First of its days that the forecast has.</param>
/// <param name="Days">How many it has.</param>
/// <param name="ExtractEc">Saturated extract, mS/cm.</param>
/// <param name="MineralN">Ammonium and nitrate in the pore water, mg N/L.</param>
/// <param name="PH">pH.</param>
/// <param name="LeachedN">Leached in the month, g N.</param>
/// <param name="DaysOver">Days above the limit in the mean of draws.</param>
public sealed record PotMonth(DateOnly First, int Days, DayBand ExtractEc, DayBand MineralN, DayBand PH, DayBand LeachedN, double DaysOver);

/// <summary>Months of a forecast.</summary>
internal static class PotMonths
{
    public static IReadOnlyList<PotMonth> Of(PotForecastReport report)
    {
        var months = new List<PotMonth>();
        for (var from = 0; from < report.Draws.Days;)
        {
            var first = report.DateOf(from);
            var next = new DateOnly(first.Year, first.Month, 1).AddMonths(1);
            var to = Math.Min(report.Draws.Days, from + next.DayNumber - first.DayNumber);
            months.Add(new(
                first, to - from, Mean(report.Draws, PotFigure.ExtractEc, from, to), Mean(report.Draws, PotFigure.MineralN, from, to), Mean(report.Draws, PotFigure.PH, from, to),
                Risen(report.Draws, PotFigure.LeachedN, from, to), report.OverLimit.Skip(from).Take(to - from).Sum()));
            from = to;
        }

        return months;
    }

    private static DayBand Mean(DrawTable table, PotFigure figure, int from, int to)
    {
        var values = new float[table.Draws];
        for (var i = 0; i < values.Length; i++)
        {
            var sum = 0.0;
            for (var d = from; d < to; d++)
            {
                sum += table[figure, d, i];
            }

            values[i] = (float)(sum / (to - from));
        }

        Array.Sort(values);
        return Quantiles.Band(values);
    }

    private static DayBand Risen(DrawTable table, PotFigure figure, int from, int to)
    {
        var values = new float[table.Draws];
        for (var i = 0; i < values.Length; i++)
        {
            values[i] = (float)(table[figure, to - 1, i] - (from > 0 ? table[figure, from - 1, i] : 0));
        }

        Array.Sort(values);
        return Quantiles.Band(values);
    }
}
