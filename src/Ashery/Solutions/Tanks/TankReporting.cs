using Ashery.Cautions;
using Ashery.Problems;

namespace Ashery.Solutions.Tanks;

/// <summary>From the split found to what a grower reads.</summary>
internal static class TankReporting
{
    public static TankReport Of(TankRequest request, TankSearch search)
    {
        var shares = Ordered(request, search.Shares);
        var tanks = new List<Tank>();
        foreach (var share in shares)
        {
            tanks.Add(Tank(request, search, share, ((char)('A' + tanks.Count)).ToString()));
        }

        // All at once may be less than the least of each: a tank that is clear higher up may not be so there.
        var most = search.Ratio;
        var least = tanks.MinBy(static tank => tank.MostRatio)!;
        var higher = search.Ratios.Common(shares, least.MostRatio);
        var limiting = least.MostRatio <= most ? least.Limiting : shares.Select(share => Limiting(request, search, share, most)).MaxBy(static margin => margin.Index);
        var report = new TankReport
        {
            Request = request,
            Tanks = tanks,
            MostRatio = most,
            ClearAgainAt = higher > request.Ratio && most < request.Ratio ? higher : null,
            ClearAsAsked = search.Ratios.Common(shares, request.Ratio) >= request.Ratio,
            MostRatioInOne = search.RatioInOne,
            MostRatioDivided = search.RatioDivided,
            Limiting = limiting,
            Certificate = new(TankSearch.Splits(request.Feed.Count, request.Tanks), search.Judged, search.Judge.Count, search.Divided),
            Notes = [],
            Cautions = Cautions(request),
        };
        return report with { Notes = Notes(report) };
    }

    // The tank with the calcium is A, as the trade has it; then by the order of the materials.
    private static IReadOnlyList<double[]> Ordered(TankRequest request, IReadOnlyList<double[]> shares) =>
        [.. shares.OrderByDescending(share => Grams(request, share, static m => ApartRule.Gives(m, "calcium"))).ThenBy(static share => Array.FindIndex(share, static s => s > 0))];

    private static double Grams(TankRequest request, double[] share, Func<Can.MaterialInWater, bool> those)
    {
        var sum = 0.0;
        for (var i = 0; i < share.Length; i++)
        {
            sum += those(request.Feed[i].Material) ? share[i] * request.Feed[i].GramsPerLitre : 0;
        }

        return sum;
    }

    private static Tank Tank(TankRequest request, TankSearch search, double[] share, string name)
    {
        var most = search.Ratios.RatioOf(share, TankSplit.MostRatio);
        var judged = Math.Min(request.Ratio, Math.Max(most, 1));
        var (solution, water) = search.Judge.Stock(share, judged, request.Coldest);
        var slow = SaturationIndex.All(solution).Where(static i => i.Mineral.Slow && i.Index > 0).OrderByDescending(static i => i.Index)
            .Select(i => new TankMargin(i.Mineral.Id, request.Coldest, i.Index)).ToList();
        return new()
        {
            Name = name,
            Parts = Parts(request, share),
            Margins = search.Judge.Margins(share, request.Ratio),
            Slow = slow,
            MostRatio = most,
            Limiting = most >= TankSplit.MostRatio ? null : Limiting(request, search, share, most),
            Solution = solution,
            WaterPerLitre = water,
        };
    }

    // What is past its limit a hundredth above the highest ratio: of the whole, or of the pair that bounds it.
    private static TankMargin Limiting(TankRequest request, TankSearch search, double[] share, double most)
    {
        var at = Math.Max(1, most) * 1.01;
        var worst = search.Judge.Worst(share, at);
        for (var i = 0; i < share.Length && worst.Index <= 0; i++)
        {
            for (var j = i + 1; j < share.Length; j++)
            {
                var two = new double[share.Length];
                (two[i], two[j]) = (share[i], share[j]);
                if (two[i] > 0 && two[j] > 0 && search.Judge.Worst(two, at) is var pair && pair.Index > worst.Index)
                {
                    worst = pair with { Name = $"{pair.Name}, from {request.Feed[i].Material.Name} and {request.Feed[j].Material.Name} alone" };
                }
            }
        }

        return worst;
    }

    // Acid into the water first, then what dissolves worst for its amount, chelates last of all.
    private static IReadOnlyList<TankPart> Parts(TankRequest request, double[] share)
    {
        var parts = new List<TankPart>();
        for (var i = 0; i < share.Length; i++)
        {
            if (share[i] > 0)
            {
                var (material, grams) = request.Feed[i];
                parts.Add(new(material, share[i], share[i] * grams * request.Ratio, TankJudge.Limit(material, request.Coldest)));
            }
        }

        return [.. parts.OrderBy(static p => ApartRule.IsAcid(p.Material) ? 0 : ApartRule.IsChelate(p.Material) ? 2 : 1)
            .ThenByDescending(static p => p.Limit is { } limit ? p.GramsPerLitre / limit : 0).ThenBy(static p => p.Material.Id, StringComparer.Ordinal)];
    }

    private static List<string> Cautions(TankRequest request)
    {
        var ids = new List<string>(CautionIndex.Default.CautionsFor(
            request.Feed.Select(static m => m.Material.Material).OfType<Materials.Material>(), CautionUse.Mixing, CautionUse.Dissolving, CautionUse.Storing));
        foreach (var id in (ReadOnlySpan<string>)["stock-strong", "stock-label"])
        {
            if (!ids.Contains(id))
            {
                ids.Add(id);
            }
        }

        return ids;
    }

    private static List<Problem> Notes(TankReport report)
    {
        var notes = new List<Problem>();
        var request = report.Request;
        if (report.MostRatio <= 0)
        {
            notes.Add(new(
                "tanks",
                $"No split over {(request.Tanks == 1 ? "one tank" : FormattableString.Invariant($"{request.Tanks} tanks"))} stays clear at any strength" + (report.Limiting is { } first ? $": {first.Name} comes out." : "."),
                request.Tanks == 1 ? "Take two tanks, calcium in one, sulfate and phosphate in the other." : "Make the stocks with soft or rain water, take one tank more, or give one material by itself.",
                Severity.Warning));
        }
        else if (report.ClearAgainAt is { } again)
        {
            var worst = report.Tanks.SelectMany(static tank => tank.Margins).MaxBy(static margin => margin.Index);
            notes.Add(new(
                "ratio",
                FormattableString.Invariant($"At 1:{request.Ratio:0.#} a tank does not stay clear: {worst?.Name} comes out, although 1:{Math.Floor(again):0} is clear: the weaker stock is less acid."),
                FormattableString.Invariant($"Take an injector near 1:{Math.Floor(again * TankSplit.Margin):0} and ask for it here, or make the stocks with soft or rain water."),
                Severity.Warning));
        }
        else if (!report.IsClear)
        {
            notes.Add(new(
                "ratio",
                report.IsNear
                    ? FormattableString.Invariant($"1:{request.Ratio:0.#} is inside the safety margin: the model has the tanks clear up to 1:{report.MostRatio:0}.")
                    : FormattableString.Invariant($"At 1:{request.Ratio:0.#} a tank does not stay clear: {report.Limiting?.Name} comes out above 1:{report.MostRatio:0}."),
                FormattableString.Invariant($"Take an injector of 1:{Math.Floor(report.AdvisedRatio):0} or less, keep the tanks warmer, or take one tank more."),
                Severity.Warning));
        }

        if (!report.Certificate.Divided && report.MostRatioDivided is { } divided)
        {
            notes.Add(new(
                "tanks",
                FormattableString.Invariant($"With one of the materials in two tanks the stocks could be as strong as 1:{Math.Floor(divided * TankSplit.Margin):0}; here each stays whole."),
                "Ask for that ratio to see how.",
                Severity.Note));
        }

        foreach (var tank in report.Tanks.Where(static t => t.Slow.Count > 0))
        {
            notes.Add(new(
                $"tank {tank.Name}",
                $"Tank {tank.Name}: may come out slowly, over days: {string.Join(", ", tank.Slow.Select(static s => s.Name))}.",
                "Use the stock up within a week or two, and look for a film on the bottom.",
                Severity.Note));
        }

        if (report.Tanks.Any(static t => t.Solution.BeyondGoodRange))
        {
            notes.Add(new(
                "strength",
                FormattableString.Invariant($"Stocks are stronger than the model is good for (ionic strength 0.5 mol/kg), so a tenth of the computed strength is kept back: at most 1:{Math.Floor(report.AdvisedRatio):0} of 1:{report.MostRatio:0}."),
                "Make a litre first, let it stand a night at the coldest, and look.",
                Severity.Note));
        }

        foreach (var tank in report.Tanks)
        {
            foreach (var part in tank.Parts.Where(static p => p.Limit is null))
            {
                notes.Add(new($"tank {tank.Name}", $"No table says how much {part.Material.Name} dissolves; only its ions were judged.", "Try a litre first.", Severity.Note));
            }
        }

        return notes;
    }
}
