using Ashery.Materials;
using Ashery.Nutrients;

namespace Ashery.Recipes;

/// <summary>A limit as sum(coefficient_i * mass_i) &lt;= 0.</summary>
/// <param name="Name">The limit in the words it was given in.</param>
/// <param name="Coefficients">One for each offer.</param>
internal sealed record MixRow(string Name, double[] Coefficients)
{
    public bool HasPositive => Array.Exists(Coefficients, static c => c > 0);

    public bool HasNegative => Array.Exists(Coefficients, static c => c < 0);

    /// <summary>The row over the offers kept.</summary>
    public MixRow Keep(bool[] kept)
    {
        var coefficients = new double[Coefficients.Length];
        var count = 0;
        for (var i = 0; i < kept.Length; i++)
        {
            if (kept[i])
            {
                coefficients[count++] = Coefficients[i];
            }
        }

        Array.Resize(ref coefficients, count);
        return this with { Coefficients = coefficients };
    }
}

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
            rows.Add(new MixRow($"cost<={Say.Number(cost)}", Each(offers, o => o.PricePerKg!.Value - (cost * (1 + Slack)))));
        }

        if (limits.Strength is { } strength)
        {
            rows.Add(new MixRow(
                $"strength>={Say.Percent(strength)}",
                Each(offers, o => (strength * (1 - Slack)) - (o.Material.Label[Nutrient.N] + o.Material.Label[Nutrient.P] + o.Material.Label[Nutrient.K]))));
        }

        void AtMost(string name, double? limit, Func<Material, double> part, Func<Material, double> whole, Func<double, string> words)
        {
            if (limit is { } most)
            {
                rows.Add(new MixRow(
                    $"{name}<={words(most)}", Each(offers, o => part(o.Material) - ((most + (Slack * Math.Abs(most))) * whole(o.Material)))));
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
                    $"{symbol}>={Say.Percent(least)}", Each(offers, o => (least * (1 - Slack)) - o.Material.Label[nutrient])));
            }

            if (atMost is { } most)
            {
                rows.Add(new MixRow(
                    $"{symbol}<={Say.Percent(most)}", Each(offers, o => o.Material.Label[nutrient] - (most * (1 + Slack)))));
            }
        }
    }

    private static void PerNitrogen(MixLimits limits, IReadOnlyList<Offer> offers, List<MixRow> rows)
    {
        foreach (var (nutrient, atLeast) in limits.PerNitrogen)
        {
            rows.Add(new MixRow(
                $"{LabelBasis.Symbol(nutrient)} at least {Say.Percent(atLeast)} of N",
                Each(offers, o => (atLeast * (1 - Slack) * o.Material.Label[Nutrient.N]) - o.Material.Label[nutrient])));
        }
    }

    private static void Materials(MixLimits limits, IReadOnlyList<Offer> offers, List<MixRow> rows)
    {
        foreach (var (id, atLeast, atMost) in limits.Materials)
        {
            if (atLeast is { } least and > 0)
            {
                rows.Add(new MixRow(
                    $"material {id}>={Say.Percent(least)}", Each(offers, o => (least * (1 - Slack)) - Is(o, id))));
            }

            if (atMost is { } most)
            {
                rows.Add(new MixRow(
                    $"material {id}<={Say.Percent(most)}", Each(offers, o => Is(o, id) - (most * (1 + Slack)))));
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
                    $"{Say.Grams(stock.Grams)} of {offer.Material.Id} in stock", Each(offers, o => Is(o, offer.Material.Id) - (share * (1 + Slack)))));
            }
        }
    }

    private static void Grade(Wish wish, IReadOnlyList<Offer> offers, List<MixRow> rows)
    {
        if (!wish.IsGrade)
        {
            return;
        }

        var wanted = Wanted.Of(wish);
        for (var j = 0; j < wanted.Nutrients.Length; j++)
        {
            var nutrient = wanted.Nutrients[j];
            var least = wanted.Parts[j] * (1 - Slack);
            rows.Add(new MixRow(
                $"at least {Say.Percent(wanted.Parts[j])} {LabelBasis.Symbol(nutrient)}",
                Each(offers, o => least - o.Material.Label[nutrient])));
        }
    }

    private static double[] Each(IReadOnlyList<Offer> offers, Func<Offer, double> coefficient)
    {
        var coefficients = new double[offers.Count];
        for (var i = 0; i < coefficients.Length; i++)
        {
            coefficients[i] = coefficient(offers[i]);
        }

        return coefficients;
    }

    private static double Is(Offer offer, string id) => offer.Material.Id == id ? 1 : 0;
}
