using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Problems;
using Ashery.Quantities;
using Ashery.Recipes;
using static Ashery.Tests.Recipes.Shelf;

namespace Ashery.Tests.Recipes;

public class MeasuringTests
{
    private static readonly Scoop Spoon = new("5mL", Volume.FromMillilitres(5), new Dictionary<string, Spread>
    {
        ["ammonium-sulfate"] = new(4.6, 5.0, 5.4),
        ["map-granular"] = new(4.5, 5.0, 5.5),
        ["potassium-sulfate"] = new(5.6, 6.0, 6.4),
    });

    private static readonly MixRequest Request = new() { Wish = Wish("17:5:24"), Offers = Three };

    [Fact]
    public void Whole_scoops_in_a_window_are_the_best_of_all_counts()
    {
        var request = Request with { Batch = Batch("20g..90g"), Measuring = new Measuring.ByScoop(Spoon) };
        var answer = Mix(request);
        var best = answer.Blends[0];
        Assert.All(best.Parts, p => Assert.Equal(p.Scoops!.Value * Spoon.Calibrations[p.Material.Id].Typical, p.Grams, 1e-9));
        Assert.InRange(best.BatchGrams, 20, 90);

        // Every count of scoops tried one by one.
        var least = double.MaxValue;
        for (var a = 0; a <= 18; a++)
        {
            for (var m = 0; m <= 18; m++)
            {
                for (var s = 0; s <= 15; s++)
                {
                    var (gA, gM, gS) = (5.0 * a, 5.0 * m, 6.0 * s);
                    if (gA + gM + gS is >= 20 and <= 90)
                    {
                        double[] held = [(0.21 * gA) + (0.12 * gM), 0.61 * gM, 0.5 * gS];
                        var sum = held.Sum();
                        least = Math.Min(least, (Math.Abs((held[0] / sum * 46 / 17) - 1) + Math.Abs((held[1] / sum * 46 / 5) - 1) + Math.Abs((held[2] / sum * 46 / 24) - 1)) / 3);
                    }
                }
            }
        }

        Assert.Equal(least, best.RatioError, 1e-9);
        Assert.True(answer.Proved);
        Assert.Equal(0, answer.FreeError!.Value, 1e-9);
    }

    [Fact]
    public void An_exact_batch_in_scoops_may_be_a_tenth_off_and_says_so()
    {
        var answer = Mix(Request with { Batch = Batch("75g"), Measuring = new Measuring.ByScoop(Spoon) });
        Assert.All(answer.Blends, b => Assert.InRange(b.BatchGrams, 67.5 - 1e-9, 82.5 + 1e-9));
        Assert.Contains(answer.Problems, p => p.Field == "batch" && p.Severity is Severity.Note);
    }

    [Fact]
    public void Without_a_batch_one_is_filled_in()
    {
        var byScale = Mix(Request with { Measuring = new Measuring.ByScale(new Mass(0.5)) });
        Assert.Equal(50, byScale.Blends[0].BatchGrams, 1e-9);
        var byScoop = Mix(Request with { Measuring = new Measuring.ByScoop(Spoon) });
        Assert.True(byScoop.Blends[0].Parts.Sum(p => p.Scoops) <= 20);
        Assert.Contains(byScoop.Problems, p => p.Field == "batch");
    }

    [Fact]
    public void Tenths_of_a_gram_make_a_batch_of_tenths()
    {
        var best = Mix(Request with { Batch = Batch("1.5g"), Measuring = new Measuring.ByScale(new Mass(0.1)) }).Blends[0];
        Assert.Equal(0.8, Grams(best, "ammonium-sulfate"), 1e-9);
        Assert.Equal(0.1, Grams(best, "map-granular"), 1e-9);
        Assert.Equal(0.6, Grams(best, "potassium-sulfate"), 1e-9);
    }

    [Fact]
    public void Limits_hold_in_whole_steps()
    {
        var answer = Mix(Request with
        {
            Offers = Six,
            Batch = Batch("15g"),
            Measuring = new Measuring.ByScale(new Mass(1)),
            Limits = Limits("chloride<=2%; urea<=30%"),
        });
        Assert.NotEmpty(answer.Blends);
        Assert.All(answer.Blends, b =>
        {
            Assert.True(b.Grade[Nutrient.Cl] <= 0.02 + 1e-9);
            Assert.True(b.Nitrogen.Urea <= (0.3 * b.Grade[Nutrient.N]) + 1e-9);
            Assert.All(b.Parts, p => Assert.Equal(Math.Round(p.Grams), p.Grams, 1e-9));
        });
    }

    [Fact]
    public void Liquids_come_in_millilitres()
    {
        var liquid = MaterialCatalogue.Default.Find("uan-solution-32")!;
        var recipe = RecipeByParts.Weighed([(new Offer(liquid), 132)]).Value!;
        Assert.Equal(132 / liquid.LiquidDensity!.Value, recipe.Parts[0].Millilitres!.Value, 1e-9);
    }

    [Fact]
    public void Draws_give_median_percentile_and_worst_case_in_order()
    {
        var offers = new[] { Bag("neem-cake"), Bag("bone-meal-steamed"), Bag("potassium-sulfate", 0, 0, 50) };
        var answer = Mix(new MixRequest { Wish = Wish("3:2:4"), Offers = offers, Draws = 2000, Seed = 7 });
        var spread = answer.Blends[0].Uncertainty!;
        Assert.True(spread.Median <= spread.Percentile95);
        Assert.True(spread.Percentile95 <= spread.WorstCase + 1e-12);
        Assert.True(spread.NitrogenLow < answer.Blends[0].Grade[Nutrient.N]);
        Assert.True(spread.NitrogenHigh > answer.Blends[0].Grade[Nutrient.N]);
        Assert.Equal(spread, Mix(new MixRequest { Wish = Wish("3:2:4"), Offers = offers, Draws = 2000, Seed = 7 }).Blends[0].Uncertainty);
    }

    [Fact]
    public void Blends_can_be_ranked_by_their_95th_percentile()
    {
        var offers = new[] { Bag("neem-cake"), Bag("bone-meal-steamed"), Bag("ammonium-sulfate"), Bag("map-granular"), Bag("potassium-sulfate") };
        var answer = Mix(new MixRequest { Wish = Wish("3:2:4"), Offers = offers, Rank = RankBy.Percentile95 });
        var ranked = answer.Blends.Select(b => b.Uncertainty!.Percentile95).ToList();
        Assert.Equal(ranked.Order(), ranked);
        Assert.NotEqual(
            Mix(new MixRequest { Wish = Wish("3:2:4"), Offers = offers }).Blends.Select(b => b.Parts.Count),
            answer.Blends.Select(b => b.Parts.Count));
    }

    [Fact]
    public void A_scoop_not_calibrated_is_less_sure_than_one_that_is()
    {
        var request = Request with { Batch = Batch("20g..90g"), Measuring = new Measuring.ByScoop(Spoon), Draws = 2000 };
        var bare = Spoon with { Calibrations = Spoon.Calibrations.ToDictionary(c => c.Key, c => Spread.Exactly(c.Value.Typical)) };
        var weighed = Mix(request).Blends[0].Uncertainty!;
        var guessed = Mix(request with { Measuring = new Measuring.ByScoop(bare with { Calibrations = new Dictionary<string, Spread>() }) }).Blends[0].Uncertainty!;
        Assert.True(weighed.WorstCase < guessed.WorstCase);
    }
}
