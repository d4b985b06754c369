using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Quantities;
using Ashery.Recipes;
using CsCheck;
using static Ashery.Tests.Recipes.Shelf;

namespace Ashery.Tests.Recipes;

/// <summary>Laws that hold for every shelf and every wish.</summary>
public class MixProperties
{
    private static readonly string[] Ids =
    [
        "ammonium-sulfate", "urea", "map-granular", "dap-granular", "mkp", "tsp", "potassium-sulfate", "potassium-chloride", "potassium-nitrate",
        "calcium-nitrate-tetrahydrate", "epsom-salt", "neem-cake", "bone-meal-steamed", "kelp-meal", "gypsum",
    ];

    private static readonly Gen<MixRequest> Requests =
        from ids in Gen.Shuffle(Ids)
        from count in Gen.Int[2, 7]
        from prices in Gen.Double[0.2, 5].Nullable().Array[7]
        from n in Gen.Int[1, 30]
        from p in Gen.Int[1, 30]
        from k in Gen.Int[1, 30]
        from atMost in Gen.Int[1, 4]
        from organicOnly in Gen.Frequency((5, Gen.Const(false)), (1, Gen.Const(true)))
        select new MixRequest
        {
            Wish = new Wish(new Dictionary<Nutrient, double> { [Nutrient.N] = n, [Nutrient.P] = p, [Nutrient.K] = k }, IsGrade: false, "any"),
            Offers = [.. ids.Take(count).Select((id, i) => Bag(id, prices[i]))],
            AtMost = atMost,
            Best = 5,
            Limits = new MixLimits { OrganicOnly = organicOnly },
            Shop = [],
        };

    [Fact]
    public void Mass_and_nutrients_are_conserved() => Requests.Sample(
        request =>
        {
            foreach (var recipe in All(Mix(request)))
            {
                Assert.Equal(recipe.BatchGrams, recipe.Parts.Sum(p => p.Grams), 1e-9 * recipe.BatchGrams);
                Assert.Equal(1, recipe.Parts.Sum(p => p.Share), 1e-9);
                Assert.All(recipe.Parts, p => Assert.True(p.Grams > 0));
                foreach (var nutrient in Enum.GetValues<Nutrient>())
                {
                    var held = recipe.Parts.Sum(p => p.Grams * p.Material.Label[nutrient]);
                    Assert.Equal(held, recipe.Grade[nutrient] * recipe.BatchGrams, 1e-9 * recipe.BatchGrams);
                    Assert.Equal(recipe.Grade[nutrient] * LabelBasis.ElementPerLabel(nutrient), recipe.Elements[nutrient], 1e-12);
                }

                Assert.Equal(recipe.Parts.Sum(p => p.Share * p.Material.Nitrogen.Total), recipe.Nitrogen.Total, 1e-12);
                Assert.Equal(recipe.Parts.Any(p => p.Cost is null), recipe.CostPerKg is null);
            }
        },
        iter: 60);

    [Fact]
    public void Scaling_a_batch_changes_nothing_but_the_grams() => Gen.Select(Requests, Gen.Double[1, 50]).Sample(
        (request, times) =>
        {
            var small = Mix(request with { Batch = new BatchWindow(new Mass(100), new Mass(100)) }).Blends;
            var large = Mix(request with { Batch = new BatchWindow(new Mass(100 * times), new Mass(100 * times)) }).Blends;
            Assert.Equal(small.Count, large.Count);
            for (var i = 0; i < small.Count; i++)
            {
                Assert.Equal(small[i].RatioError, large[i].RatioError, 1e-12);
                Assert.Equal(small[i].Strength, large[i].Strength, 1e-12);
                Assert.Equal(small[i].Parts.Select(p => p.Material.Id), large[i].Parts.Select(p => p.Material.Id));
                Assert.Equal(small[i].Parts.Select(p => p.Grams * times), large[i].Parts.Select(p => p.Grams), (a, b) => Math.Abs(a - b) < 1e-6 * times);
            }
        },
        iter: 40);

    [Fact]
    public void Another_material_never_worsens_the_best() => Requests.Sample(
        request =>
        {
            if (request.Offers.Count < 3)
            {
                return;
            }

            var fewer = Mix(request with { Offers = [.. request.Offers.SkipLast(1)] }).Blends;
            var more = Mix(request).Blends;
            if (fewer.Count > 0)
            {
                Assert.NotEmpty(more);
                Assert.True(more[0].RatioError <= fewer[0].RatioError + 1e-9);
            }
        },
        iter: 60);

    [Fact]
    public void The_order_of_materials_never_matters() => Requests.Sample(
        request =>
        {
            var one = Mix(request);
            var other = Mix(request with { Offers = [.. request.Offers.Reverse()] });
            Assert.Equal(one.Blends.Select(Signature), other.Blends.Select(Signature));
            Assert.Equal(one.AtExactRatio is null ? null : Signature(one.AtExactRatio), other.AtExactRatio is null ? null : Signature(other.AtExactRatio));
            Assert.Equal(one.Trade.Select(Signature).Order(StringComparer.Ordinal), other.Trade.Select(Signature).Order(StringComparer.Ordinal));
        },
        iter: 60);

    [Fact]
    public void Every_limit_is_kept() => Gen.Select(Requests, Gen.Double[0.01, 0.3], Gen.Double[30, 120], Gen.Double[0, 0.6]).Sample(
        (request, chloride, salt, urea) =>
        {
            var limits = new MixLimits { Chloride = chloride, SaltIndex = salt, UreaShareOfNitrogen = urea, Use = BlendUse.DryToday };
            foreach (var recipe in Mix(request with { Limits = limits }).Blends)
            {
                Assert.True(recipe.Grade[Nutrient.Cl] <= chloride + 1e-8);
                Assert.True(recipe.SaltIndex <= salt + 1e-5);
                Assert.True(recipe.Nitrogen.Urea <= (urea * recipe.Grade[Nutrient.N]) + 1e-8);
                Assert.DoesNotContain(recipe.Pairs, p => PairRule.Forbids(p, BlendUse.DryToday));
            }
        },
        iter: 60);

    private static IEnumerable<Recipe> All(MixAnswer answer)
    {
        IEnumerable<Recipe> all = [.. answer.Blends, .. answer.Trade, .. answer.Instead.Values];
        return answer.AtExactRatio is { } exact ? all.Append(exact) : all;
    }

    private static string Signature(Recipe recipe) => string.Join(
        ' ', recipe.Parts.OrderBy(p => p.Material.Id, StringComparer.Ordinal).Select(p => FormattableString.Invariant($"{p.Material.Id} {p.Share:F6}")));
}
