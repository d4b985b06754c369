using Ashery.Materials;
using Ashery.Nutrients;

namespace Ashery.Recipes;

/// <summary>A limit as sum(coefficient_i * mass_i) &lt;= 0.</summary>
/// <param name="Name">The limit in the words it was given in.</param>
/// <param name="Coefficients">One for each offer.</param>
internal sealed record MixRow(string Name, List<double> Coefficients);

/// <summary>
/// Limits as homogeneous rows over the masses of the materials. "At most f of the blend" reads
/// sum(a_i m_i) &lt;= f sum(m_i), that is sum((a_i - f) m_i) &lt;= 0; "at least" turns the sign.
/// </summary>
internal static class MixRows
{
    /// <summary>A grade of exactly 12.0 must not fail a wish for 12 by the last binary digit.</summary>
    private const double Slack = 1e-9;

    public static List<MixRow> Of(MixRequest request, IReadOnlyList<Offer> offers)
    {
        var rows = new List<MixRow>();
        Shares(request.Limits, offers, rows);
        Contents(request.Limits, offers, rows);
        PerNitrogen(request.Limits, offers, rows);
        Materials(request.Limits, offers, rows);
        Stock(request, offers, rows);
        Grade(request.Wish, offers, rows);
        return rows;
    }

    private static void Shares(MixLimits limits, IReadOnlyList<Offer> offers, List<MixRow> rows)
    {
        AtMost("urea", limits.UreaShareOfNitrogen, static m => m.Nitrogen.Urea, static m => m.Label[Nutrient.N], Say.Percent);
        AtMost(
            "ammoniacal",
            limits.AmmoniacalShareOfNitrogen,
            static m => m.Nitrogen.Ammonium + m.Nitrogen.Urea,
            static m => m.Label[Nutrient.N],
            Say.Percent);
        AtMost("chloride", limits.Chloride, static m => m.Label[Nutrient.Cl], static _ => 1, Say.Percent);
        AtMost("salt-index", limits.SaltIndex, static m => m.SaltIndex!.Value, static _ => 1, Say.Number);
        AtMost("acidity", limits.Acidity, static m => m.LimeEquivalent!.Value, static _ => 1, Say.Number);
        if (limits.CostPerKg is { } cost)
        {
            rows.Add(new MixRow($"cost<={Say.Number(cost)}", [.. offers.Select(o => o.PricePerKg!.Value - (cost * (1 + Slack)))]));
        }

        if (limits.Strength is { } strength)
        {
            rows.Add(new MixRow(
                $"strength>={Say.Percent(strength)}",
                [.. offers.Select(o => (strength * (1 - Slack)) - (o.Material.Label[Nutrient.N] + o.Material.Label[Nutrient.P] + o.Material.Label[Nutrient.K]))]));
        }

        void AtMost(string name, double? limit, Func<Material, double> part, Func<Material, double> whole, Func<double, string> words)
        {
            if (limit is { } most)
            {
                rows.Add(new MixRow(
                    $"{name}<={words(most)}", [.. offers.Select(o => part(o.Material) - ((most + (Slack * Math.Abs(most))) * whole(o.Material)))]));
            }
        }
    }

    private static void Contents(MixLimits limits, IReadOnlyList<Offer> offers, List<MixRow> rows)
    {
        foreach (var (nutrient, atLeast, atMost) in limits.Contents)
        {
            var symbol = LabelBasis.Symbol(nutrient);
            if (atLeast is { } least)
            {
                rows.Add(new MixRow(
                    $"{symbol}>={Say.Percent(least)}", [.. offers.Select(o => (least * (1 - Slack)) - o.Material.Label[nutrient])]));
            }

            if (atMost is { } most)
            {
                rows.Add(new MixRow(
                    $"{symbol}<={Say.Percent(most)}", [.. offers.Select(o => o.Material.Label[nutrient] - (most * (1 + Slack)))]));
            }
        }
    }

    private static void PerNitrogen(MixLimits limits, IReadOnlyList<Offer> offers, List<MixRow> rows)
    {
        foreach (var (nutrient, atLeast) in limits.PerNitrogen)
        {
            rows.Add(new MixRow(
                $"{LabelBasis.Symbol(nutrient)} at least {Say.Percent(atLeast)} of N",
                [.. offers.Select(o => (atLeast * (1 - Slack) * o.Material.Label[Nutrient.N]) - o.Material.Label[nutrient])]));
        }
    }

    private static void Materials(MixLimits limits, IReadOnlyList<Offer> offers, List<MixRow> rows)
    {
        foreach (var (id, atLeast, atMost) in limits.Materials)
        {
            if (atLeast is { } least and > 0)
            {
                rows.Add(new MixRow(
                    $"material {id}>={Say.Percent(least)}", [.. offers.Select(o => (least * (1 - Slack)) - Is(o, id))]));
            }

            if (atMost is { } most)
            {
                rows.Add(new MixRow(
                    $"material {id}<={Say.Percent(most)}", [.. offers.Select(o => Is(o, id) - (most * (1 + Slack)))]));
            }
        }
    }

    // The smallest batch of the window must be possible from what is in stock.
    private static void Stock(MixRequest request, IReadOnlyList<Offer> offers, List<MixRow> rows)
    {
        if (request.Batch is not { } batch)
        {
            return;
        }

        foreach (var offer in offers)
        {
            if (offer.Stock is { } stock && stock.Grams < batch.From.Grams)
            {
                var share = stock.Grams / batch.From.Grams;
                rows.Add(new MixRow(
                    $"{Say.Grams(stock.Grams)} of {offer.Material.Id} in stock", [.. offers.Select(o => Is(o, offer.Material.Id) - (share * (1 + Slack)))]));
            }
        }
    }

    private static void Grade(Wish wish, IReadOnlyList<Offer> offers, List<MixRow> rows)
    {
        if (!wish.IsGrade)
        {
            return;
        }

        foreach (var nutrient in MixModel.Wanted(wish))
        {
            var least = wish.Shares[nutrient] * (1 - Slack);
            rows.Add(new MixRow(
                $"at least {Say.Percent(wish.Shares[nutrient])} {LabelBasis.Symbol(nutrient)}",
                [.. offers.Select(o => least - o.Material.Label[nutrient])]));
        }
    }

    private static double Is(Offer offer, string id) => offer.Material.Id == id ? 1 : 0;
}
