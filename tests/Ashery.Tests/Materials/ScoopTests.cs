using Ashery.Materials;
using Ashery.Quantities;

namespace Ashery.Tests.Materials;

public class ScoopTests
{
    private static readonly MaterialCatalogue Catalogue = MaterialCatalogue.Default;

    // "A full teaspoon is about 5 g" (common practice, no source): the salts of the common mix, in a level 5 mL spoon.
    [Theory]
    [InlineData("ammonium-sulfate")]
    [InlineData("map-technical")]
    public void A_teaspoon_holds_about_five_grams(string id) =>
        Assert.InRange(ScoopFill.Of(Scoop("tsp"), Catalogue.Find(id)!)!.Grams.Typical, 4.5, 5.5);

    // Tons to teaspoons (lsu-teaspoons, seen): granular ammonium nitrate, 13 oz a US pint of 32 tablespoons, 96 teaspoons.
    [Fact]
    public void Pint_of_ammonium_nitrate()
    {
        var pint = QuantityReader.Volume("1 pint", "pint").Value;
        var density = QuantityReader.Mass("13 oz", "mass").Value.Grams / pint.Millilitres;
        Assert.Equal(0.7789, density, 1e-4);
        Assert.Equal(11.52, density * pint.Millilitres / 32, 0.02);
        Assert.Equal(3.84, density * pint.Millilitres / 96, 0.02);
        var usual = Catalogue.FiguresOf("ammonium-nitrate").Where(f => f.Property == "bulkDensity");
        Assert.Contains(usual, f => f.Typical is { } t && Math.Abs(t - density) < 0.001);
    }

    // Farm measures (quart-table, seen): a US quart of urea 45 % weighs 1.6 lb and holds 0.7 lb N.
    [Fact]
    public void Quart_of_urea()
    {
        var quart = QuantityReader.Volume("1 quart", "quart").Value;
        var mass = QuantityReader.Mass("1.6 lb", "mass").Value;
        Assert.Equal(0.7669, mass.Grams / quart.Millilitres, 1e-4);
        Assert.Equal(0.7, mass.Grams * 0.45 / Units.GramsPerPound, 0.05);
        var urea = Catalogue.Find("urea")!.BulkDensity!.Value;
        Assert.InRange(0.7669, urea.Min, urea.Max);
    }

    [Fact]
    public void Own_weighing_goes_before_bulk_density()
    {
        var own = ScoopCalibration.Of(10, new Mass(48)).Value;
        var scoop = Scoop("5mL") with { Calibrations = new Dictionary<string, Spread> { ["urea"] = own } };
        var fill = ScoopFill.Of(scoop, Catalogue.Find("urea")!)!;
        Assert.True(fill.IsCalibrated);
        Assert.Equal(4.8, fill.Grams.Typical, 12);
    }

    // Three weighings of 4 scoops: means 5.0, 5.2, 4.8; s = 0.2; one scoop varies by 0.2 x sqrt 4 = 0.4; range 5 +- 0.8.
    [Fact]
    public void Several_weighings_give_the_range_of_one_scoop()
    {
        var spread = ScoopCalibration.Of(4, [new Mass(20), new Mass(20.8), new Mass(19.2)]).Value;
        Assert.Equal(5.0, spread.Typical, 12);
        Assert.Equal(4.2, spread.Min, 9);
        Assert.Equal(5.8, spread.Max, 9);
    }

    [Fact]
    public void Liquids_go_by_density() =>
        Assert.Equal(5 * 1.685, ScoopFill.Of(Scoop("5mL"), Catalogue.Find("phosphoric-acid-85")!)!.Grams.Typical, 9);

    [Fact]
    public void Heaped_is_more_and_less_sure()
    {
        var level = ScoopFill.Of(Scoop("tsp"), Catalogue.Find("urea")!)!.Grams;
        var heaped = ScoopFill.Of(Scoop("tsp"), Catalogue.Find("urea")!, Heap.Heaped)!.Grams;
        Assert.True(heaped.Typical > level.Typical);
        Assert.True((heaped.Max - heaped.Min) / heaped.Typical > (level.Max - level.Min) / level.Typical);
    }

    [Fact]
    public void Nothing_known_gives_nothing() => Assert.Null(ScoopFill.Of(Scoop("tsp"), Catalogue.Find("potassium-hydroxide")!));

    [Theory]
    [InlineData(0, 50)]
    [InlineData(10, 0)]
    [InlineData(10, double.NaN)]
    public void Weighings_that_cannot_be_are_refused(int count, double grams) => Assert.False(ScoopCalibration.Of(count, new Mass(grams)).Ok);

    [Fact]
    public void A_coarse_scale_is_told() => Assert.NotEmpty(ScoopCalibration.Of(2, new Mass(10), scaleStep: 1).Problems);

    [Theory]
    [InlineData("teaspon")]
    [InlineData("5")]
    [InlineData("-5mL")]
    public void Scoops_that_cannot_be_are_refused(string text) => Assert.False(ScoopFill.Parse(text).Ok);

    private static Scoop Scoop(string size) => ScoopFill.Parse(size).Value!;
}
