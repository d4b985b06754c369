using Ashery.Climate.Generation;

namespace Ashery.Trials.Results;

/// <summary>What a permutation test says.</summary>
/// <param name="P">Share of arrangements that set the feeds at least as far apart, this one among them.</param>
/// <param name="Arrangements">How many were looked at.</param>
/// <param name="Exact">True when these are all.</param>
/// <param name="Smallest">No p can be below it.</param>
internal readonly record struct PermutationResult(double P, int Arrangements, bool Exact, double Smallest);

/// <summary>
/// The lots drawn again within each block (Fisher 1935): had the feeds done nothing, every arrangement of them over a block's pots would have been as likely as
/// the one that was drawn. All arrangements where they are few, else a seeded draw of them, the real one counted with them, so that p is never too
/// small (Phipson and Smyth 2010; from memory). Holds whatever law the figures follow.
/// </summary>
internal static class Permutation
{
    public const int MostExact = 20_000;
    public const int Draws = 9_999;

    /// <summary>Of all feeds at once: the statistic is Σ n (mean residual from the block)².</summary>
    public static PermutationResult Test(IReadOnlyList<PotResult> pots, IReadOnlyList<string> feeds, int seed)
    {
        var blocks = pots.Where(p => feeds.Contains(p.Treatment)).GroupBy(static p => p.Block).Select(g => new Block(g, feeds)).ToList();
        var size = new double[feeds.Count];
        foreach (var block in blocks)
        {
            foreach (var label in block.Labels)
            {
                size[label]++;
            }
        }

        // Residuals of different blocks add up; a block of one feed adds a constant.
        var seen = Statistic(blocks, size);
        var least = seen - (1e-9 * (Math.Abs(seen) + 1e-300));
        var all = blocks.Aggregate(1.0, static (product, block) => product * block.Arrangements());
        return all <= MostExact ? Exact(blocks, size, least) : Drawn(blocks, size, least, seed, all);
    }

    private static PermutationResult Exact(List<Block> blocks, double[] size, double least)
    {
        foreach (var block in blocks)
        {
            Array.Sort(block.Labels);
        }

        int all = 0, far = 0;
        do
        {
            all++;
            far += Statistic(blocks, size) >= least ? 1 : 0;
        }
        while (Next(blocks));

        // Feeds of equal numbers may change names without changing how far they are apart.
        return new(far / (double)all, all, Exact: true, Names(size) / (double)all);
    }

    private static PermutationResult Drawn(List<Block> blocks, double[] size, double least, int seed, double all)
    {
        var random = new WeatherStream(seed, 7);
        var far = 1;
        for (var draw = 0; draw < Draws; draw++)
        {
            foreach (var block in blocks)
            {
                block.Shuffle(ref random);
            }

            far += Statistic(blocks, size) >= least ? 1 : 0;
        }

        return new(far / (Draws + 1.0), Draws + 1, Exact: false, Math.Max(1 / (Draws + 1.0), Names(size) / all));
    }

    private static double Names(double[] size) =>
        size.GroupBy(static n => n).Select(static g => Enumerable.Range(1, g.Count()).Aggregate(1.0, static (p, k) => p * k)).Aggregate(1.0, static (a, b) => a * b);

    private static double Statistic(List<Block> blocks, double[] size)
    {
        Span<double> sums = stackalloc double[size.Length];
        sums.Clear();
        foreach (var block in blocks)
        {
            for (var i = 0; i < block.Labels.Length; i++)
            {
                sums[block.Labels[i]] += block.Residuals[i];
            }
        }

        var statistic = 0.0;
        for (var f = 0; f < size.Length; f++)
        {
            statistic += size[f] > 0 ? sums[f] * sums[f] / size[f] : 0;
        }

        return statistic;
    }

    // Like an odometer: the next arrangement of the first block that has one, those before it back at their first.
    private static bool Next(List<Block> blocks)
    {
        foreach (var block in blocks)
        {
            if (block.Next())
            {
                return true;
            }

            Array.Sort(block.Labels);
        }

        return false;
    }

    private sealed class Block
    {
        public Block(IEnumerable<PotResult> pots, IReadOnlyList<string> feeds)
        {
            var of = pots.ToList();
            var mean = of.Average(static p => p.Value);
            Residuals = [.. of.Select(p => p.Value - mean)];
            Labels = [.. of.Select(p => IndexOf(feeds, p.Treatment))];
        }

        public double[] Residuals { get; }

        public int[] Labels { get; }

        public double Arrangements()
        {
            var ways = 1.0;
            var placed = 0;
            foreach (var count in Labels.GroupBy(static l => l).Select(static g => g.Count()))
            {
                for (var k = 1; k <= count; k++)
                {
                    ways = ways * ++placed / k;
                }
            }

            return ways;
        }

        public void Shuffle(ref WeatherStream random)
        {
            for (var i = Labels.Length - 1; i > 0; i--)
            {
                var j = (int)(random.Uniform() * (i + 1));
                (Labels[i], Labels[j]) = (Labels[j], Labels[i]);
            }
        }

        // The next in the order of a dictionary, each once though labels repeat.
        public bool Next()
        {
            var i = Labels.Length - 2;
            while (i >= 0 && Labels[i] >= Labels[i + 1])
            {
                i--;
            }

            if (i < 0)
            {
                return false;
            }

            var j = Labels.Length - 1;
            while (Labels[j] <= Labels[i])
            {
                j--;
            }

            (Labels[i], Labels[j]) = (Labels[j], Labels[i]);
            Array.Reverse(Labels, i + 1, Labels.Length - i - 1);
            return true;
        }

        private static int IndexOf(IReadOnlyList<string> feeds, string feed)
        {
            for (var i = 0; i < feeds.Count; i++)
            {
                if (feeds[i] == feed)
                {
                    return i;
                }
            }

            throw new ArgumentException($"No feed {feed}.", nameof(feed));
        }
    }
}
