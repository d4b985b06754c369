using Ashery.Climate.Generation;

namespace Ashery.Trials.Designs;

/// <summary>Draws counts of a mean and a spread between pots: the negative binomial by its table, one uniform a count.</summary>
internal sealed class CountLaw
{
    private readonly double[] below;
    private readonly int[] guide;

    public CountLaw(double mean, double spread)
    {
        var chances = new List<double>();
        var sum = 0.0;
        var theta = spread > 0 ? 1 / (spread * spread) : double.PositiveInfinity;
        var share = mean / (mean + theta);

        // p(0), then p(k) from p(k − 1); begun as a logarithm, since p(0) may be smaller than a number can be.
        var log = double.IsPositiveInfinity(theta) ? -mean : -theta * Math.Log(1 + (mean / theta));
        for (var k = 0; sum < 1 - 1e-13 && k < 2_000_000; k++)
        {
            sum += Math.Exp(log);
            chances.Add(sum);
            log += double.IsPositiveInfinity(theta) ? Math.Log(mean / (k + 1)) : Math.Log((theta + k) / (k + 1) * share);
            if (k > mean && log < -40)
            {
                break;
            }
        }

        below = [.. chances];
        below[^1] = 1;
        guide = new int[1024];
        var at = 0;
        for (var g = 0; g < guide.Length; g++)
        {
            while (below[at] <= g / (double)guide.Length)
            {
                at++;
            }

            guide[g] = at;
        }
    }

    public int Draw(ref WeatherStream random)
    {
        var u = random.Uniform();
        var k = guide[(int)(u * guide.Length)];
        while (below[k] <= u && k < below.Length - 1)
        {
            k++;
        }

        return k;
    }
}
