using Ashery.Quantities;
using Ashery.Recipes;
using static Ashery.Tests.Recipes.Shelf;

namespace Ashery.Tests.Recipes;

/// <summary>
/// Values worked out by hand for 17:5:24 (three equations in three unknowns each): the check for these comes from paper,
/// not from the program.
/// </summary>
public class HandCheckedBlends
{
    private static readonly MixRequest Request = new() { Wish = Wish("17:5:24"), Offers = Three };

    [Fact]
    public void Three_straights_have_one_exact_blend_at_17_5_24()
    {
        var answer = Mix(Request);
        var best = answer.Blends[0];
        Assert.True(answer.Proved);
        Assert.Null(answer.OutOfReach);
        Assert.Equal(0.57576, Share(best, "ammonium-sulfate"), 0.000005);
        Assert.Equal(0.06188, Share(best, "map-granular"), 0.000005);
        Assert.Equal(0.36236, Share(best, "potassium-sulfate"), 0.000005);
        AssertGrade(12.834, 3.775, 18.118, best, 0.0005);
        Assert.Equal(0, best.RatioError, 1e-9);
        AssertGrade(12.834, 3.775, 18.118, answer.AtExactRatio!, 0.0005);
    }

    [Fact]
    public void The_grade_17_5_24_is_out_of_reach_and_the_strongest_at_the_ratio_is_named()
    {
        var answer = Mix(Request with { Wish = Wish("17-5-24") });
        Assert.Empty(answer.Blends);
        Assert.NotNull(answer.OutOfReach);
        Assert.Contains("46 %", answer.OutOfReach.Why, StringComparison.Ordinal);
        Assert.Contains("34.73 %", answer.OutOfReach.Why, StringComparison.Ordinal);
        AssertGrade(12.834, 3.775, 18.118, answer.OutOfReach.Nearest!, 0.0005);
        AssertGrade(12.834, 3.775, 18.118, answer.AtExactRatio!, 0.0005);
        Assert.Equal(Nutrients.Nutrient.N, answer.OutOfReach.FallsShort);
        Assert.Equal("urea", answer.OutOfReach.ToBuy?.MaterialId);
    }

    [Fact]
    public void Fifteen_grams_in_whole_grams_are_8_1_6()
    {
        var best = Mix(Request with { Batch = Batch("15g"), Measuring = new Measuring.ByScale(new Mass(1)) }).Blends[0];
        Assert.Equal(8, Grams(best, "ammonium-sulfate"), 1e-9);
        Assert.Equal(1, Grams(best, "map-granular"), 1e-9);
        Assert.Equal(6, Grams(best, "potassium-sulfate"), 1e-9);
        AssertGrade(12.0, 4.07, 20.0, best, 0.005);
    }

    [Fact]
    public void Fifteen_grams_of_six_materials_at_most_four_are_9_1_1_4()
    {
        var answer = Mix(Request with { Offers = Six, AtMost = 4, Batch = Batch("15g"), Measuring = new Measuring.ByScale(new Mass(1)) });
        var best = answer.Blends[0];
        Assert.Equal(9, Grams(best, "ammonium-sulfate"), 1e-9);
        Assert.Equal(1, Grams(best, "map-granular"), 1e-9);
        Assert.Equal(1, Grams(best, "potassium-sulfate"), 1e-9);
        Assert.Equal(4, Grams(best, "potassium-chloride"), 1e-9);
        Assert.Equal(0.0128, best.RatioError, 0.00005);
    }

    [Fact]
    public void Up_to_fifteen_grams_eight_grams_come_nearest()
    {
        var best = Mix(Request with { Offers = Six, AtMost = 4, Batch = Batch("1g..15g"), Measuring = new Measuring.ByScale(new Mass(1)) }).Blends[0];
        Assert.Equal(3, Grams(best, "urea"), 1e-9);
        Assert.Equal(2, Grams(best, "potassium-sulfate"), 1e-9);
        Assert.Equal(2, Grams(best, "potassium-chloride"), 1e-9);
        Assert.Equal(1, Grams(best, "dap-granular"), 1e-9);
        Assert.Equal(0.0013, best.RatioError, 0.00005);
    }

    [Fact]
    public void The_strongest_of_six_is_20_6_29_and_without_chloride_19_5_26()
    {
        var strongest = Mix(Request with { Offers = Six }).AtExactRatio!;
        AssertGrade(20.478, 6.023, 28.910, strongest, 0.0005);
        Assert.Equal(0.09874, Share(strongest, "map-granular"), 0.000005);
        Assert.Equal(0.41942, Share(strongest, "urea"), 0.000005);
        Assert.Equal(0.48184, Share(strongest, "potassium-chloride"), 0.000005);

        // 47.55 % Cl in the pure salt gives the hand-checked 22.9 %; the catalogue's bag holds 47.0.
        var perCl = Six[^1].Material.Label.Percent(Nutrients.Nutrient.Cl) / 47.55;
        Assert.Equal(22.9 * perCl, strongest.Grade.Percent(Nutrients.Nutrient.Cl), 0.05);

        // Chloride-free by hand means without the chloride; a bag of potassium sulfate holds a trace.
        var chlorideFree = Mix(Request with { Offers = Six, Limits = Limits("without potassium-chloride") }).AtExactRatio!;
        AssertGrade(18.678, 5.494, 26.369, chlorideFree, 0.0005);
        Assert.True(chlorideFree.Grade[Nutrients.Nutrient.Cl] < WarningThresholds.Chloride);
    }

    // Common practice, no source: 8, 1 and 6 parts by weight, and 40 + 5 + 30 g of the same.
    [Theory]
    [InlineData(8, 1, 6, 15)]
    [InlineData(40, 5, 30, 75)]
    public void Eight_one_and_six_parts_make_12_4_20(double sulfate, double map, double potash, double batch)
    {
        var recipe = RecipeByParts.Weighed([(Three[0], sulfate), (Three[1], map), (Three[2], potash)]).Value!;
        Assert.Equal(batch, recipe.BatchGrams, 1e-9);
        AssertGrade(12.0, 4.07, 20.0, recipe, 0.005);
    }
}
