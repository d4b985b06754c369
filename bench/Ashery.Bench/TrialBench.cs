using System.Diagnostics;
using Ashery.Climate.Generation;
using Ashery.Trials;
using Ashery.Trials.Designs;
using Ashery.Trials.Fits;

namespace Ashery.Bench;

/// <summary>Ten thousand simulated trials of counts, each fitted, beside the general model with the same answer; and a whole design.</summary>
internal static class TrialBench
{
    private const int Draws = 10_000;
    private const int Few = 300;

    public static void Run()
    {
        Table.Head("Trials of counts: 10,000 simulated and fitted", "feeds", "pots a feed", "simulated and fitted, ms, all cores", "one thread, ms", "general model, one thread, ms", "ratio", "same answers", "whole design, ms", "pots found");
        foreach (var (feeds, blocks, difference) in new[] { (2, 8, 0.6), (2, 16, 0.4), (3, 14, 0.5), (4, 20, 0.4) })
        {
            var trial = new Trial
            {
                Name = "bench",
                Measure = new(MeasureKind.Count, "flowers"),
                Treatments = [.. Enumerable.Range(0, feeds).Select(static i => new Treatment(FormattableString.Invariant($"f{i}"), "feed", i == 0))],
                Wish = new() { Mean = 15, Difference = difference, Spread = 0.2 },
            };
            var all = Timing.Median(() => CountPower.Of(trial, blocks, 0.05, Draws, 1));
            var (quick, general, same) = Beside(trial, feeds, blocks);
            var needed = 0;
            var design = Timing.Median(() => needed = TrialDesign.Plan(trial, Draws).Value!.PotsNeeded ?? 0);
            Table.Row(Table.Whole(feeds), Table.Whole(blocks), Table.Figure(all), Table.Figure(quick), Table.Figure(general), Table.Figure(general / quick) + " x", same ? "yes" : "no", Table.Figure(design), Table.Whole(needed));
        }
    }

    // The same drawn trials through both, a few of them for the general model.
    private static (double Quick, double General, bool Same) Beside(Trial trial, int feeds, int blocks)
    {
        var (plain, other) = (new CountLaw(trial.Wish.Mean, trial.Wish.Spread), new CountLaw(trial.Wish.Mean * (1 + trial.Wish.Difference), trial.Wish.Spread));
        var drawn = Enumerable.Range(0, Draws).Select(d =>
        {
            var random = new WeatherStream(1, d);
            var y = new int[blocks * feeds];
            for (var i = 0; i < y.Length; i++)
            {
                y[i] = (i % feeds == feeds - 1 ? other : plain).Draw(ref random);
            }

            return y;
        }).ToList();
        var fit = new BlockedCounts(blocks, feeds);
        var found = new double[Draws];
        var quick = Timing.Median(() =>
        {
            for (var d = 0; d < Draws; d++)
            {
                found[d] = fit.Fit(drawn[d]).Estimate;
            }
        });
        var matrix = new ModelMatrix(blocks * feeds).Factor("blocks", [.. Enumerable.Range(0, blocks * feeds).Select(i => i / feeds)], blocks).Factor("feeds", [.. Enumerable.Range(0, blocks * feeds).Select(i => i % feeds)], feeds);
        var l = matrix.Difference(matrix.Term("feeds"), feeds - 1, 0);
        var start = Stopwatch.GetTimestamp();
        var same = true;
        for (var d = 0; d < Few; d++)
        {
            var general = NegativeBinomial.Fit(matrix, [.. drawn[d].Select(static v => (double)v)]).Model.Fit.Value(l);
            same &= Math.Abs(general - found[d]) < 2e-3;
        }

        return (quick, Stopwatch.GetElapsedTime(start).TotalMilliseconds * Draws / Few, same);
    }
}
