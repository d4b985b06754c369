using Ashery.Blending;
using Ashery.Nutrients;

namespace Ashery.Recipes;

/// <summary>Says whether a wish is met, nearly met or out of reach, and what stands in the way.</summary>
internal static class Reach
{
    /// <summary>Errors up to this are as good as none: half a per cent, less than any label's tolerance.</summary>
    public const double NearEnough = 0.005;

    /// <summary>A blend that brings less than half of what is wanted of a nutrient does not have that ratio in any useful sense (our own choice).</summary>
    public const double Half = 0.5;

    public static (OutOfReach? OutOfReach, OutOfReach? NearMiss) Judge(Kitchen kitchen, BlendAnswer free, Found found, Recipe? exact)
    {
        if (free.Blends.Count == 0)
        {
            return (kitchen.Request.Wish.IsGrade ? Grade(kitchen, exact) : NoBlend(kitchen, exact), null);
        }

        var best = kitchen.Freely(free.Blends[0]);
        if (found.Recipes.Count == 0)
        {
            return (new OutOfReach(NoSteps(kitchen.Request), best, FallsShort(best, kitchen.Request.Wish), ToBuy: null), null);
        }

        if (best.RatioError <= NearEnough || kitchen.Request.Wish.IsGrade)
        {
            return (null, null);
        }

        var shortest = FallsShort(best, kitchen.Request.Wish);
        var answer = new OutOfReach(
            RatioWhy(kitchen, best, shortest), best, shortest, Shopping.ToBuy(kitchen, best.RatioError, strongest: null));
        return shortest is { } nutrient && Supply(best, kitchen.Request.Wish, nutrient) < Half ? (answer, null) : (null, answer);
    }

    /// <summary>True when a blend brings of every wanted nutrient at least half of what the first blend brings of it.</summary>
    public static bool IsUseful(Recipe recipe, Recipe first, Wish wish)
    {
        var wanted = Wanted.Of(wish);
        for (var j = 0; j < wanted.Nutrients.Length; j++)
        {
            if (wanted.Supply(recipe.Grade, j) < Half * Math.Min(1, wanted.Supply(first.Grade, j)))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>What to do about a wish that is missed.</summary>
    public static string WayOut(OutOfReach reach) => reach.ToBuy is { } buy
        ? $"{buy.Name} would bring the error to {Say.Percent(buy.RemainingError)}."
        : "No single material of the catalogue closes the gap; take the nearest blend or change the wish.";

    /// <summary>The wanted nutrient of which the blend brings the smallest part of its wanted share; null when all are met.</summary>
    public static Nutrient? FallsShort(Recipe recipe, Wish wish)
    {
        Nutrient? shortest = null;
        var least = 1 - 1e-6;
        var wanted = Wanted.Of(wish);
        for (var j = 0; j < wanted.Nutrients.Length; j++)
        {
            var supply = wanted.Supply(recipe.Grade, j);
            if (supply < least)
            {
                least = supply;
                shortest = wanted.Nutrients[j];
            }
        }

        return shortest;
    }

    private static double Supply(Recipe recipe, Wish wish, Nutrient nutrient)
    {
        var wanted = Wanted.Of(wish);
        return wanted.Supply(recipe.Grade, Array.IndexOf(wanted.Nutrients, nutrient));
    }

    private static string RatioWhy(Kitchen kitchen, Recipe best, Nutrient? shortest)
    {
        var request = kitchen.Request;
        if (shortest is not { } nutrient)
        {
            return $"No blend of these materials has exactly {request.Wish.Name}.";
        }

        var symbol = LabelBasis.Symbol(nutrient);
        if (kitchen.Model.Offers.All(o => o.Material.Label[nutrient] <= 0))
        {
            return kitchen.Model.LeftOut.FirstOrDefault(l => l.Offer.Material.Label[nutrient] > 0) is { } left
                ? $"{request.Wish.Name} wants {symbol}, and the limits leave no material with any: {left.Offer.Material.Id} is left out ({left.Reason})."
                : $"{request.Wish.Name} wants {symbol}, and none of these materials holds any.";
        }

        var within = LimitWriter.Clauses(request.Limits).Count > 0 ? " within the limits" : string.Empty;
        return $"No blend of these materials has exactly {request.Wish.Name}{within}: the nearest brings {Say.Percent(Supply(best, request.Wish, nutrient))} of the {symbol} wanted.";
    }

    private static OutOfReach Grade(Kitchen kitchen, Recipe? exact)
    {
        var wish = kitchen.Request.Wish;
        var open = kitchen.For(Kitchen.WithoutDemands(kitchen.Request));
        if (open.Model.Offers.Count == 0 || BlendSearch.NearestToGrade(open.Model.Search) is not { } reached)
        {
            return NoBlend(kitchen, exact);
        }

        var wanted = Wanted.Of(wish);
        var nearest = exact ?? open.Freely(reached.Blend);
        Nutrient? shortest = reached.FallsShort is { } j ? wanted.Nutrients[j] : null;
        var strength = wanted.Held(nearest.Grade);
        var why = exact is null
            ? $"{wish.Name} cannot be reached from these materials, and no blend of them has its ratio exactly; the nearest falls short by {Say.Percent(reached.Shortfall)} on average."
            : $"{wish.Name} needs {Say.Percent(wanted.Sum)} of nutrients by weight; the strongest blend of these materials at that ratio holds {Say.Percent(strength)}.";
        return new OutOfReach(why, nearest, shortest, Shopping.ToBuy(kitchen, nearest.RatioError, strength));
    }

    private static OutOfReach NoBlend(Kitchen kitchen, Recipe? exact)
    {
        var (why, nearest) = Blame.Of(kitchen);
        nearest ??= exact;
        return new OutOfReach(
            why, nearest, nearest is null ? null : FallsShort(nearest, kitchen.Request.Wish), Shopping.ToBuy(kitchen, double.PositiveInfinity, strongest: null));
    }

    private static string NoSteps(MixRequest request) => request.Measuring switch
    {
        Measuring.ByScale { Step.Grams: var step } =>
            $"No blend in whole steps of {Say.Grams(step)} keeps every limit in this batch; in free amounts there is one.",
        _ => "No blend in whole scoops keeps every limit in this batch; in free amounts there is one.",
    };
}
