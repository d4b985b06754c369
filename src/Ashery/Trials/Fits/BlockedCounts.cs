namespace Ashery.Trials.Fits;

/// <summary>
/// The negative binomial model of complete blocks, made for thousands of simulated trials: the same likelihood as <see cref="NegativeBinomial"/>, but
/// the block effects are swept out of each step, θ moves beside the means, and nothing is allocated. A test holds the two together.
/// </summary>
internal sealed class BlockedCounts(int blocks, int feeds)
{
    private const double Endless = 1e7;
    private const int MostSteps = 60;

    private readonly double[] mean = new double[blocks * feeds];
    private readonly double[] weight = new double[blocks * feeds];
    private readonly double[] blockEffect = new double[blocks];
    private readonly double[] feedEffect = new double[feeds];
    private readonly double[] rowTotal = new double[blocks];
    private readonly double[] level = new double[blocks];
    private readonly double[] feedTotal = new double[feeds];
    private readonly double[] normal = new double[feeds * (feeds + 1)];
    private int[] above = new int[256];

    public double Theta { get; private set; }

    /// <summary>ln ratio of the last feed to the first, and its standard error; not a number when either bore nothing at all.</summary>
    public (double Estimate, double StandardError) Fit(ReadOnlySpan<int> y)
    {
        Theta = double.PositiveInfinity;
        var total = Totals(y);
        if (feedTotal[0] == 0 || feedTotal[^1] == 0)
        {
            return (double.NaN, double.NaN);
        }

        // Poisson in closed form: margins by margins.
        double surplus = 0, moment = 0;
        for (var i = 0; i < y.Length; i++)
        {
            var (b, f) = (i / feeds, i % feeds);
            mean[i] = Math.Max(1e-8, rowTotal[b] * feedTotal[f] / total);
            var rest = y[i] - mean[i];
            surplus += (rest * rest) - y[i];
            moment += rest * rest / (mean[i] * mean[i]);
        }

        var poisson = (Math.Log(feedTotal[^1] / feedTotal[0]), Math.Sqrt(((1 / feedTotal[0]) + (1 / feedTotal[^1])) * Scale(y, double.PositiveInfinity)));
        if (!(surplus > 0))
        {
            return poisson;
        }

        for (var b = 0; b < blocks; b++)
        {
            blockEffect[b] = Math.Log(Math.Max(1e-8, rowTotal[b]));
        }

        for (var f = 0; f < feeds; f++)
        {
            feedEffect[f] = Math.Log(Math.Max(1e-8, feedTotal[f] / total));
        }

        var most = CountsAbove(y);
        var theta = y.Length / moment;
        var variance = 0.0;
        for (var step = 0; step < MostSteps; step++)
        {
            var before = theta;
            theta = Newton(y, theta, most);
            if (theta >= Endless)
            {
                return poisson;
            }

            var moved = Step(y, theta, out variance);
            if (moved < 1e-6 && Math.Abs(theta - before) < 1e-5 * theta)
            {
                break;
            }
        }

        Theta = theta;
        return (feedEffect[^1] - feedEffect[0], Math.Sqrt(variance * Scale(y, theta)));
    }

    // See CountModel.Scale; blocks that bore nothing count for nothing.
    private double Scale(ReadOnlySpan<int> y, double theta)
    {
        var sum = 0.0;
        var full = blocks;
        for (var b = 0; b < blocks; b++)
        {
            full -= rowTotal[b] == 0 ? 1 : 0;
        }

        for (var i = 0; i < y.Length; i++)
        {
            var rest = y[i] - mean[i];
            sum += rest * rest / (mean[i] * (1 + (mean[i] / theta)));
        }

        return full < 2 ? double.NaN : Math.Max(1, sum / ((full - 1) * (feeds - 1)));
    }

    private double Totals(ReadOnlySpan<int> y)
    {
        Array.Clear(rowTotal);
        Array.Clear(feedTotal);
        var total = 0.0;
        for (var i = 0; i < y.Length; i++)
        {
            rowTotal[i / feeds] += y[i];
            feedTotal[i % feeds] += y[i];
            total += y[i];
        }

        return total;
    }

    // How many counts are above 0, 1, 2 ...: ψ(θ + y) − ψ(θ) is a sum over them.
    private int CountsAbove(ReadOnlySpan<int> y)
    {
        var most = 0;
        foreach (var count in y)
        {
            most = Math.Max(most, count);
        }

        if (above.Length < most)
        {
            above = new int[most * 2];
        }

        Array.Clear(above, 0, most);
        foreach (var count in y)
        {
            if (count > 0)
            {
                above[count - 1]++;
            }
        }

        for (var k = most - 2; k >= 0; k--)
        {
            above[k] += above[k + 1];
        }

        return most;
    }

    private double Newton(ReadOnlySpan<int> y, double theta, int most)
    {
        double score = 0, information = 0;
        for (var k = 0; k < most; k++)
        {
            var part = above[k] / (theta + k);
            score += part;
            information += part / (theta + k);
        }

        // Logarithms one by one cost most: products of eight of them.
        var product = 1.0;
        for (var i = 0; i < y.Length; i++)
        {
            var inverse = 1 / (mean[i] + theta);
            product *= theta * inverse;
            score += 1 - ((y[i] + theta) * inverse);
            information += (2 * inverse) - (1 / theta) - ((y[i] + theta) * inverse * inverse);
            if ((i & 7) == 7)
            {
                score += Math.Log(product);
                product = 1;
            }
        }

        score += Math.Log(product);
        var move = information > 0 ? score / information : theta * Math.Sign(score);
        return theta + Math.Clamp(move, -theta / 2, theta * 2);
    }

    // One reweighted step for the means; the largest move of a feed.
    private double Step(ReadOnlySpan<int> y, double theta, out double variance)
    {
        var unknown = feeds - 1;
        var wide = feeds;
        Array.Clear(normal);
        for (var b = 0; b < blocks; b++)
        {
            double sum = 0, sumZ = 0;
            var row = b * feeds;
            for (var f = 0; f < feeds; f++)
            {
                var m = mean[row + f];
                var w = m / (1 + (m / theta));
                weight[row + f] = w;
                sum += w;
                sumZ += w * (blockEffect[b] + feedEffect[f] + ((y[row + f] - m) / m));
            }

            for (var f = 1; f < feeds; f++)
            {
                var w = weight[row + f];
                var z = blockEffect[b] + feedEffect[f] + ((y[row + f] - mean[row + f]) / mean[row + f]);
                normal[((f - 1) * wide) + unknown] += w * (z - (sumZ / sum));
                for (var g = 1; g <= f; g++)
                {
                    normal[((f - 1) * wide) + g - 1] += (f == g ? w : 0) - (w * weight[row + g] / sum);
                }
            }

            level[b] = sumZ / sum;
        }

        variance = Solve(unknown, wide);
        var base0 = feedEffect[0];
        var moved = 0.0;
        for (var f = 0; f < feeds; f++)
        {
            var effect = f == 0 ? 0 : normal[((f - 1) * wide) + unknown];
            moved = Math.Max(moved, Math.Abs(effect - (feedEffect[f] - base0)));
            feedEffect[f] = effect;
        }

        for (var b = 0; b < blocks; b++)
        {
            var row = b * feeds;
            double sum = 0, pulled = 0;
            for (var f = 0; f < feeds; f++)
            {
                sum += weight[row + f];
                pulled += weight[row + f] * feedEffect[f];
            }

            blockEffect[b] = level[b] - (pulled / sum);
            for (var f = 0; f < feeds; f++)
            {
                mean[row + f] = Math.Exp(Math.Clamp(blockEffect[b] + feedEffect[f], -18, 18));
            }
        }

        return moved;
    }

    // Cholesky of the lower triangle beside its right side; the solution stands in the right side. Gives the last diagonal element of the inverse.
    private double Solve(int n, int wide)
    {
        for (var j = 0; j < n; j++)
        {
            for (var i = j; i < n; i++)
            {
                var sum = normal[(i * wide) + j];
                for (var k = 0; k < j; k++)
                {
                    sum -= normal[(i * wide) + k] * normal[(j * wide) + k];
                }

                normal[(i * wide) + j] = i == j ? Math.Sqrt(Math.Max(sum, 1e-12)) : sum / normal[(j * wide) + j];
            }
        }

        for (var i = 0; i < n; i++)
        {
            var sum = normal[(i * wide) + n];
            for (var k = 0; k < i; k++)
            {
                sum -= normal[(i * wide) + k] * normal[(k * wide) + n];
            }

            normal[(i * wide) + n] = sum / normal[(i * wide) + i];
        }

        for (var i = n - 1; i >= 0; i--)
        {
            var sum = normal[(i * wide) + n];
            for (var k = i + 1; k < n; k++)
            {
                sum -= normal[(k * wide) + i] * normal[(k * wide) + n];
            }

            normal[(i * wide) + n] = sum / normal[(i * wide) + i];
        }

        var last = normal[((n - 1) * wide) + n - 1];
        return 1 / (last * last);
    }
}
