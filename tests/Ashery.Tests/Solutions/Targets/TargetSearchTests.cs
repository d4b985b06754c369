using Ashery.Blending;
using Ashery.Nutrients;
using Ashery.Solutions;
using Ashery.Solutions.Targets;

namespace Ashery.Tests.Solutions.Targets;

/// <summary>What must hold of a recipe for a solution, and what is said when there is none.</summary>
public class TargetSearchTests
{
    private static readonly string[] Shelf = ["calcium-nitrate-double", "potassium-nitrate", "mkp", "epsom-salt", "potassium-sulfate", "map-technical", "ammonium-nitrate"];

    [Theory]
    [InlineData("pure")]
    [InlineData("soft")]
    [InlineData("hard")]
    public void Contributions_add_up_to_the_analysis_of_the_can(string water)
    {
        var answer = TargetKit.Find(TargetKit.Request("N=140 P=30 K=150 Ca=110 Mg=30", water, Shelf));
        Assert.True(answer.Proved);
        foreach (var recipe in answer.Recipes)
        {
            foreach (var row in recipe.Rows)
            {
                Assert.Equal(row.Total, row.Water + row.ByPart.Sum(), 1e-9);

                // The can counts a litre of all water, crystal water included: a little weaker.
                Assert.Equal(row.Total, row.Item.Symbol switch
                {
                    "NO3-N" => recipe.Can.Nutrients.Nitrate,
                    "NH4-N" => recipe.Can.Nutrients.Ammonium,
                    "urea-N" => recipe.Can.Nutrients.Urea,
                    _ => recipe.Can.Nutrients[row.Item.Nutrient],
                } * recipe.Can.WaterMass, 1e-6 * (1 + row.Total));
                Assert.InRange(recipe.Can.WaterMass, 1, 1.001);
            }
        }
    }

    [Fact]
    public void In_pure_water_a_target_met_exactly_is_the_plain_blend_of_the_same_ratio()
    {
        string[] shelf = ["KNO3", "KH2PO4", "NH4NO3"];
        var recipe = TargetKit.Find(TargetKit.Request("N=120 P=25 K=140", "pure", shelf)).Recipes[0];
        Assert.Equal(0, recipe.Error, 1e-9);
        Nutrient[] nutrients = [Nutrient.N, Nutrient.P, Nutrient.K];
        var plain = BlendSearch.Find(new BlendRequest
        {
            Columns = [.. shelf.Select(f => new Column(f, [.. nutrients.Select(n => TargetKit.Offer(f).Material.Content(n))]))],
            Target = [120, 25, 140],
        }).Blends[0];
        var whole = recipe.Parts.Sum(p => p.GramsPerLitre);
        for (var k = 0; k < plain.Members.Count; k++)
        {
            Assert.Equal(plain.MassFractions[k], recipe.Parts.Single(p => p.Material.Id == shelf[plain.Members[k]]).GramsPerLitre / whole, 1e-9);
        }
    }

    [Fact]
    public void More_materials_and_a_larger_shelf_are_never_worse()
    {
        var last = double.PositiveInfinity;
        for (var most = 1; most <= 6; most++)
        {
            var error = TargetKit.Find(TargetKit.Request("N=150 P=30 K=160 Ca=120 Mg=30", "soft", Shelf) with { AtMost = most }).Recipes[0].Error;
            Assert.True(error <= last + 1e-12);
            last = error;
        }

        Assert.True(last < TargetKit.Find(TargetKit.Request("N=150 P=30 K=160 Ca=120 Mg=30", "soft", Shelf[..3])).Recipes[0].Error);
    }

    [Fact]
    public void Ec_and_ph_are_those_of_the_full_solution()
    {
        var request = TargetKit.Request("N=150 P=30 K=160 Ca=120 Mg=30", "moderate", Shelf);
        var answer = TargetKit.Find(request with { Target = request.Target with { Ec = 1.8, PH = 5.8 }, Agent = TargetKit.Acid("nitric", 0.38) });
        Assert.Null(answer.OutOfReach);
        foreach (var recipe in answer.Recipes)
        {
            Assert.True(recipe.Tuned);

            // Worked out again from grams and formulas by the salts' own room.
            var can = new Dissolving(request.Water);
            foreach (var part in recipe.Parts)
            {
                foreach (var (component, moles) in part.Material.Gives)
                {
                    can.AddMoles(Chemistry.Default.Components[component].Name, moles * part.GramsPerLitre);
                }

                can.Dilute(part.Material.Water * part.GramsPerLitre / 1000);
            }

            var solution = Speciation.Solve(can.Input().At(20));
            Assert.Equal(5.8, solution.PH, 0.005);
            Assert.Equal(1.8, Conductivity.At25(solution), 0.005);
        }

        // Nitric acid feeds: its nitrogen is a part of the total, and the proportions wished are kept.
        var first = answer.Recipes[0];
        var acid = Assert.Single(first.Parts, p => p.IsAgent);
        Assert.True(acid.Millilitres > 0);
        Assert.True(first.Rows[0].ByPart[^1] > 5);
        Assert.Equal(160 * first.Strength, first.Rows.Single(r => r.Item.Symbol == "K").Total, 0.02 * 160);
    }

    [Fact]
    public void Whole_steps_are_whole_and_no_rounding_is_better()
    {
        var request = TargetKit.Request("N=150 P=30 K=160 Ca=100 Mg=30", "soft", Shelf) with { StepGrams = 0.5, Litres = 10, Best = 1 };
        var answer = TargetKit.Find(request);
        var free = TargetKit.Find(request with { StepGrams = null }).Recipes[0];
        var stepped = answer.Recipes[0];
        Assert.True(answer.Proved);
        Assert.All(stepped.Parts, p => Assert.Equal(p.Steps!.Value * 0.5, p.Grams, 1e-9));
        Assert.True(stepped.Error >= free.Error - 1e-12);

        // Every count of steps near the best free amounts of the same materials, one by one.
        var parts = stepped.Parts;
        var aims = stepped.Rows.Where(r => r.Wish is { IsAim: true }).ToArray();
        for (var code = 0; code < Math.Pow(5, parts.Count); code++)
        {
            double[] grams = [.. parts.Select((p, k) => p.GramsPerLitre + ((((code / (int)Math.Pow(5, k)) % 5) - 2) * 0.05))];
            if (grams.Min() >= 0)
            {
                var error = aims.Average(r => Math.Abs(((r.Water + parts.Select((p, k) => 1000 * grams[k] * r.Item.Content(p.Material)).Sum()) / r.Low) - 1));
                Assert.True(error >= stepped.Error - 1e-9, FormattableString.Invariant($"{error} beats {stepped.Error}"));
            }
        }
    }

    [Fact]
    public void What_the_water_alone_passes_is_said_with_the_way_out()
    {
        var answer = TargetKit.Find(TargetKit.Request("N=150 P=30 K=160 Ca=60 Mg=30 Na<=20", "hard", Shelf));
        var calcium = Assert.Single(answer.WaterExceeds, e => e.Item.Symbol == "Ca");
        Assert.Equal(100, calcium.Water, 0.5);
        Assert.Equal(0.4, calcium.Replace, 0.01);
        Assert.Contains(answer.WaterExceeds, e => e.Item.Symbol == "Na");
        Assert.NotNull(answer.OutOfReach);
        Assert.DoesNotContain(answer.Recipes[0].Parts, p => p.Material.Id.StartsWith("calcium", StringComparison.Ordinal));
        Assert.Contains(answer.Problems, p => p.WayOut.Contains("40 %", StringComparison.Ordinal));
    }

    [Fact]
    public void Limits_are_kept()
    {
        var answer = TargetKit.Find(TargetKit.Request("N=150 P=30 K=160 Mg=30 NH4-N<=10% S<=60 Ca=60..90", "soft", Shelf));
        foreach (var recipe in answer.Recipes)
        {
            double Of(string symbol) => recipe.Rows.SingleOrDefault(r => r.Item.Symbol == symbol)?.Total ?? 0;
            Assert.True(Of("NH4-N") <= (0.1 * Of("N")) + 1e-6);
            Assert.True(Of("S") <= 60 + 1e-6);
            Assert.InRange(Of("Ca"), 60 - 1e-6, 90 + 1e-6);
        }
    }

    [Fact]
    public void Limits_that_cannot_hold_together_are_named_and_the_nearest_is_shown()
    {
        var answer = TargetKit.Find(TargetKit.Request("N=150 K=160 Ca>=150 NO3-N<=20", "soft", Shelf));
        Assert.NotNull(answer.OutOfReach);
        Assert.Contains("Ca>=150", answer.OutOfReach.Message, StringComparison.Ordinal);
        Assert.Contains("NO3-N<=20", answer.OutOfReach.Message, StringComparison.Ordinal);
        Assert.NotEmpty(answer.Recipes);
    }

    [Fact]
    public void An_ec_below_that_of_the_water_is_out_of_reach()
    {
        var request = TargetKit.Request("N=150 K=160", "hard", Shelf);
        var answer = TargetKit.Find(request with { Target = request.Target with { Ec = 0.5 } });
        Assert.Equal("ec", answer.OutOfReach?.Field);
    }

    [Fact]
    public void A_base_brings_a_sour_feed_up()
    {
        var request = TargetKit.Request("N=100 P=30 K=120", "pure", "urea", "KNO3", "KH2PO4");
        var answer = TargetKit.Find(request with { Target = request.Target with { PH = 7 }, Agent = new(TargetKit.Offer("potassium-bicarbonate").Material) });
        Assert.Equal(7, answer.Recipes[0].PH, 0.01);
        Assert.True(answer.Recipes[0].Tuned);
    }

    [Fact]
    public void Urea_never_meets_nitric_acid()
    {
        var request = TargetKit.Request("N=100 K=120", "moderate", "urea", "potassium-nitrate");
        var answer = TargetKit.Find(request with { Target = request.Target with { PH = 6 }, Agent = TargetKit.Acid("nitric", 0.6) });
        Assert.DoesNotContain(answer.Recipes[0].Parts, p => p.Material.Id == "urea");
        Assert.Contains(answer.Problems, p => p.Field == "acid" && p.Message.Contains("explosive", StringComparison.Ordinal));
    }

    [Fact]
    public void One_stock_keeps_calcium_from_sulfate_and_phosphate()
    {
        var request = TargetKit.Request("N=150 P=30 K=160 Ca=100 Mg=30", "soft", Shelf) with { OneStock = true };
        Assert.All(TargetKit.Find(request).Recipes, r => Assert.False(
            r.Parts.Any(p => p.Material.Id == "calcium-nitrate-double") && r.Parts.Any(p => p.Material.Id is "mkp" or "map-technical" or "epsom-salt" or "potassium-sulfate")));
    }
}
