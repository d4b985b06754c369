using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Problems;
using Ashery.Quantities;
using Ashery.Recipes;
using static Ashery.Tests.Recipes.Shelf;

namespace Ashery.Tests.Recipes;

public class ReachTests
{
    private static readonly Wish Ratio = Wish("17:5:24");

    [Fact]
    public void A_missing_nutrient_is_out_of_reach_and_named_with_what_to_buy()
    {
        var answer = Mix(new MixRequest { Wish = Ratio, Offers = [Three[0], Three[1]] });
        Assert.NotNull(answer.OutOfReach);
        Assert.Equal(Nutrient.K, answer.OutOfReach.FallsShort);
        Assert.Contains("none of these materials holds any", answer.OutOfReach.Why, StringComparison.Ordinal);
        Assert.NotNull(answer.OutOfReach.ToBuy);
        Assert.Equal(0, answer.OutOfReach.ToBuy.RemainingError, 1e-9);
        Assert.True(MaterialCatalogue.Default.Find(answer.OutOfReach.ToBuy.MaterialId)!.Label[Nutrient.K] > 0);
        Assert.NotEmpty(answer.Blends);
    }

    [Fact]
    public void A_ratio_missed_by_a_little_is_an_answer_with_a_note()
    {
        // Neem cake, bone meal and potassium sulfate at 3:2:4 with at most two of them.
        var answer = Mix(new MixRequest { Wish = Wish("3:2:4"), Offers = [Bag("ammonium-sulfate"), Bag("mkp"), Bag("tsp")], Shop = [] });
        Assert.Null(answer.OutOfReach);
        Assert.NotEmpty(answer.Blends);
        Assert.NotNull(answer.NearMiss);
        Assert.Equal(Nutrient.K, answer.NearMiss.FallsShort);
        Assert.Contains(answer.Problems, p => p.Field == "ratio" && p.Severity is Severity.Note);
        Assert.Null(answer.AtExactRatio);
    }

    [Fact]
    public void The_certificate_bounds_the_best_error_from_below_and_meets_it()
    {
        var answer = Mix(new MixRequest { Wish = Wish("3:2:4"), Offers = [Bag("ammonium-sulfate"), Bag("mkp"), Bag("tsp")], Shop = [] });
        Assert.True(answer.Blends[0].RatioError > 0.01);
        Assert.Equal(answer.Blends[0].RatioError, (double)answer.CertificateBound!.Value, 1e-6);

        var limited = Mix(new MixRequest { Wish = Ratio, Offers = Six, Limits = Limits("urea<=10%; material potassium-sulfate<=10%; chloride<=5%"), Shop = [] });
        Assert.Equal(limited.Certificate!.RowDuals.Count, limited.CertificateRows.Count);
        Assert.True((double)limited.CertificateBound!.Value <= limited.Blends[0].RatioError + 1e-9);
        Assert.Equal(limited.Blends[0].RatioError, (double)limited.CertificateBound.Value, 1e-6);
    }

    [Fact]
    public void A_limit_that_leaves_nothing_is_named()
    {
        var answer = Mix(new MixRequest { Wish = Ratio, Offers = Three, Limits = Limits("acidity<=-0.5; chloride<=5%"), Shop = [] });
        Assert.Empty(answer.Blends);
        Assert.Contains("acidity<=-0.5", answer.OutOfReach!.Why, StringComparison.Ordinal);
        Assert.DoesNotContain("chloride", answer.OutOfReach.Why, StringComparison.Ordinal);
        Assert.NotNull(answer.OutOfReach.Nearest);
    }

    [Fact]
    public void Organic_only_with_none_organic_leaves_all_out_and_says_so()
    {
        var answer = Mix(new MixRequest { Wish = Ratio, Offers = Three, Limits = Limits("organic-only"), Shop = [] });
        Assert.Empty(answer.Blends);
        Assert.Equal(3, answer.LeftOut.Count);
        Assert.All(answer.LeftOut, l => Assert.Equal("organic-only", l.Reason));
        Assert.Contains("organic-only", answer.OutOfReach!.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wanted_zero_keeps_the_nutrient_out()
    {
        var answer = Mix(new MixRequest { Wish = Wish("1:0:1"), Offers = Six });
        Assert.All(answer.Blends, b => Assert.Equal(0, b.Grade[Nutrient.P]));
        Assert.Equal(0, answer.Blends[0].RatioError, 1e-9);
        Assert.Contains(answer.LeftOut, l => l.MaterialId == "dap-granular" && l.Reason == "P2O5 wanted as 0");
    }

    [Fact]
    public void A_grade_in_reach_is_reached_at_least()
    {
        var answer = Mix(new MixRequest { Wish = Wish("12-3-17"), Offers = Three });
        Assert.Null(answer.OutOfReach);
        Assert.All(answer.Blends, b =>
        {
            Assert.True(b.Grade[Nutrient.N] >= 0.12 - 1e-8);
            Assert.True(b.Grade[Nutrient.P] >= 0.03 - 1e-8);
            Assert.True(b.Grade[Nutrient.K] >= 0.17 - 1e-8);
        });
    }

    [Fact]
    public void Stock_limits_the_batch_and_the_choice()
    {
        Offer[] offers = [Three[0] with { Stock = new Mass(40) }, Three[1], Three[2], Bag("urea", 46, 0, 0)];
        var answer = Mix(new MixRequest { Wish = Ratio, Offers = offers, Batch = Batch("100g") });
        Assert.NotEmpty(answer.Blends);
        Assert.All(answer.Blends, b => Assert.True(Grams(b, "ammonium-sulfate") <= 40 + 1e-6));
        var window = Mix(new MixRequest { Wish = Ratio, Offers = [.. offers.Take(3)], Batch = Batch("50g..100g") }).Blends[0];
        Assert.Equal(40 / 0.57576, window.BatchGrams, 0.01);
    }

    [Fact]
    public void An_empty_bag_is_left_out()
    {
        var answer = Mix(new MixRequest { Wish = Ratio, Offers = [.. Three, Bag("urea", stock: 0)], Shop = [] });
        Assert.Contains(answer.LeftOut, l => l is { MaterialId: "urea", Reason: "none in stock" });
    }

    [Fact]
    public void A_missing_price_makes_the_cost_unknown_never_zero()
    {
        Offer[] offers = [Three[0] with { PricePerKg = 1 }, Three[1] with { PricePerKg = 2 }, Three[2]];
        var best = Mix(new MixRequest { Wish = Ratio, Offers = offers }).Blends[0];
        Assert.Null(best.CostPerKg);
        Assert.Contains(best.Notes, n => n.Field == "cost" && n.Message.Contains(offers[2].Material.Name, StringComparison.Ordinal));
        offers[2] = offers[2] with { PricePerKg = 3 };
        best = Mix(new MixRequest { Wish = Ratio, Offers = offers }).Blends[0];
        Assert.Equal((0.57576 * 1) + (0.06188 * 2) + (0.36236 * 3), best.CostPerKg!.Value, 0.0001);
    }
}
