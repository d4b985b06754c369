using Ashery.Climate.Generation;
using Ashery.Trials.Fits;

namespace Ashery.Trials.Designs;

/// <summary>Power of a trial of counts by simulated trials, each analysed as the real one will be.</summary>
internal static class CountPower
{
    /// <summary>Share of simulated trials in which the last feed's interval leaves out no difference from the control.</summary>
    /// <param name="trial">Its wish and feeds.</param>
    /// <param name="blocks">Pots a feed, one of each in a block.</param>
    /// <param name="level">Chance of a false alarm at the look that is meant.</param>
    /// <param name="draws">Simulated trials.</param>
    /// <param name="seed">Each trial has a stream of its own, so that threads change nothing.</param>
    public static double Of(Trial trial, int blocks, double level, int draws, int seed)
    {
        var feeds = trial.Treatments.Count;
        double df = (blocks - 1) * (feeds - 1);
        if (df < 1)
        {
            return double.NaN;
        }

        var limit = Criterion.Counts(level, Criterion.Comparisons(feeds, trial.Control is not null), df);
        var plain = new CountLaw(trial.Wish.Mean, trial.Wish.Spread);
        var other = new CountLaw(trial.Wish.Mean * (1 + trial.Wish.Difference), trial.Wish.Spread);
        var seen = 0;
        const int Chunk = 500;
        Parallel.For(0, (draws + Chunk - 1) / Chunk, chunk =>
        {
            var fit = new BlockedCounts(blocks, feeds);
            var y = new int[blocks * feeds];
            var found = 0;
            for (var d = chunk * Chunk; d < Math.Min(draws, (chunk + 1) * Chunk); d++)
            {
                var random = new WeatherStream(seed, d + 1000);
                for (var i = 0; i < y.Length; i++)
                {
                    y[i] = (i % feeds == feeds - 1 ? other : plain).Draw(ref random);
                }

                var (estimate, error) = fit.Fit(y);
                found += Math.Abs(estimate) > limit * error ? 1 : 0;
            }

            Interlocked.Add(ref seen, found);
        });
        return seen / (double)draws;
    }

    /// <summary>A first guess by the variance of a ln ratio: (z + z)² (1/m + 1/m' + 2 spread²)/ln² ratio.</summary>
    public static double Guess(Trial trial, double level)
    {
        var wish = trial.Wish;
        var comparisons = Criterion.Comparisons(trial.Treatments.Count, trial.Control is not null);
        var z = Chances.Laws.StudentBothSides(level / comparisons, double.PositiveInfinity) + Chances.Laws.NormalQuantile(wish.Power);
        var each = (1 / wish.Mean) + (1 / (wish.Mean * (1 + wish.Difference))) + (2 * wish.Spread * wish.Spread);
        return z * z * each / Math.Pow(Math.Log(1 + wish.Difference), 2);
    }
}
