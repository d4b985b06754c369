using Ashery.Trials.Fits;

namespace Ashery.Trials.Results;

/// <summary>All readings of pots measured on several days, each pot with a level of its own; beside the one figure a pot, not in place of it.</summary>
internal static class RepeatedAnalysis
{
    private const int MostDays = 40;

    public static RepeatedFit? Of(TrialReport report, Rows rows, IReadOnlyList<(string Feed, string Against)> pairs, int? control, IReadOnlyList<TrialReading> readings)
    {
        var days = readings.Select(static r => r.Date).OfType<DateOnly>().Distinct().Order().ToList();
        if (report.Trial.Measure.Summary != PotSummary.Mean || days.Count is < 2 or > MostDays)
        {
            return null;
        }

        var pots = report.Pots.Where(p => rows.Feeds.Contains(p.Treatment)).Select(static p => p.Pot).ToList();
        var at = pots.Select(static (p, i) => (p, i)).ToDictionary(static x => x.p, static x => x.i, StringComparer.Ordinal);
        var used = readings.Where(r => r.Date is not null && at.ContainsKey(r.Pot)).ToList();
        var pot = used.Select(r => at[r.Pot]).ToArray();
        var matrix = new ModelMatrix(used.Count);
        if (rows.BlockCount > 1)
        {
            matrix.Factor("blocks", [.. pot.Select(i => rows.Block[i])], rows.BlockCount);
        }

        matrix.Factor("feeds", [.. pot.Select(i => rows.Feed[i])], rows.Feeds.Count).Factor("days", [.. used.Select(r => days.IndexOf(r.Date!.Value))], days.Count);
        var y = used.Select(static r => r.Value).ToArray();
        var plain = new LeastSquares(matrix.Columns, y);
        var df = pots.Count - new LeastSquares(rows.WithFeeds().Columns, rows.Y).Rank;
        if (plain.Rank < matrix.Columns.Count || y.Length - plain.Rank < 2 || df < 1 || used.Count <= pots.Count)
        {
            return null;
        }

        var fit = new RandomIntercept(matrix.Columns, y, pot);
        var comparisons = GrowthAnalysis.Compare(rows, matrix, pairs, control, report.Limit.Level, df, fit.Value, fit.StandardError, static _ => false);
        return new(Math.Sqrt(fit.PotVariance), Math.Sqrt(fit.ResidualVariance), comparisons, df);
    }
}
