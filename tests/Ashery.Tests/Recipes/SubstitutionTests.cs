using Ashery.Nutrients;
using Ashery.Recipes;
using static Ashery.Tests.Recipes.Shelf;

namespace Ashery.Tests.Recipes;

public class SubstitutionTests
{
    // School textbook, Calculating Agriculture, chapter 15 (seen): 80 kg of nitrogen are 380.95 kg of ammonium sulfate 21 %.
    // Here they replace the 173.913 kg of urea 46 % with as much nitrogen.
    [Fact]
    public void Urea_replaced_by_ammonium_sulfate_at_equal_nitrogen()
    {
        var grams = Substitution.GramsAtEqualNitrogen(Bag("urea", 46, 0, 0).Material, 80 / 0.46, Bag("ammonium-sulfate", 21, 0, 0).Material);
        Assert.Equal(380.95, grams.Value, 0.01);
    }

    [Fact]
    public void A_recipe_keeps_its_nitrogen_when_a_part_is_replaced()
    {
        var wish = Wish("17:5:24");
        var recipe = Mix(new MixRequest { Wish = wish, Offers = Three }).Blends[0];
        var other = Substitution.AtEqualNitrogen(recipe, "ammonium-sulfate", Bag("urea", 46, 0, 0), wish, BlendUse.DryToday).Value!;
        Assert.Equal(recipe.Grade[Nutrient.N] * recipe.BatchGrams, other.Grade[Nutrient.N] * other.BatchGrams, 1e-9);
        Assert.Equal(Grams(recipe, "map-granular"), Grams(other, "map-granular"), 1e-9);
        Assert.Equal(0, Grams(other, "ammonium-sulfate"));
        Assert.Equal(0, other.RatioError, 1e-9);
    }

    [Fact]
    public void A_part_already_there_takes_both_amounts()
    {
        var wish = Wish("17:5:24");
        var recipe = RecipeByParts.Weighed([(Six[3], 10), (Six[0], 10), (Six[2], 10)], wish).Value!;
        var other = Substitution.AtEqualNitrogen(recipe, "urea", Six[0], wish, BlendUse.DryToday).Value!;
        Assert.Equal(10 + (10 * 46 / 21.0), Grams(other, "ammonium-sulfate"), 1e-9);
    }

    [Fact]
    public void What_changes_with_it_is_said()
    {
        var notes = Substitution.GramsAtEqualNitrogen(Bag("urea", 46, 0, 0).Material, 100, Bag("dap-granular", 18, 46, 0).Material).Problems;
        Assert.Contains(notes, n => n.Message.Contains("More P2O5", StringComparison.Ordinal));
        notes = Substitution.GramsAtEqualNitrogen(Bag("urea", 46, 0, 0).Material, 100, Bag("neem-cake").Material).Problems;
        Assert.Contains(notes, n => n.Message.Contains("slowly", StringComparison.Ordinal));
    }

    [Fact]
    public void Without_nitrogen_there_is_nothing_to_replace_by()
    {
        Assert.False(Substitution.GramsAtEqualNitrogen(Bag("potassium-sulfate").Material, 10, Bag("urea").Material).Ok);
        Assert.False(Substitution.GramsAtEqualNitrogen(Bag("urea").Material, 10, Bag("potassium-sulfate").Material).Ok);
        var recipe = RecipeByParts.Weighed([(Six[3], 10)]).Value!;
        Assert.Contains("not in the recipe", Substitution.AtEqualNitrogen(recipe, "gypsum", Six[0], Wish("1:0:0"), BlendUse.DryToday).Problems[0].Message, StringComparison.Ordinal);
    }
}
