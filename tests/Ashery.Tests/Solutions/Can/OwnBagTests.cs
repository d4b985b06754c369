using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Solutions;
using Ashery.Solutions.Can;

namespace Ashery.Tests.Solutions.Can;

/// <summary>A grower's own bags: what the label says is what goes into solution, and what was made up for the rest is said.</summary>
public class OwnBagTests
{
    // A made 20-20-20 of urea, nitrate and ammonium: at 1 g/L 200 mg N, 20 % P2O5 is 87.3 mg P, 20 % K2O is 166 mg K (factors 0.4364, 0.8301).
    [Fact]
    public void A_compound_gives_its_label()
    {
        var bag = Compound(MaterialKind.Straight, ("N", 20), ("NH4-N", 3.9), ("NO3-N", 6), ("urea-N", 10.1), ("P2O5", 20), ("K2O", 20), ("Mg", 0.5), ("Fe", 0.1));
        var report = Can(bag, 1);
        Assert.Equal(200, report.Nutrients[Nutrient.N], 0.3);
        Assert.Equal((60, 39, 101), (Math.Round(report.Nutrients.Nitrate), Math.Round(report.Nutrients.Ammonium), Math.Round(report.Nutrients.Urea)));
        Assert.Equal(87.3, report.Nutrients[Nutrient.P], 0.2);
        Assert.Equal(166, report.Nutrients[Nutrient.K], 0.3);
        Assert.Equal(200, report.Nutrients.Rows.Single(r => r.Nutrient == Nutrient.P).OnLabelBasis, 0.3);
        Assert.Contains(report.Assumed, a => a.Contains("leaves out", StringComparison.Ordinal));
        Assert.InRange(report.State.PH, 4, 6.5);
    }

    // Seaweed liquid: little on the label, organic nitrogen on top. It goes in, and what is no ion is said.
    [Fact]
    public void A_liquid_of_seaweed_gives_its_potassium_and_says_what_is_no_ion()
    {
        var bag = Compound(MaterialKind.OrganicMeal, ("N", 0.3), ("K2O", 4), ("Na", 1));
        var report = Can(bag with { Dissolves = true, IsLiquid = true }, 5);
        Assert.Equal(5 * 0.04 * 0.8301 * 1000, report.Nutrients[Nutrient.K], 1.0);
        Assert.Equal(0, report.Nutrients[Nutrient.N]);
        Assert.Contains(report.Assumed, a => a.Contains("no ion", StringComparison.Ordinal));
    }

    // A bag of potash at 40 % K2O is 74 % of pure K2SO4 (54.06 %).
    [Fact]
    public void A_weaker_bag_is_that_part_of_the_salt()
    {
        var bag = OwnBag.WithLabel(MaterialCatalogue.Default.Find("potassium-sulfate")!, LabelAnalysis.Grade(0, 0, 40));
        var made = MaterialInWater.Of(bag).Value!;
        Assert.Equal(40 / 54.056, made.Purity, 1e-3);
        Assert.Equal(1 - made.Purity, made.Undissolved, 1e-9);
        Assert.Equal(0.4, made.Content(Nutrient.K) / LabelBasis.PotassiumInK2O, 1e-3);
        Assert.NotEmpty(made.Assumed);
    }

    // The usual bag of potash says 50 %: by itself the pure salt, as a bag at hand no more than its label.
    [Fact]
    public void A_bag_at_hand_counts_by_its_label_even_where_it_is_the_usual_one()
    {
        var usual = MaterialCatalogue.Default.Find("potassium-sulfate")!;
        Assert.Equal(1, MaterialInWater.Of(usual).Value!.Purity);
        Assert.Equal(50 / 54.056, MaterialInWater.OfBag(usual).Value!.Purity, 1e-3);
    }

    // Nitric acid as sold: 60 % by its N (13.3 of 22.23), the rest water.
    [Fact]
    public void A_bottle_of_acid_is_acid_and_water()
    {
        var made = MaterialInWater.Of(MaterialCatalogue.Default.Find("nitric-acid")!).Value!;
        Assert.Equal(13.3 / 22.229, made.Purity, 1e-3);
        Assert.Equal(1 - made.Purity, made.Water, 1e-9);
        Assert.Equal(0.001 * 0.5983 / 63.012 * 1000, Can(made, 1).State.Solution.Total("nitrate"), 2e-5);
    }

    [Fact]
    public void Chelates_stay_whole()
    {
        var solution = Can(MaterialInWater.Of(MaterialCatalogue.Default.Find("manganese-edta")!).Value!, 0.1).State.Solution;
        Assert.True(solution.Molality("MnEDTA-2") > 0);
        Assert.Equal(0, solution.Molality("Mn+2"));
    }

    private static Material Compound(MaterialKind kind, params (string Item, double Percent)[] lines) =>
        OwnBag.Compound("own-bag", "Own bag", kind, [.. lines.Select(l => new LabelLine(LabelItems.Find(l.Item)!.Value, l.Percent))], dissolves: true).Value!;

    private static CanReport Can(Material bag, double grams) => Can(MaterialInWater.OfBag(bag).Value!, grams);

    private static CanReport Can(MaterialInWater material, double grams) => CanMaker.Make(new CanRequest { Additions = [new(material, grams)] }).Value!;
}
