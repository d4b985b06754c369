using Ashery.Blending;
using Ashery.Plain;

namespace Ashery.Bench;

/// <summary>Three nutrients, at most four columns: one best proved, and twenty.</summary>
internal static class ThreeNutrients
{
    private const int Shelves = 3;

    public static void Run()
    {
        Rivals.Warm(RandomShelf.Make(99, 3, 20, 4));
        Table.Head(
            "3 nutrients, at most 4 columns",
            "columns", "shelf", "one best, ms", "SCIP", "HiGHS", "CBC", "ratio to the fastest", "20 best, ms", "that solver, 20 by cuts", "ratio", "same errors");
        foreach (var columns in new[] { 30, 60, 100 })
        {
            for (var shelf = 1; shelf <= Shelves; shelf++)
            {
                Shelf(columns, shelf);
            }
        }
    }

    private static void Shelf(int columns, int shelf)
    {
        var twenty = RandomShelf.Make(shelf, 3, columns, 4);
        var one = twenty with { Best = 1 };
        var ourOne = Timing.Median(() => BlendSearch.Find(one));
        var ourTwenty = Timing.Median(() => BlendSearch.Find(twenty));
        var found = BlendSearch.Find(twenty).Blends;
        var same = true;
        var times = new double[Rivals.Names.Length];
        for (var s = 0; s < times.Length; s++)
        {
            times[s] = double.PositiveInfinity;
            for (var run = 0; run < 3; run++)
            {
                var (ms, _, error) = Rivals.One(twenty, Rivals.Names[s], 60_000);
                times[s] = Math.Min(times[s], ms);
                same &= Math.Abs((error ?? 9) - found[0].RatioError) <= 1e-6;
            }
        }

        var fastest = Array.IndexOf(times, times.Min());
        var several = Rivals.Several(twenty, Rivals.Names[fastest], 20);
        var again = Rivals.Several(twenty, Rivals.Names[fastest], 20);
        same &= several.Errors.Count == found.Count && several.Errors.Zip(found).All(p => Math.Abs(p.First - p.Second.RatioError) <= 1e-6);
        var cuts = Math.Min(several.Milliseconds, again.Milliseconds);
        Table.Row(
            Table.Whole(columns), Table.Whole(shelf), Table.Figure(ourOne), Table.Figure(times[0]), Table.Figure(times[1]), Table.Figure(times[2]),
            Table.Times(times[fastest] / ourOne), Table.Figure(ourTwenty), Rivals.Names[fastest] + " " + Table.Figure(cuts), Table.Times(cuts / ourTwenty), same ? "yes" : "NO");
    }
}
