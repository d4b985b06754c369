using System.Diagnostics;
using Ashery.Blending;
using Ashery.Plain;

namespace Ashery.Bench;

/// <summary>Six nutrients: twenty best proved against one best by the solvers, and against plain enumeration.</summary>
internal static class SixNutrients
{
    /// <summary>A solver that has no proof by then is shown with "&gt;": its ratio is a lower bound.</summary>
    private const int Limit = 5_000;

    public static void Run(bool scarce)
    {
        Rivals.Warm(RandomShelf.Make(99, 3, 20, 4));
        Table.Head(
            scarce ? "6 nutrients, one of them scarce (no blend is near, easy for bounds)" : "6 nutrients",
            "at most", "columns", "shelf", "20 best, ms", "SCIP one", "HiGHS one", "CBC one", "ratio to the fastest", "plain enumeration", "ratio", "same results");
        foreach (var (atMost, columns) in new[] { (5, 60), (4, 60), (4, 100) })
        {
            for (var shelf = 1; shelf <= 2; shelf++)
            {
                var request = RandomShelf.Make(shelf, 6, columns, atMost);
                Shelf(scarce ? RandomShelf.Scarce(request) : request, shelf);
            }
        }
    }

    private static void Shelf(BlendRequest request, int shelf)
    {
        var ours = Timing.Median(() => BlendSearch.Find(request));
        var answer = BlendSearch.Find(request);
        var same = answer.Proved;
        var remarks = string.Empty;
        var cells = new List<string>();
        var fastest = double.PositiveInfinity;
        var open = true;
        foreach (var name in Rivals.Names)
        {
            var (ms, proved, error) = Rivals.One(request, name, Limit);
            var above = (error ?? 9) - answer.Blends[0].RatioError;
            same &= above >= -1e-6;
            if (proved && above > 1e-6)
            {
                // A solver's own tolerance: it calls a blend best while enumeration has a better one.
                remarks += FormattableString.Invariant($"; {name} ends {above:0.0e+0} above the best");
            }

            cells.Add((proved ? string.Empty : "> ") + Table.Figure(ms));
            open = ms < fastest ? !proved : open;
            fastest = Math.Min(fastest, ms);
        }

        var watch = Stopwatch.StartNew();
        var plain = PlainEnumeration.Find(request);
        var plainTime = watch.Elapsed.TotalMilliseconds;
        same &= plain.Count == answer.Blends.Count
            && plain.Zip(answer.Blends).All(p => PlainEnumeration.Places(request, p.First).SequenceEqual(p.Second.Members));
        Table.Row([
            Table.Whole(request.AtMost), Table.Whole(request.Columns.Count), Table.Whole(shelf), Table.Figure(ours), .. cells,
            (open ? "> " : string.Empty) + Table.Times(fastest / ours), Table.Figure(plainTime), Table.Times(plainTime / ours), (same ? "yes" : "NO") + remarks]);
    }
}
