using Ashery.Materials;
using Ashery.Nutrients;

namespace Ashery.Recipes;

/// <summary>Sets aside offers that a limit rules out whatever the blend.</summary>
internal static class OfferSieve
{
    /// <summary>Why it cannot be used, in the words of the limit; null when it can.</summary>
    public static string? Reason(Offer offer, MixRequest request)
    {
        var material = offer.Material;
        var limits = request.Limits;
        if (limits.Without.Contains(material.Id))
        {
            return $"without {material.Id}";
        }

        if (limits.OrganicOnly && !material.IsOrganic)
        {
            return "organic-only";
        }

        if (limits.SolubleOnly && !material.Dissolves)
        {
            return "soluble-only";
        }

        if (offer.Stock is { Grams: <= 0 })
        {
            return "none in stock";
        }

        if (WantedAbsent(request.Wish, material) is { } absent)
        {
            return $"{LabelBasis.Symbol(absent)} wanted as 0";
        }

        // A limit on a figure that nobody published for this material cannot be kept with certainty.
        if (limits.SaltIndex is not null && material.SaltIndex is null)
        {
            return "salt-index limit, and its salt index is unknown";
        }

        if (limits.Acidity is not null && material.LimeEquivalent is null)
        {
            return "acidity limit, and its lime equivalent is unknown";
        }

        if (limits.CostPerKg is not null && offer.PricePerKg is null)
        {
            return "cost limit, and its price is unknown";
        }

        if (request.Measuring is Measuring.ByScoop scoop && ScoopMass.Of(scoop.Scoop, material) is null)
        {
            return "measured by scoop, and nobody knows what a scoop of it weighs";
        }

        return null;
    }

    // A zero for N, P or K in a ratio means none of it.
    private static Nutrient? WantedAbsent(Wish wish, Material material)
    {
        if (!wish.IsGrade)
        {
            for (var nutrient = Nutrient.N; nutrient <= Nutrient.K; nutrient++)
            {
                if (wish.Shares.TryGetValue(nutrient, out var share) && share <= 0 && material.Label[nutrient] > 0)
                {
                    return nutrient;
                }
            }
        }

        return null;
    }
}
