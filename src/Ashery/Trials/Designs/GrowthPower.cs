using Ashery.Trials.Chances;

namespace Ashery.Trials.Designs;

/// <summary>Power of a measured trial by the noncentral t: exact for normal residuals.</summary>
internal static class GrowthPower
{
    /// <param name="trial">Its wish and feeds.</param>
    /// <param name="blocks">Pots a feed, one of each in a block.</param>
    /// <param name="level">Chance of a false alarm at the look that is meant.</param>
    public static double Of(Trial trial, int blocks, double level)
    {
        var feeds = trial.Treatments.Count;
        double df = (blocks - 1) * (feeds - 1);
        if (df < 1)
        {
            return double.NaN;
        }

        var counts = Enumerable.Repeat((double)blocks, feeds).ToArray();
        var limit = Criterion.Linear(level, counts, trial.Control is null ? null : 0, df);
        var shift = Math.Abs(trial.Wish.Difference) / trial.Wish.Spread * Math.Sqrt(blocks / 2.0);
        return NoncentralT.Power(limit, df, shift);
    }
}
