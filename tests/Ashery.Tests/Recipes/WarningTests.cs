using Ashery.Nutrients;
using Ashery.Problems;
using Ashery.Recipes;
using static Ashery.Tests.Recipes.Shelf;

namespace Ashery.Tests.Recipes;

public class WarningTests
{
    [Fact]
    public void Chloride_is_warned_of_with_the_best_blend_without_it_beside()
    {
        var answer = Mix(new MixRequest
        {
            Wish = Wish("17:5:24"),
            Offers = [.. Three, Bag("potassium-chloride", 0, 0, 60, price: 0.1)],
            Limits = Limits("material potassium-sulfate<=20%"),
        });
        Assert.Contains(answer.Blends[0].Notes, n => n is { Field: "chloride", Severity: Severity.Warning });
        var instead = answer.Instead["chloride"];
        Assert.True(instead.Grade[Nutrient.Cl] <= WarningThresholds.Chloride + 1e-8);
    }

    [Fact]
    public void All_ammonium_nitrogen_is_warned_of_with_a_nitrate_beside()
    {
        var answer = Mix(new MixRequest { Wish = Wish("17:5:24"), Offers = [.. Three, Bag("potassium-nitrate")], Limits = Limits("material potassium-nitrate<=100%") });
        var ammonium = answer.Blends.First(b => b.Nitrogen.Nitrate == 0);
        Assert.Contains(ammonium.Notes, n => n is { Field: "ammoniacal nitrogen", Severity: Severity.Warning });
        var mixed = answer.Blends.First(b => b.Nitrogen.Nitrate / b.Nitrogen.Total > 0.1);
        Assert.DoesNotContain(mixed.Notes, n => n.Field == "ammoniacal nitrogen");
    }

    [Fact]
    public void Missing_calcium_and_magnesium_are_warned_of_with_blends_that_bring_them()
    {
        var answer = Mix(new MixRequest { Wish = Wish("17:5:24"), Offers = [.. Three, Bag("kieserite"), Bag("gypsum")] });
        var first = answer.Blends[0];
        if (first.Grade[Nutrient.Mg] == 0)
        {
            Assert.Contains(first.Notes, n => n is { Field: "magnesium", Severity: Severity.Warning });
            var instead = answer.Instead["magnesium"];
            Assert.True(instead.Grade[Nutrient.Mg] >= (WarningThresholds.MagnesiumPerNitrogen * instead.Grade[Nutrient.N]) - 1e-8);
            Assert.Equal(0, instead.RatioError, 1e-9);
        }

        Assert.Contains(first.Notes, n => n is { Field: "calcium", Severity: Severity.Warning });
        Assert.True(answer.Instead["calcium"].Grade[Nutrient.Ca] > 0.02);
    }

    [Fact]
    public void Where_no_blend_avoids_a_warning_the_answer_says_what_would()
    {
        var answer = Mix(new MixRequest { Wish = Wish("17:5:24"), Offers = Six, Batch = Batch("15g"), Measuring = new Measuring.ByScale(new(1)) });
        Assert.Equal(["chloride"], answer.Instead.Keys);
        foreach (var field in (string[])["ammoniacal nitrogen", "calcium", "magnesium"])
        {
            Assert.Contains(answer.Problems, p => p.Field == field && p.WayOut.Contains("Add a", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void The_salt_index_says_that_it_understates_phosphates()
    {
        var best = Mix(new MixRequest { Wish = Wish("17:5:24"), Offers = Three }).Blends[0];
        Assert.NotNull(best.SaltIndex);
        Assert.NotNull(best.OsmolalityPerGram);
        Assert.Contains(best.Notes, n => n.Field == "salt index" && n.Message.Contains("understates phosphates", StringComparison.Ordinal));
    }

    // Ideal osmolality by hand: ammonium sulfate, 3 ions in 132.14 g/mol, 22.70 mOsm/g; potassium sulfate, 3 in 174.26, 17.22; the ammonium
    // phosphate, 2 in 115.03, 17.39. Weighted by the shares of the pure salts this is near 20.3 (label grades are a little impure).
    [Fact]
    public void Osmolality_is_near_that_of_the_pure_salts()
    {
        var best = Mix(new MixRequest { Wish = Wish("17:5:24"), Offers = Three }).Blends[0];
        Assert.Equal((0.57576 * 22.70) + (0.06188 * 17.39) + (0.36236 * 17.22), best.OsmolalityPerGram!.Value, 1.5);
    }
}
