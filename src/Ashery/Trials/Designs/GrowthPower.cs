using Ashery.Trials.Chances;

namespace Ashery.Trials.Designs;

/// <summary>Power of a measured trial by the noncentral t: exact for normal residuals.</summary>
internal static class GrowthPower
{
    /// <param name="trial">Its wish and feeds.</param>
    /// <param name="blocks">Pots a feed, one of each in a block.</param>
    /// <param name="level">Chance of a false alarm at the look that is meant.</param>
    public static double Of(Trial trial, int blocks, double level) => Of(trial, blocks, Limit(trial, blocks, level), trial.Wish.Difference);

    /// <summary>What |t| must pass; worth keeping, since it is a double integral turned round.</summary>
    public static double Limit(Trial trial, int blocks, double level)
    {
        var feeds = trial.Treatments.Count;
        double df = (blocks - 1) * (feeds - 1);
        return df < 1 ? double.NaN : Criterion.Linear(level, Enumerable.Repeat((double)blocks, feeds).ToArray(), trial.Control is null ? null : 0, df);
    }

    /// <summary>The same with its limit at hand, for another difference.</summary>
    public static double Of(Trial trial, int blocks, double limit, double difference)
    {
        double df = (blocks - 1) * (trial.Treatments.Count - 1);
        if (df < 1)
        {
            return double.NaN;
        }

        var shift = Math.Abs(difference) / trial.Wish.Spread * Math.Sqrt(blocks / 2.0);
        return NoncentralT.Power(limit, df, shift);
    }
}
