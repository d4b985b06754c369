using Ashery.Blending;
using Ashery.Plain;

namespace Ashery.Bench;

/// <summary>What a page asks for at once: a shelf of forty, with rows, pairs and missing prices.</summary>
internal static class ShelfBench
{
    public static void Run()
    {
        Table.Head("A shelf of 40 with two side rows and 40 forbidden pairs, ms", "nutrients", "at most", "prices", "20 best", "strongest at the ratio", "trade-offs", "75 g in 1 g steps", "steps proved");
        foreach (var (nutrients, atMost) in new[] { (3, 4), (3, 5), (6, 4), (6, 5) })
        {
            foreach (var priced in new[] { 1.0, 0.5, 0.0 })
            {
                var request = RandomShelf.Make(7, nutrients, 40, atMost, 20, rows: 2, pairs: 40, priced);
                var steps = new WholeStepRequest
                {
                    Blend = request, StepGrams = [.. request.Columns.Select(_ => 1.0)], FromGrams = 75, ToGrams = 75,
                };
                Table.Row(
                    Table.Whole(nutrients), Table.Whole(atMost), priced == 1 ? "all" : priced == 0 ? "none" : "half",
                    Table.Figure(Timing.Median(() => BlendSearch.Find(request), 100)),
                    Table.Figure(Timing.Median(() => BlendSearch.StrongestAtRatio(request), 100)),
                    Table.Figure(Timing.Median(() => BlendSearch.TradeOffs(request), 100)),
                    Table.Figure(Timing.Median(() => WholeStepSearch.Find(steps), 100)),
                    WholeStepSearch.Find(steps).Proved ? "yes" : "no");
            }
        }
    }
}
