using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Quantities;
using Ashery.Recipes;
using static Ashery.Tests.Recipes.Shelf;

namespace Ashery.Tests.Recipes;

/// <summary>What growers do; no publication stands behind these figures.</summary>
public class CommonPractice
{
    private static readonly Scoop Teaspoon = new("5mL", Volume.FromMillilitres(5), new Dictionary<string, Spread>());

    [Fact]
    public void A_full_teaspoon_is_about_five_grams() =>
        Assert.InRange(RecipeByParts.Scooped([(Bag("ammonium-sulfate"), 1)], Teaspoon).Value!.BatchGrams, 4, 6);

    [Fact]
    public void Four_neem_one_bone_two_vermicompost_one_seaweed()
    {
        var recipe = RecipeByParts.Scooped(
            [(Bag("neem-cake"), 4), (Bag("bone-meal-steamed"), 1), (Bag("vermicompost"), 2), (Bag("kelp-meal"), 1)], Teaspoon).Value!;
        Assert.Equal(8, recipe.Parts.Sum(p => p.Scoops));
        Assert.Equal(recipe.BatchGrams / 4, RecipeByParts.GramsOf(recipe, 2)!.Value, 1e-9);
        Assert.True(recipe.Nitrogen.Organic / recipe.Nitrogen.Total > 0.9);
        Assert.Contains("animal-by-product", recipe.CautionIds);
        Assert.Equal("label-first", recipe.CautionIds[0]);

        // Within what such meals hold; the exact grade hangs on the bags.
        Assert.InRange(recipe.Grade.Percent(Nutrient.N), 0.5, 5);
        Assert.InRange(recipe.Grade.Percent(Nutrient.P), 1, 10);
        Assert.InRange(recipe.Grade.Percent(Nutrient.K), 0.3, 4);
    }

    [Fact]
    public void Ten_scoops_weighed_by_the_grower_come_before_the_bulk_density()
    {
        var weighed = Teaspoon with { Calibrations = new Dictionary<string, Spread> { ["neem-cake"] = new(2.0, 2.2, 2.4) } };
        Assert.Equal(8.8, RecipeByParts.Scooped([(Bag("neem-cake"), 4)], weighed).Value!.BatchGrams, 1e-9);
    }

    [Fact]
    public void A_material_nobody_can_scoop_is_named()
    {
        var bare = new Offer(Bag("urea").Material with { BulkDensity = null });
        var read = RecipeByParts.Scooped([(bare, 1)], Teaspoon);
        Assert.False(read.Ok);
        Assert.Contains("Weigh ten", read.Problems[0].WayOut, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(1e12)]
    public void An_amount_that_is_none_is_refused(double grams) =>
        Assert.Contains("urea", RecipeByParts.Weighed([(Bag("urea"), grams)]).Problems[0].Field, StringComparison.Ordinal);
}
