using Ashery.Nutrients;
using Ashery.Recipes;

namespace Ashery.Exchange.Mix;

/// <summary>What stands in the way of a wish.</summary>
/// <param name="Why">In a sentence.</param>
/// <param name="Nearest">The nearest blend; null when nothing can be mixed at all.</param>
/// <param name="FallsShort">The nutrient that falls short most, by label symbol; null when it is not a nutrient.</param>
/// <param name="ToBuy">The one material that closes the gap best; null when none does.</param>
public sealed record OutOfReachJson(string Why, BlendJson? Nearest, string? FallsShort, ToBuyJson? ToBuy)
{
    public static OutOfReachJson? From(OutOfReach? reach) => reach is null
        ? null
        : new(
            reach.Why,
            reach.Nearest is { } nearest ? BlendJson.From(nearest) : null,
            reach.FallsShort is { } nutrient ? LabelBasis.Symbol(nutrient) : null,
            reach.ToBuy is { } buy ? new ToBuyJson(buy.MaterialId, buy.Name, buy.RemainingError, buy.Strength * 100) : null);
}

/// <summary>One material to buy.</summary>
/// <param name="Material">Its key.</param>
/// <param name="Name">As a grower says it.</param>
/// <param name="RemainingError">Ratio error that would remain with it, a fraction.</param>
/// <param name="Strength">N + P2O5 + K2O of the strongest blend at the ratio with it, percent; null when the ratio stays out of reach.</param>
public sealed record ToBuyJson(string Material, string Name, double RemainingError, double? Strength);

/// <summary>
/// Multipliers that bound the error of every blend of the materials from below. They can be checked in decimal arithmetic:
/// the blend's equations and the test are in docs/science/recipes.md.
/// </summary>
/// <param name="Nutrients">Multiplier of each wanted nutrient's deviation, by label symbol.</param>
/// <param name="Share">Multiplier of the row that shares sum to one.</param>
/// <param name="Rows">Multipliers of the limits, by the limit's words.</param>
/// <param name="Bound">The lower bound on the ratio error that they prove, a fraction; null when they prove none.</param>
public sealed record CertificateJson(
    IReadOnlyDictionary<string, double> Nutrients, double Share, IReadOnlyDictionary<string, double> Rows, double? Bound)
{
    public static CertificateJson? From(MixAnswer answer)
    {
        if (answer.Certificate is not { } certificate)
        {
            return null;
        }

        var duals = new Dictionary<string, double>(StringComparer.Ordinal);
        for (var nutrient = Nutrient.N; nutrient <= Nutrient.Na; nutrient++)
        {
            if (answer.Wish.Shares.TryGetValue(nutrient, out var share) && share > 0)
            {
                duals[LabelBasis.Symbol(nutrient)] = certificate.NutrientDuals[duals.Count];
            }
        }

        var rows = new Dictionary<string, double>(StringComparer.Ordinal);
        for (var r = 0; r < certificate.RowDuals.Count; r++)
        {
            rows[answer.CertificateRows[r]] = certificate.RowDuals[r];
        }

        return new(duals, certificate.ShareDual, rows, (double?)answer.CertificateBound);
    }
}
