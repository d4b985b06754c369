namespace Ashery.Trials.Designs;

/// <summary>Chances over numbers of pots, each reckoned once, and the fewest pots that reach the wish.</summary>
internal sealed class PowerSearch(Trial trial, double level, int draws)
{
    private const int RoughDraws = 1000;

    private readonly SortedDictionary<int, double> known = [];

    public double At(int pots)
    {
        if (!known.TryGetValue(pots, out var power))
        {
            power = trial.Measure.Kind == MeasureKind.Count ? CountPower.Of(trial, pots, level, draws, trial.Seed) : GrowthPower.Of(trial, pots, level);
            known[pots] = power;
        }

        return power;
    }

    public IReadOnlyList<PowerAt> Known() => [.. known.Select(static k => new PowerAt(k.Key, k.Value))];

    public int? Fewest(int most)
    {
        var rough = Rough(most);
        if (rough is not { } n)
        {
            return null;
        }

        // From the rough answer step by step with all draws.
        while (n > 2 && At(n - 1) >= trial.Wish.Power)
        {
            n--;
        }

        while (n <= most && !(At(n) >= trial.Wish.Power))
        {
            n++;
        }

        return n <= most ? n : null;
    }

    /// <summary>Smallest gain that is seen with the wished chance, by halving; draws are few, since the answer is shown in whole percent.</summary>
    public static double? Smallest(Trial trial, int pots, double level, int draws)
    {
        var few = Math.Min(draws, RoughDraws);
        var limit = trial.Measure.Kind == MeasureKind.Count ? 0 : GrowthPower.Limit(trial, pots, level);
        double low = 0.01, high = 9;
        if (!(Chance(high) >= trial.Wish.Power))
        {
            return null;
        }

        while (high - low > Math.Max(0.005, 0.02 * low))
        {
            var middle = Math.Sqrt(low * high);
            (low, high) = Chance(middle) >= trial.Wish.Power ? (low, middle) : (middle, high);
        }

        return high;

        double Chance(double difference)
        {
            var wished = trial with { Wish = trial.Wish with { Difference = difference } };
            return trial.Measure.Kind == MeasureKind.Count ? CountPower.Of(wished, pots, level, few, trial.Seed) : GrowthPower.Of(trial, pots, limit, difference);
        }
    }

    private int? Rough(int most)
    {
        if (trial.Measure.Kind == MeasureKind.Measurement)
        {
            // The exact chance rises with the pots: halve.
            int low = 1, high = most;
            if (!(GrowthPower.Of(trial, most, level) >= trial.Wish.Power))
            {
                return null;
            }

            while (high - low > 1)
            {
                var middle = (low + high) / 2;
                (low, high) = GrowthPower.Of(trial, middle, level) >= trial.Wish.Power ? (low, middle) : (middle, high);
            }

            return high;
        }

        // The guess leaves out how badly a spread is known from few pots; it is corrected by the chance it leads to.
        var guess = CountPower.Guess(trial, level);
        if (guess > most)
        {
            return null;
        }

        var n = Math.Max(2, (int)Math.Ceiling(guess));
        for (var round = 0; round < 30 && n <= most; round++)
        {
            if (CountPower.Of(trial, n, level, Math.Min(draws, RoughDraws), trial.Seed + 1) >= trial.Wish.Power)
            {
                return n;
            }

            n += Math.Max(1, n / 20);
        }

        return n <= most ? n : null;
    }
}
