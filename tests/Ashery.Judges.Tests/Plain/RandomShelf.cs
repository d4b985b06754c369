using System.Globalization;
using Ashery.Blending;

namespace Ashery.Plain;

/// <summary>
/// Random shelves that look like straights: most columns hold one to three of the nutrients, a few hold more, contents between 1 and
/// half of the mass. Invented figures, made from a seed.
/// </summary>
public static class RandomShelf
{
    public static BlendRequest Make(
        int seed, int nutrients, int columns, int atMost, int best = 20, int rows = 0, int pairs = 0, double priced = 1)
    {
        var random = new Random(seed);
        var shelf = new List<Column>();
        for (var i = 0; i < columns; i++)
        {
            var content = new double[nutrients];
            var holds = Holds(random, nutrients);
            foreach (var j in Enumerable.Range(0, nutrients).OrderBy(_ => random.Next()).Take(holds))
            {
                content[j] = Math.Round((0.01 + (random.NextDouble() * 0.49)) / Math.Max(1, holds - 1), 3);
            }

            double? price = random.NextDouble() < priced ? Math.Round(0.2 + (3 * random.NextDouble()), 2) : null;
            shelf.Add(new Column("m" + i.ToString("000", CultureInfo.InvariantCulture), content, price));
        }

        var target = Enumerable.Range(0, nutrients).Select(_ => (double)random.Next(2, 25)).ToArray();
        var side = new List<LinearRow>();
        for (var r = 0; r < rows; r++)
        {
            // A property of each column, at most a share of the blend a little under the average: some blends keep it, some do not.
            var property = shelf.Select(_ => random.NextDouble() < 0.5 ? 0 : random.NextDouble()).ToArray();
            var limit = property.Average() * (0.6 + (0.5 * random.NextDouble()));
            side.Add(new LinearRow("row" + r.ToString(CultureInfo.InvariantCulture), [.. property.Select(p => p - limit)]));
        }

        var forbidden = new HashSet<(int, int)>();
        while (forbidden.Count < pairs)
        {
            var (a, b) = (random.Next(columns), random.Next(columns));
            if (a < b)
            {
                forbidden.Add((a, b));
            }
        }

        return new BlendRequest
        {
            Columns = shelf, Target = target, AtMost = atMost, Best = best, Rows = side, ForbiddenPairs = [.. forbidden],
        };
    }

    /// <summary>
    /// The same shelf with the first nutrient scarce: no column holds more than six tenths of the wanted share of it, so that no blend comes
    /// near and bounds bite early.
    /// </summary>
    public static BlendRequest Scarce(BlendRequest request)
    {
        var share = 0.6 * request.Target[0] / request.Target.Sum();
        return request with
        {
            Columns = [.. request.Columns.Select(c => c with
            {
                Content = [Math.Min(c.Content[0], share / (1 - share) * c.Content.Skip(1).Sum()), .. c.Content.Skip(1)],
            })],
        };
    }

    private static int Holds(Random random, int nutrients)
    {
        var p = random.NextDouble();
        var holds = p < 0.3 ? 1 : p < 0.7 ? 2 : p < 0.9 ? 3 : 4;
        return Math.Min(holds, nutrients);
    }
}
