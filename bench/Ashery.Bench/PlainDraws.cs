using Ashery.Blending;

namespace Ashery.Bench;

/// <summary>
/// The plain loop over draws: one draw after another in scalars, common random numbers, percentiles by sorting. It computes what the
/// library computes, worst case left out.
/// </summary>
internal static class PlainDraws
{
    /// <summary>95th percentile of the error of each blend; medians and percentiles of contents are computed and dropped.</summary>
    public static double[] Run(UncertaintyRequest request)
    {
        var d = request.Blend.Target.Count;
        var target = request.Blend.Target.Select(t => t / request.Blend.Target.Sum()).ToArray();
        var used = request.Blends.SelectMany(b => b.Members).Distinct().Order().ToArray();
        var members = request.Blends.Select(b => b.Members.ToArray()).ToArray();
        var fractions = request.Blends.Select(b => b.MassFractions.ToArray()).ToArray();
        var ranges = request.Contents.Select(c => c.ToArray()).ToArray();
        var content = new double[request.Blend.Columns.Count * d];
        var amount = new double[request.Blend.Columns.Count];
        var errors = members.Select(_ => new double[request.Draws]).ToArray();
        var contents = members.Select(_ => Enumerable.Range(0, d).Select(_ => new double[request.Draws]).ToArray()).ToArray();
        var random = new Random(request.Seed);
        var sum = new double[d];
        for (var draw = 0; draw < request.Draws; draw++)
        {
            foreach (var i in used)
            {
                amount[i] = Triangle(random, 1 - request.AmountError[i], 1, 1 + request.AmountError[i]);
                for (var j = 0; j < d; j++)
                {
                    var range = ranges[i][j];
                    content[(i * d) + j] = range.Max > range.Min ? Triangle(random, range.Min, range.Typical, range.Max) : range.Typical;
                }
            }

            for (var b = 0; b < members.Length; b++)
            {
                Array.Clear(sum);
                double mass = 0;
                for (var k = 0; k < members[b].Length; k++)
                {
                    var i = members[b][k];
                    var part = fractions[b][k] * amount[i];
                    mass += part;
                    for (var j = 0; j < d; j++)
                    {
                        sum[j] += part * content[(i * d) + j];
                    }
                }

                double total = 0;
                for (var j = 0; j < d; j++)
                {
                    total += sum[j];
                }

                double error = 0;
                for (var j = 0; j < d; j++)
                {
                    error += Math.Abs((sum[j] / total / target[j]) - 1);
                    contents[b][j][draw] = sum[j] / mass;
                }

                errors[b][draw] = error / d;
            }
        }

        foreach (var table in contents)
        {
            foreach (var column in table)
            {
                Array.Sort(column);
            }
        }

        return [.. errors.Select(e =>
        {
            Array.Sort(e);
            return e[(int)Math.Ceiling(0.95 * e.Length) - 1];
        })];
    }

    private static double Triangle(Random random, double min, double mode, double max)
    {
        var u = random.NextDouble();
        var turn = (mode - min) / (max - min);
        return u < turn ? min + Math.Sqrt(u * (max - min) * (mode - min)) : max - Math.Sqrt((1 - u) * (max - min) * (max - mode));
    }
}
