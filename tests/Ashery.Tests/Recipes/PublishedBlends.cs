using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Quantities;
using Ashery.Recipes;
using Ashery.Sources;
using static Ashery.Tests.Recipes.Shelf;

namespace Ashery.Tests.Recipes;

/// <summary>Worked blends that others printed, each with its source. "Seen" means that the text was read when the reference was gathered.</summary>
public class PublishedBlends
{
    private static readonly Offer NitrateOfSoda16 = Bag("sodium-nitrate", 16, 0, 0);
    private static readonly Offer Muriate50 = Bag("potassium-chloride", 0, 0, 50);

    // The old books mixed nitrate of soda with superphosphate to spread it the same day; kept, the acid frees nitrous fumes.
    private static readonly MixLimits SpreadAtOnce = Limits("use=dry-today");

    // Agronomy question-and-answer page on computing a fertiliser grade (seen): per 100 kg DAP 41.3, urea 25.2 (exactly 25.14), KCl 31.7,
    // total 98.2; 19-19-19 is reachable with next to no filler.
    [Fact]
    public void Nineteen_nineteen_nineteen_from_DAP_urea_and_KCl()
    {
        Offer[] offers = [Bag("dap-granular", 18, 46, 0), Bag("urea", 46, 0, 0), Bag("potassium-chloride", 0, 0, 60)];
        var best = Mix(new MixRequest { Wish = Wish("19-19-19"), Offers = offers }).Blends[0];
        var per = 19 / best.Grade.Percent(Nutrient.N);
        Assert.Equal(41.3, 100 * per * Share(best, "dap-granular"), 0.1);
        Assert.Equal(25.2, 100 * per * Share(best, "urea"), 0.1);
        Assert.Equal(31.7, 100 * per * Share(best, "potassium-chloride"), 0.1);
        Assert.Equal(98.113, 100 * per, 0.001);
        Assert.NotNull(Mix(new MixRequest { Wish = Wish("20-20-20"), Offers = offers }).OutOfReach);
    }

    // Watts, Vegetable Gardening: the home mixing of fertilizers (1912 from memory; text seen): 2000 lb of 4-8-10 take
    // 500 lb nitrate of soda 16 %, 941 lb rock 17 % and 400 lb muriate 50 %.
    [Fact]
    public void Four_eight_ten_of_Watts()
    {
        Offer[] offers = [NitrateOfSoda16, Bag("ssp", 0, 17, 0), Muriate50];
        var best = Mix(new MixRequest { Wish = Wish("4:8:10"), Offers = offers, Limits = SpreadAtOnce }).Blends[0];
        var pounds = 2000 * 0.04 / best.Grade[Nutrient.N];
        Assert.Equal(500, pounds * Share(best, "sodium-nitrate"), 1.0);
        Assert.Equal(941, pounds * Share(best, "ssp"), 1.0);
        Assert.Equal(400, pounds * Share(best, "potassium-chloride"), 1.0);
    }

    // Bailey, Farm and Garden Rule-Book (1911 from memory; factors 133, 143, 40 and the first product seen): a ton of 2-8-6 from
    // nitrate of soda 15 %, acid phosphate 14 % and muriate 50 %.
    [Fact]
    public void Two_eight_six_of_Bailey()
    {
        Offer[] offers = [Bag("sodium-nitrate", 15, 0, 0), Bag("ssp", 0, 14, 0), Muriate50];
        var best = Mix(new MixRequest { Wish = Wish("2:8:6"), Offers = offers, Limits = SpreadAtOnce }).Blends[0];
        var pounds = 2000 * 0.02 / best.Grade[Nutrient.N];
        Assert.Equal(266, pounds * Share(best, "sodium-nitrate"), 2.0);
        Assert.Equal(8 * 143, pounds * Share(best, "ssp"), 2.0);
        Assert.Equal(6 * 40, pounds * Share(best, "potassium-chloride"), 2.0);
    }

    // Agee, Crops and Methods for Soil Improvement: home mixing (1912 from memory; text seen): 9 lb N, 30 lb P2O5 and 18 lb K2O with half the
    // nitrogen from tankage 9-20-0: tankage 50, nitrate of soda 30, acid phosphate 143, muriate 36, together 259 lb.
    [Fact]
    public void Half_the_nitrogen_from_tankage_of_Agee()
    {
        Offer[] offers = [Bag("meat-bone-meal", 9, 20, 0), Bag("sodium-nitrate", 15, 0, 0), Bag("ssp", 0, 14, 0), Muriate50];
        Offer[] inPounds = offers;
        var printed = RecipeByParts.Weighed([(inPounds[0], 50), (inPounds[1], 30), (inPounds[2], 143), (inPounds[3], 36)], Wish("9:30:18")).Value!;
        Assert.Equal(259, printed.BatchGrams, 1e-9);
        Assert.Equal(9, printed.Grade[Nutrient.N] * 259, 0.01);
        Assert.Equal(30, printed.Grade[Nutrient.P] * 259, 0.05);
        Assert.Equal(18, printed.Grade[Nutrient.K] * 259, 0.01);
        Assert.True(printed.RatioError < 0.001);

        // The search does not offer it, however it is to be used: nitrate with a meal is oxidiser with fuel, which the old books did not mind.
        foreach (var limits in new[] { SpreadAtOnce, Limits("use=dry-stored") })
        {
            var answer = Mix(new MixRequest { Wish = Wish("9:30:18"), Offers = offers, Limits = limits });
            Assert.DoesNotContain(answer.Blends, blend => Share(blend, "meat-bone-meal") > 0 && Share(blend, "sodium-nitrate") > 0);
        }
    }

    // Teaching slides, Fertilizer computation (inputs seen, answer worked out by hand): 150 kg ammonium sulfate 21 %, 600 kg superphosphate
    // 20 % and 100 kg KCl 60 % are 850 kg of 3.71-14.12-7.06.
    [Fact]
    public void Grade_of_a_given_recipe()
    {
        var recipe = RecipeByParts.Weighed(
            [(Bag("ammonium-sulfate", 21, 0, 0), 150), (Bag("ssp", 0, 20, 0), 600), (Bag("potassium-chloride", 0, 0, 60), 100)]).Value!;
        Assert.Equal(850, recipe.BatchGrams, 1e-9);
        AssertGrade(3.706, 14.118, 7.059, recipe, 0.001);
    }

    // Table of starter grades, 2012 (27.8, 20.0 and 116.2 seen, 63.0 for UAN from memory; the recipe is reconstructed): salt index of 7-21-7
    // from 10-34-0, UAN and KCl, water counting nothing.
    [Fact]
    public void Salt_index_of_a_starter()
    {
        var recipe = RecipeByParts.Weighed(
        [
            (WithSalt("app-solution", 20.0), 0.61765),
            (WithSalt("uan-solution-32", 63.0), 0.02941),
            (WithSalt("potassium-chloride", 116.2), 0.11667),
            (WithSalt("filler-sand", 0), 1 - 0.61765 - 0.02941 - 0.11667),
        ]).Value!;
        Assert.Equal(27.8, recipe.SaltIndex!.Value, 0.2);
    }

    // Additivity only, component values from a grower's table in lb per ton (seen): 40 % at 1.10, 20 % at 0.65, 30 % at 0, 10 % at -1.00.
    [Fact]
    public void Lime_equivalent_of_a_mix()
    {
        var recipe = RecipeByParts.Weighed(
        [
            (WithLime("ammonium-sulfate", 1.10), 40),
            (WithLime("map-granular", 0.65), 20),
            (WithLime("potassium-sulfate", 0), 30),
            (WithLime("calcitic-lime", -1.00), 10),
        ]).Value!;
        Assert.Equal(0.47, recipe.LimeEquivalent!.Value, 0.001);
    }

    // LSU AgCenter, Tons to teaspoons (seen): granular ammonium nitrate 13 oz a US pint of 96 teaspoons.
    [Fact]
    public void A_teaspoon_of_ammonium_nitrate()
    {
        const double pint = 473.176473;
        const double grams = 13 * 28.349523125;
        var nitrate = Bag("ammonium-nitrate").Material with { BulkDensity = Spread.Exactly(grams / pint) };
        var spoon = new Scoop("teaspoon", Volume.FromMillilitres(pint / 96), new Dictionary<string, Spread>());
        var recipe = RecipeByParts.Scooped([(new Offer(nitrate), 96)], spoon).Value!;
        Assert.Equal(grams, recipe.BatchGrams, 1e-6);
        Assert.Equal(3.84, RecipeByParts.GramsOf(recipe, 1)!.Value, 0.005);
    }

    private static Offer WithSalt(string id, double index) =>
        new(Bag(id).Material with { SaltIndex = new Figure(index, "test", Provenance.Computed) });

    private static Offer WithLime(string id, double equivalent) =>
        new(Bag(id).Material with { LimeEquivalent = new Figure(equivalent, "test", Provenance.Computed) });
}
