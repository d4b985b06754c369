using Ashery.Materials;
using Ashery.Solutions.Can;
using Ashery.Solutions.Tanks;
using Ashery.Solutions.Waters;

namespace Ashery.Bench;

/// <summary>Twelve salts over stock tanks: the search beside plain trying of every split, on one thread.</summary>
internal static class TanksBench
{
    private static readonly (string Id, double Grams)[] Twelve =
    [
        ("calcium-nitrate-tetrahydrate", 0.8), ("potassium-nitrate", 0.5), ("epsom-salt", 0.5), ("mkp", 0.2), ("potassium-sulfate", 0.2), ("ammonium-nitrate", 0.1),
        ("iron-edta", 0.02), ("manganese-sulfate-monohydrate", 0.002), ("zinc-sulfate-heptahydrate", 0.001), ("copper-sulfate-pentahydrate", 0.0002), ("boric-acid", 0.002),
        ("sodium-molybdate-dihydrate", 0.0001),
    ];

    public static void Run()
    {
        Table.Head("Twelve salts over stock tanks, ms", "water", "tanks", "search", "solutions", "splits", "judged whole", "every split, no bounds");
        foreach (var water in new[] { "pure", "moderate", "hard" })
        {
            foreach (var tanks in new[] { 2, 3 })
            {
                var request = Request(water, tanks);
                var ms = Timing.Median(() => TankSplit.Find(request));
                var certificate = TankSplit.Find(request).Value!.Certificate;
                Table.Row(
                    water, Table.Whole(tanks), Table.Figure(ms), Table.Whole(certificate.Speciations), Table.Whole((long)certificate.Splits), Table.Whole(certificate.Judged),
                    tanks == 2 ? Table.Figure(Plain(request)) : "-");
            }
        }
    }

    // Each tank of each split by itself, what was found of one kept for the next: the least a plain loop would do.
    private static double Plain(TankRequest request)
    {
        var start = System.Diagnostics.Stopwatch.GetTimestamp();
        var ratios = new TankRatios(request);
        var all = (1 << request.Feed.Count) - 1;
        var found = new double[all + 1];
        for (var mask = 1; mask <= all; mask++)
        {
            found[mask] = ratios.RatioOf(ratios.Full(mask), TankSplit.MostRatio);
        }

        var best = found[all];
        for (var mask = 1; mask < all; mask++)
        {
            best = Math.Max(best, Math.Min(found[mask], found[all ^ mask]));
        }

        var ms = System.Diagnostics.Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        var search = TankSplit.Find(request with { MayDivide = false }).Value!.MostRatio;
        return Math.Abs((best / search) - 1) < 0.015 ? ms : throw new InvalidOperationException(FormattableString.Invariant($"Plain trying found 1:{best}, the search 1:{search}."));
    }

    private static TankRequest Request(string water, int tanks) => new()
    {
        Feed = [.. Twelve.Select(static f => new TankMaterial(MaterialInWater.Of(MaterialCatalogue.Default.Find(f.Id)!).Value!, f.Grams))],
        Water = SourceWaters.Default.Find(water)!.ToInput(),
        WaterName = water,
        Tanks = tanks,
    };
}
