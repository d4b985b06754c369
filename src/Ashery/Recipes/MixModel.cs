using Ashery.Blending;
using Ashery.Compatibility;
using Ashery.Materials;
using Ashery.Nutrients;

namespace Ashery.Recipes;

/// <summary>A wish, offers and limits as columns, rows and forbidden pairs.</summary>
internal sealed class MixModel
{
    private MixModel(MixRequest request, IReadOnlyList<Offer> sieved, IReadOnlyList<Offer> offers, IReadOnlyList<LeftOut> leftOut, BlendRequest search)
    {
        Request = request;
        Sieved = sieved;
        Offers = offers;
        LeftOut = leftOut;
        Search = search;
    }

    public MixRequest Request { get; }

    /// <summary>Offers that no limit rules out by what they are; rows may rule out more.</summary>
    public IReadOnlyList<Offer> Sieved { get; }

    /// <summary>Offers in the order of the columns.</summary>
    public IReadOnlyList<Offer> Offers { get; }

    /// <summary>Offers that no blend within the limits can use, and why.</summary>
    public IReadOnlyList<LeftOut> LeftOut { get; }

    public BlendRequest Search { get; }

    /// <summary>Nutrients wanted above zero, in column order.</summary>
    public static IReadOnlyList<Nutrient> Wanted(Wish wish) =>
        [.. wish.Shares.Where(static s => s.Value > 0).Select(static s => s.Key).Order()];

    public static MixModel Build(MixRequest request, CompatibilityChart chart)
    {
        var leftOut = new List<LeftOut>();
        var offers = new List<Offer>();
        foreach (var offer in request.Offers)
        {
            if (OfferSieve.Reason(offer, request) is { } reason)
            {
                leftOut.Add(new LeftOut(offer, reason));
            }
            else
            {
                offers.Add(offer);
            }
        }

        IReadOnlyList<Offer> sieved = [.. offers];
        var rows = MixRows.Of(request, offers);
        DropUnusable(offers, rows, leftOut);
        var search = Columns(request, offers, rows) with { ForbiddenPairs = Forbidden(offers, request.Limits.Use, chart) };
        return new MixModel(request, sieved, offers, leftOut, search);
    }

    /// <summary>The sieved offers under rows of the caller's, no pair kept apart.</summary>
    public BlendRequest Open(List<MixRow> rows) => Columns(Request, Sieved, rows);

    private static BlendRequest Columns(MixRequest request, IReadOnlyList<Offer> offers, List<MixRow> rows)
    {
        var wanted = Wanted(request.Wish);
        return new BlendRequest
        {
            Columns = [.. offers.Select(o => new Column(o.Material.Id, [.. wanted.Select(n => o.Material.Label[n])], o.PricePerKg))],
            Target = [.. wanted.Select(n => request.Wish.Shares[n])],
            Rows = [.. rows.Where(static r => Matters(r)).Select(static r => new LinearRow(r.Name, r.Coefficients))],
            AtMost = request.AtMost,
            Best = request.Best,
        };
    }

    // A row without a negative coefficient forbids every material that has a positive one.
    private static void DropUnusable(List<Offer> offers, List<MixRow> rows, List<LeftOut> leftOut)
    {
        for (var again = true; again;)
        {
            again = false;
            foreach (var row in rows)
            {
                if (row.Coefficients.Exists(static c => c < 0))
                {
                    continue;
                }

                for (var i = offers.Count - 1; i >= 0; i--)
                {
                    if (row.Coefficients[i] > 0)
                    {
                        leftOut.Add(new LeftOut(offers[i], row.Name));
                        offers.RemoveAt(i);
                        rows.ForEach(r => r.Coefficients.RemoveAt(i));
                        again = true;
                    }
                }
            }
        }
    }

    private static bool Matters(MixRow row) => row.Coefficients.Exists(static c => c > 0);

    private static List<(int A, int B)> Forbidden(List<Offer> offers, BlendUse use, CompatibilityChart chart)
    {
        var pairs = new List<(int A, int B)>();
        for (var a = 0; a < offers.Count; a++)
        {
            for (var b = a + 1; b < offers.Count; b++)
            {
                if (PairRule.Forbids(offers[a].Material, offers[b].Material, use, chart))
                {
                    pairs.Add((a, b));
                }
            }
        }

        return pairs;
    }
}

/// <summary>An offer that no blend within the limits can use.</summary>
internal sealed record LeftOut(Offer Offer, string Reason);
