using Ashery.Blending;
using Ashery.Materials;
using Ashery.Nutrients;

namespace Ashery.Recipes;

/// <summary>Which one material to buy when the shelf does not reach the wish.</summary>
internal static class Shopping
{
    /// <summary>A purchase must at least halve the error, or bring it below this where there is no blend at all.</summary>
    private const double WorthBuying = 0.5;

    /// <summary>Strength must grow by this part to be worth a purchase where the grade stays out of reach (our own choice).</summary>
    private const double WorthStronger = 1.05;

    /// <summary>Remaining errors closer than this are the same.</summary>
    private const double Same = 1e-6;

    /// <param name="kitchen">What was asked.</param>
    /// <param name="error">Error of the best blend now.</param>
    /// <param name="strongest">For a grade: strength of the strongest blend at the ratio now.</param>
    public static MaterialToBuy? ToBuy(Kitchen kitchen, double error, double? strongest)
    {
        var owned = kitchen.Request.Offers.Select(static o => o.Material.Id).ToHashSet(StringComparer.OrdinalIgnoreCase);
        Candidate? best = null;
        foreach (var material in kitchen.Request.Shop ?? MaterialCatalogue.Default.All)
        {
            if (!owned.Contains(material.Id) && IsForSale(material) && Try(kitchen, material, strongest is not null) is { } candidate
                && candidate.IsBetterThan(best))
            {
                best = candidate;
            }
        }

        if (best is null || !IsWorthIt(best, error, strongest))
        {
            return null;
        }

        return new MaterialToBuy(best.Material.Id, best.Material.Name, best.Error, best.Strength ?? StrengthWith(kitchen, best.Material));
    }

    private static bool IsWorthIt(Candidate best, double error, double? strongest) => strongest is null
        ? best.Error <= WorthBuying * Math.Min(1, error)
        : best.Reaches || best.Strength > strongest * WorthStronger;

    private static double? StrengthWith(Kitchen kitchen, Material material)
    {
        var with = kitchen.Request with { Offers = [.. kitchen.Request.Offers, new Offer(material)] };
        return kitchen.For(with).StrongestAtRatio()?.Strength;
    }

    // Strong acids and lyes are not advised to anyone who only wants another ratio.
    private static bool IsForSale(Material material) =>
        !material.Hazards.Contains(Hazard.StrongAcid) && !material.Hazards.Contains(Hazard.Caustic)
        && !material.Hazards.Contains(Hazard.ExplosivePrecursor) && !material.Hazards.Contains(Hazard.ToxicMeal);

    private static Candidate? Try(Kitchen kitchen, Material material, bool isGrade)
    {
        var request = kitchen.Request;
        if (Wanted.Of(request.Wish).Held(material.Label) <= 0 && request.Limits.Contents.Count == 0)
        {
            return null;
        }

        var with = request with { Offers = [.. request.Offers, new Offer(material)], Best = 1 };
        if (OfferSieve.Reason(with.Offers[^1], with) is not null)
        {
            return null;
        }

        var search = kitchen.For(with).Model.Search;
        if (search.Columns.Count > 0 && BlendSearch.Find(search) is { Blends: [var blend, ..] })
        {
            return new Candidate(material, blend.RatioError, null, Reaches: true, Penalty(material));
        }

        if (!isGrade)
        {
            return null;
        }

        var open = kitchen.For(Kitchen.WithoutDemands(with)).Model.Search;
        return BlendSearch.StrongestAtRatio(open) is { } strongest
            ? new Candidate(material, strongest.RatioError, strongest.Strength, Reaches: false, Penalty(material))
            : null;
    }

    // Between equals the plainer material: a straight, fewer hazards, low in chloride, solid.
    private static int Penalty(Material material) =>
        (material.Kind is MaterialKind.Straight or MaterialKind.CalciumMagnesium or MaterialKind.TraceElement ? 0 : 5)
        + material.Hazards.Count(static h => h is not Hazard.Dust)
        + (material.Label[Nutrient.Cl] > WarningThresholds.Chloride ? 2 : 0)
        + (material.IsLiquid ? 1 : 0);

    private sealed record Candidate(Material Material, double Error, double? Strength, bool Reaches, int Penalty)
    {
        public bool IsBetterThan(Candidate? other)
        {
            if (other is null || Reaches != other.Reaches)
            {
                return other is null || Reaches;
            }

            // Out of reach with either: the stronger one. Else the smaller error, then the plainer material.
            if (!Reaches && Math.Abs(Strength!.Value - other.Strength!.Value) > Same)
            {
                return Strength > other.Strength;
            }

            if (Math.Abs(Error - other.Error) > Same)
            {
                return Error < other.Error;
            }

            return Penalty != other.Penalty ? Penalty < other.Penalty : string.CompareOrdinal(Material.Id, other.Material.Id) < 0;
        }
    }
}
