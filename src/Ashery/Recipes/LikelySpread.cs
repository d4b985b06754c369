using Ashery.Blending;
using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Quantities;

namespace Ashery.Recipes;

/// <summary>What label ranges and scoop errors do to the blends found, and their rank by the 95th percentile.</summary>
internal static class LikelySpread
{
    /// <summary>Draws when a ranking needs them and none were asked for.</summary>
    private const int UsualDraws = 10_000;

    /// <summary>
    /// How much two level scoops of one material differ, either way, when the grower has not weighed any: a fifth (common
    /// practice, no source). With ten scoops weighed the grower's own range is used.
    /// </summary>
    public const double UncalibratedScoop = 0.2;

    /// <summary>How much level scoops differ from a weighed mean given without a range: a tenth (common practice, no source).</summary>
    public const double CalibratedScoop = 0.1;

    public static Found Rank(Kitchen kitchen, Found found, IReadOnlyList<Blend> blends)
    {
        var request = kitchen.Request;
        var byPercentile = request.Rank is RankBy.Percentile95;
        if (found.Recipes.Count == 0 || (request.Draws == 0 && !byPercentile))
        {
            return found;
        }

        var wanted = Wanted.Of(request.Wish).Nutrients;
        var offers = kitchen.Model.Offers;
        var answer = UncertaintyDraws.Run(new UncertaintyRequest
        {
            Blend = kitchen.Model.Search,
            Blends = blends,
            Contents = [.. offers.Select(o => Ranges(o.Material, wanted))],
            AmountError = [.. offers.Select(o => AmountError(request.Measuring, o.Material))],
            Draws = request.Draws == 0 ? UsualDraws : request.Draws,
            Seed = request.Seed,
        });
        var recipes = found.Recipes.Select((r, i) => r with { Uncertainty = Uncertainty(answer.Blends[i], wanted) }).ToList();
        return found with { Recipes = byPercentile ? [.. answer.ByPercentile95.Select(i => recipes[i])] : recipes };
    }

    private static List<ContentRange> Ranges(Material material, Nutrient[] wanted)
    {
        var ranges = new List<ContentRange>(wanted.Length);
        foreach (var nutrient in wanted)
        {
            // The bag's own label is the typical value; the market's spread is laid around it in proportion.
            var label = material.Label[nutrient];
            var range = material.LabelSpread.TryGetValue(nutrient, out var spread) && spread.Typical > 0
                ? new ContentRange(label * spread.Min / spread.Typical, label, Math.Min(1, label * spread.Max / spread.Typical))
                : new ContentRange(label, label, label);
            ranges.Add(range with { Min = Math.Min(range.Min, label), Max = Math.Max(range.Max, label) });
        }

        return ranges;
    }

    private static double AmountError(Measuring measuring, Material material)
    {
        if (measuring is not Measuring.ByScoop { Scoop: var scoop })
        {
            return 0;
        }

        if (!ScoopMass.IsCalibrated(scoop, material))
        {
            return Math.Max(UncalibratedScoop, Relative(ScoopMass.Of(scoop, material)!.Value));
        }

        var weighed = ScoopMass.Of(scoop, material)!.Value;
        return weighed.Min < weighed.Max ? Relative(weighed) : CalibratedScoop;
    }

    private static double Relative(Spread spread) =>
        Math.Max(spread.Max - spread.Typical, spread.Typical - spread.Min) / spread.Typical;

    private static RecipeUncertainty Uncertainty(BlendUncertainty spread, Nutrient[] wanted)
    {
        var nitrogen = Array.IndexOf(wanted, Nutrient.N);

        return new RecipeUncertainty(
            spread.Median,
            spread.Percentile95,
            spread.WorstCase,
            nitrogen < 0 ? 0 : spread.ContentLow[nitrogen],
            nitrogen < 0 ? 0 : spread.ContentHigh[nitrogen]);
    }
}
