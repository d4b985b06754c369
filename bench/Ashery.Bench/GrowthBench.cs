using Ashery.Blending;
using Ashery.Plain;

namespace Ashery.Bench;

/// <summary>How time grows with the number of columns, 20 best proved.</summary>
internal static class GrowthBench
{
    private static readonly (int Nutrients, int AtMost)[] Kinds = [(3, 4), (6, 3), (6, 4), (6, 5), (6, 6)];

    public static void Run()
    {
        Table.Head("How time grows: 20 best proved, ms (median over three shelves)", ["columns", .. Kinds.Select(k => Table.Whole(k.Nutrients) + " nutrients, at most " + Table.Whole(k.AtMost))]);
        foreach (var columns in new[] { 10, 20, 40, 60, 80, 100, 150, 200 })
        {
            var cells = new List<string> { Table.Whole(columns) };
            foreach (var (nutrients, atMost) in Kinds)
            {
                var times = new List<double>();
                var proved = true;
                for (var shelf = 1; shelf <= 3; shelf++)
                {
                    var request = RandomShelf.Make(shelf, nutrients, columns, atMost);
                    times.Add(Timing.Median(() => proved &= BlendSearch.Find(request).Proved, 60));
                }

                times.Sort();
                cells.Add(Table.Figure(times[1]) + (proved ? string.Empty : " (not proved)"));
            }

            Table.Row([.. cells]);
        }
    }
}
