using Ashery.Blending;
using Ashery.Compatibility;
using Ashery.Materials;
using Ashery.Nutrients;

namespace Ashery.Recipes;

/// <summary>Recipes found, best first.</summary>
internal sealed record Found(IReadOnlyList<Recipe> Recipes, bool Proved, double Gap);

/// <summary>Turns what the searches find for one model into recipes: weighed, measured, ranked.</summary>
internal sealed class Kitchen(MixModel model, CompatibilityChart chart)
{
    /// <summary>A batch when none was asked for, g.</summary>
    private const double OneKilogram = 1000;

    public MixModel Model { get; } = model;

    public CompatibilityChart Chart { get; } = chart;

    public MixRequest Request => Model.Request;

    /// <summary>A kitchen for the same request with other limits, count or number of blends.</summary>
    public Kitchen For(MixRequest request) => new(MixModel.Build(request, Chart), Chart);

    /// <summary>The best blends as they will be measured out; pass what the free search found if it was run.</summary>
    public Found Measured(BlendAnswer? free = null)
    {
        if (Model.Offers.Count == 0)
        {
            return new Found([], Proved: true, Gap: 0);
        }

        if (Request.Measuring is not Measuring.Freely)
        {
            return WholeSteps.Find(this, Model.Search);
        }

        free ??= BlendSearch.Find(Model.Search);
        return LikelySpread.Rank(this, new Found([.. free.Blends.Select(Freely)], free.Proved, Gap: 0), free.Blends);
    }

    /// <summary>The best blend in any amounts; null when there is none.</summary>
    public Recipe? Best() =>
        Model.Offers.Count > 0 && BlendSearch.Find(Model.Search with { Best = 1 }) is { Blends: [var blend, ..] } ? Freely(blend) : null;

    /// <summary>A blend in any amounts: the largest batch of the window that the stock allows.</summary>
    public Recipe Freely(Blend blend)
    {
        var batch = Request.Batch?.To.Grams ?? OneKilogram;
        if (Request.Batch is not null)
        {
            for (var k = 0; k < blend.Members.Count; k++)
            {
                if (Model.Offers[blend.Members[k]].Stock is { } stock)
                {
                    batch = Math.Min(batch, stock.Grams / blend.MassFractions[k]);
                }
            }
        }

        return Make(blend, batch, null);
    }

    /// <summary>A blend of so many grams, with scoops where they are counted.</summary>
    public Recipe Make(Blend blend, double grams, IReadOnlyList<int>? scoops)
    {
        var amounts = new PartAmount[blend.Members.Count];
        for (var k = 0; k < amounts.Length; k++)
        {
            amounts[k] = new PartAmount(Model.Offers[blend.Members[k]], blend.MassFractions[k] * grams, scoops?[k]);
        }

        return RecipeMaker.Make(amounts, Request.Wish, Request.Limits.Use, Chart);
    }

    /// <summary>The strongest blend at exactly the ratio, whatever grade or strength was wanted; null when none has it.</summary>
    public Recipe? StrongestAtRatio()
    {
        var request = WithoutDemands(Request);
        var open = ReferenceEquals(request, Request) ? this : For(request);
        return open.Model.Offers.Count > 0 && BlendSearch.StrongestAtRatio(open.Model.Search) is { } blend ? open.Freely(blend) : null;
    }

    /// <summary>The request without what asks for strength: the grade as a ratio, and no least strength.</summary>
    public static MixRequest WithoutDemands(MixRequest request) =>
        request.Wish.IsGrade || request.Limits.Strength is not null
            ? request with { Wish = AsRatio(request.Wish), Limits = request.Limits with { Strength = null } }
            : request;

    // A zero in a grade asks for nothing; in a ratio it would forbid the nutrient.
    private static Wish AsRatio(Wish wish) => wish.IsGrade
        ? wish with { IsGrade = false, Shares = Above(wish) }
        : wish;

    private static Dictionary<Nutrient, double> Above(Wish wish)
    {
        var wanted = Wanted.Of(wish);
        var shares = new Dictionary<Nutrient, double>();
        for (var j = 0; j < wanted.Nutrients.Length; j++)
        {
            shares[wanted.Nutrients[j]] = wanted.Parts[j];
        }

        return shares;
    }
}
