using Ashery.Climate.Generation;

namespace Ashery.Trials.Designs;

/// <summary>
/// A randomised complete block layout (Fisher 1935): pots that stand together and are of a size make a block of as many pots as there are feeds, and within
/// each block the feeds are drawn by lot. What the place does to a pot then falls on all feeds alike.
/// </summary>
internal static class BlockLayout
{
    /// <summary>Places of pots; pots that fill no block are left out.</summary>
    public static IReadOnlyList<TrialPlace> Draw(Trial trial)
    {
        var random = new WeatherStream(trial.Seed, 0);
        var places = new List<TrialPlace>();
        var block = 0;
        foreach (var pots in Blocks(trial.Pots, trial.Treatments.Count))
        {
            block++;
            var feeds = trial.Treatments.Select(static t => t.Id).ToArray();
            Shuffle(feeds, ref random);
            places.AddRange(pots.Select((pot, i) => new TrialPlace(pot.Id, block, feeds[i])));
        }

        return places;
    }

    /// <summary>Blocks of like pots: within each place by size; what is left over of the places is put together by size.</summary>
    public static IReadOnlyList<IReadOnlyList<TrialPot>> Blocks(IReadOnlyList<TrialPot> pots, int size)
    {
        var blocks = new List<IReadOnlyList<TrialPot>>();
        var left = new List<TrialPot>();
        foreach (var place in pots.GroupBy(static p => p.Place ?? string.Empty).OrderBy(static g => g.Key, StringComparer.Ordinal))
        {
            left.AddRange(Cut(blocks, [.. place.OrderBy(static p => p.Litres ?? 0)], size));
        }

        _ = Cut(blocks, [.. left.OrderBy(static p => p.Litres ?? 0)], size);
        return blocks;
    }

    /// <summary>Letters for the feeds that say nothing of their order.</summary>
    public static IReadOnlyList<Treatment> WithCodes(IReadOnlyList<Treatment> treatments, int seed)
    {
        // Without letters that are misread on a wet tag.
        var letters = "ACDEFHJKLMNPRTUVWXY".Select(static c => c.ToString()).ToArray();
        var random = new WeatherStream(seed, 1);
        Shuffle(letters, ref random);
        return [.. treatments.Select((t, i) => t with { Code = letters[i] })];
    }

    // Full blocks from the front; the rest is given back. A run of pots is cut where its sizes change most.
    private static List<TrialPot> Cut(List<IReadOnlyList<TrialPot>> blocks, List<TrialPot> pots, int size)
    {
        var spare = pots.Count % size;
        var rest = new List<TrialPot>();
        while (spare-- > 0)
        {
            var alone = Loneliest(pots);
            rest.Add(pots[alone]);
            pots.RemoveAt(alone);
        }

        for (var i = 0; i < pots.Count; i += size)
        {
            blocks.Add(pots.GetRange(i, size));
        }

        return rest;
    }

    // The end whose pot is least like its neighbour, in ratio of size.
    private static int Loneliest(List<TrialPot> pots)
    {
        if (pots.Count < 2)
        {
            return 0;
        }

        var first = Step(pots[0], pots[1]);
        var last = Step(pots[^2], pots[^1]);
        return first > last ? 0 : pots.Count - 1;

        static double Step(TrialPot a, TrialPot b) => Math.Log((b.Litres ?? 1) / (a.Litres ?? 1));
    }

    private static void Shuffle(string[] items, ref WeatherStream random)
    {
        for (var i = items.Length - 1; i > 0; i--)
        {
            var j = (int)(random.Uniform() * (i + 1));
            (items[i], items[j]) = (items[j], items[i]);
        }
    }
}
