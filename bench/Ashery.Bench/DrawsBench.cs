using Ashery.Blending;
using Ashery.Plain;

namespace Ashery.Bench;

/// <summary>10,000 draws over 20 blends against the plain scalar loop.</summary>
internal static class DrawsBench
{
    public static void Run()
    {
        Table.Head("10,000 draws over 20 blends, ms", "nutrients", "library", "plain loop", "ratio", "largest difference of a 95th percentile");
        foreach (var nutrients in new[] { 3, 6 })
        {
            var blend = RandomShelf.Make(5, nutrients, 40, 4);
            var request = new UncertaintyRequest
            {
                Blend = blend,
                Blends = BlendSearch.Find(blend).Blends,
                Contents = [.. blend.Columns.Select(c => (IReadOnlyList<ContentRange>)[.. c.Content.Select(a => new ContentRange(0.9 * a, a, 1.15 * a))])],
                AmountError = [.. blend.Columns.Select(_ => 0.1)],
            };
            var ours = Timing.Median(() => UncertaintyDraws.Run(request), 500);
            var plain = Timing.Median(() => PlainDraws.Run(request), 1000);
            var (a, b) = (UncertaintyDraws.Run(request), PlainDraws.Run(request));
            var difference = a.Blends.Zip(b).Max(p => Math.Abs(p.First.Percentile95 - p.Second));
            Table.Row(Table.Whole(nutrients), Table.Figure(ours), Table.Figure(plain), Table.Times(plain / ours), Table.Figure(difference));
        }
    }
}
