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
        DropUnusable(ref offers, ref rows, leftOut);
        var search = Columns(request, offers, rows) with { ForbiddenPairs = Forbidden(offers, request.Limits.Use, chart) };
        return new MixModel(request, sieved, offers, leftOut, search);
    }

    /// <summary>The sieved offers under rows of the caller's, no pair kept apart.</summary>
    public BlendRequest Open(List<MixRow> rows) => Columns(Request, Sieved, rows);

    private static BlendRequest Columns(MixRequest request, IReadOnlyList<Offer> offers, List<MixRow> rows)
    {
        var wanted = Wanted.Of(request.Wish);
        return new BlendRequest
        {
            Columns = [.. offers.Select(o => new Column(o.Material.Id, wanted.Contents(o.Material.Label), o.PricePerKg))],
            Target = wanted.Parts,
            Rows = [.. rows.Where(static r => r.HasPositive).Select(static r => new LinearRow(r.Name, r.Coefficients))],
            AtMost = request.AtMost,
            Best = request.Best,
        };
    }

    // A row without a negative coefficient forbids every material that has a positive one.
    private static void DropUnusable(ref List<Offer> offers, ref List<MixRow> rows, List<LeftOut> leftOut)
    {
        while (rows.Find(static r => r.HasPositive && !r.HasNegative) is { } row)
        {
            var kept = Array.ConvertAll(row.Coefficients, static c => c <= 0);
            var rest = new List<Offer>();
            for (var i = 0; i < kept.Length; i++)
            {
                if (kept[i])
                {
                    rest.Add(offers[i]);
                }
                else
                {
                    leftOut.Add(new LeftOut(offers[i], row.Name));
                }
            }

            offers = rest;
            rows = [.. rows.Select(r => r.Keep(kept))];
        }
    }

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
