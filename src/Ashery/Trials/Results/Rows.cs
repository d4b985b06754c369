using Ashery.Trials.Fits;

namespace Ashery.Trials.Results;

/// <summary>Pots as rows of a model: figures, blocks and feeds by number.</summary>
internal sealed class Rows
{
    public Rows(IReadOnlyList<PotResult> pots, IReadOnlyList<string> feeds)
    {
        Y = [.. pots.Select(static p => p.Value)];
        Feeds = feeds;
        var order = feeds.Select(static (f, i) => (f, i)).ToDictionary(static x => x.f, static x => x.i, StringComparer.Ordinal);
        Feed = [.. pots.Select(p => order[p.Treatment])];
        var blocks = pots.Select(static p => p.Block).Distinct().Order().ToList();
        Block = [.. pots.Select(p => blocks.IndexOf(p.Block))];
        BlockCount = blocks.Count;
    }

    public double[] Y { get; }

    public IReadOnlyList<string> Feeds { get; }

    public int[] Feed { get; }

    public int[] Block { get; }

    public int BlockCount { get; }

    /// <summary>A constant and blocks.</summary>
    public ModelMatrix Base()
    {
        var matrix = new ModelMatrix(Y.Length);
        return BlockCount > 1 ? matrix.Factor("blocks", Block, BlockCount) : matrix;
    }

    public ModelMatrix WithFeeds() => Base().Factor("feeds", Feed, Feeds.Count);

    public int Index(string feed)
    {
        for (var i = 0; i < Feeds.Count; i++)
        {
            if (Feeds[i] == feed)
            {
                return i;
            }
        }

        return -1;
    }

    public double[] Counts() => [.. Feeds.Select((_, f) => (double)Feed.Count(x => x == f))];
}
