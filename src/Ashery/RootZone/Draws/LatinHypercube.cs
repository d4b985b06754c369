using Ashery.Climate.Generation;

namespace Ashery.RootZone.Draws;

/// <summary>
/// Latin hypercube (McKay, Beckman and Conover 1979, Technometrics 21:239-245; from memory): each figure has one draw in each n-th of its distribution, in an order of its own.
/// The order hangs on the figure's id, so that a figure keeps its draws when another joins.
/// </summary>
internal static class LatinHypercube
{
    /// <summary>Shares in (0, 1), draw by draw.</summary>
    public static double[] Of(IReadOnlyList<string> ids, int draws, int seed, int design)
    {
        var d = ids.Count;
        var shares = new double[draws * d];
        var order = new int[draws];
        for (var j = 0; j < d; j++)
        {
            var random = new WeatherStream(unchecked(seed + (design * 7919)), Mixed(ids[j]));
            for (var i = 0; i < draws; i++)
            {
                order[i] = i;
            }

            for (var i = draws - 1; i > 0; i--)
            {
                var k = (int)(random.Uniform() * (i + 1));
                (order[i], order[k]) = (order[k], order[i]);
            }

            for (var i = 0; i < draws; i++)
            {
                shares[(i * d) + j] = Math.Clamp((order[i] + random.Uniform()) / draws, 1e-12, 1 - 1e-12);
            }
        }

        return shares;
    }

    // FNV-1a: the same on every machine, unlike the hash of a string.
    private static int Mixed(string id)
    {
        var hash = 2166136261u;
        foreach (var c in id)
        {
            hash = unchecked((hash ^ c) * 16777619u);
        }

        return unchecked((int)hash);
    }
}
