using Ashery.Nutrients;
using Ashery.Quantities;

namespace Ashery.Tests.Conversions;

/// <summary>Published examples of the plain arithmetic, each with its source and whether its text was seen.</summary>
public class WorkedExampleTests
{
    private const double HundredGallons = 100 * Units.LitresPerUsGallon;

    // Texas A&M Extension, "Nutrition and fertility: ppm calculations" (seen): 15 % N gives 11.25 ppm an ounce in 100 gal, 22 oz for 250 ppm.
    [Fact]
    public void Calcium_nitrate_in_a_hundred_gallons()
    {
        Assert.Equal(11.25, NutrientArithmetic.MilligramsPerLitre(Units.GramsPerOunce, 0.15, HundredGallons), 11.25 * 0.005);
        Assert.Equal(22, Math.Round(NutrientArithmetic.GramsFor(250, 0.15, HundredGallons) / Units.GramsPerOunce));
    }

    // University of Massachusetts, "Fertilizer calculations for greenhouse crops" (seen): 200 ppm N, to the half ounce.
    [Theory]
    [InlineData(0.20, 13.5)]
    [InlineData(0.15, 18)]
    public void Two_hundred_parts_per_million(double nitrogen, double ounces) =>
        Assert.Equal(ounces, Math.Round(NutrientArithmetic.GramsFor(200, nitrogen, HundredGallons) / Units.GramsPerOunce * 2) / 2);

    // Mattson, e-GRO Edible Alert 3(5), 2018 (seen): 40 ppm Mg from 9.7 % Mg, 13 % S, in 378.5 L: 412 mg/L, 53.56 ppm S, 155.9 g, 5.5 oz.
    [Fact]
    public void Magnesium_sulfate_carries_its_sulfur()
    {
        const double Litres = 378.5;
        var grams = NutrientArithmetic.GramsFor(40, 0.097, Litres);
        Assert.Equal(412, grams * 1000 / Litres, 412 * 0.002);
        Assert.Equal(53.56, NutrientArithmetic.MilligramsPerLitre(grams, 0.13, Litres), 53.56 * 0.002);
        Assert.Equal(155.9, grams, 155.9 * 0.002);
        Assert.Equal(5.5, grams / Units.GramsPerOunce, 5.5 * 0.002);
    }

    // A page reprinting a spoon table (seen): 6 g N a square metre from 34 % is 17.65 g.
    [Fact]
    public void Six_grams_of_nitrogen() => Assert.Equal(17.65, NutrientArithmetic.GramsOfProduct(6, 0.34), 0.01);

    // Calculating Agriculture, chapters 9 and 15 (seen): 80 kg N from 21 %: 380.95 kg; 10 % of 800 kg from 45 %: 177.78 kg.
    [Theory]
    [InlineData(80, 0.21, 380.95)]
    [InlineData(80, 0.45, 177.78)]
    public void Carriers(double nutrient, double fraction, double product) =>
        Assert.Equal(product, NutrientArithmetic.GramsOfProduct(nutrient, fraction), 0.01);

    // Merz and Ross, USDA Bulletin 1280, 1924 (seen): 640 lb of a salt with 25 % ammonia give 8 % ammonia in 2000 lb. The percents are of NH3,
    // not of N: 25 % NH3 is 20.6 % N, an ordinary ammonium sulfate.
    [Fact]
    public void Percent_of_ammonia_is_not_percent_of_nitrogen()
    {
        Assert.Equal(640, NutrientArithmetic.GramsOfProduct(2000 * 0.08, 0.25), 0.5);
        Assert.Equal(20.56, 25 * Formula.Parse("NH3").Value!.Fraction("N"), 0.01);
    }

    // A blog's stock-solution example (seen): of 300 g/L potassium nitrate with 38 % K only 209 dissolve: K 114 wanted, 80 got, 34 lost.
    // The arithmetic only: the handbooks give 316 g a kg of water at 20 °C.
    [Fact]
    public void What_does_not_dissolve_does_not_feed()
    {
        Assert.Equal(114, 300 * 0.38, 1.0);
        Assert.Equal(80, Math.Min(300, 209) * 0.38, 1.0);
        Assert.Equal(34, (300 - 209) * 0.38, 1.0);
    }

    // Farm measures for the home gardener (seen): 2 lb urea or 3 lb ammonium nitrate for 1 lb N. Its 4 lb of ammonium sulfate is wrong: 4.76.
    [Theory]
    [InlineData(0.46, 2.174, 2)]
    [InlineData(0.34, 2.941, 3)]
    [InlineData(0.21, 4.762, 5)]
    public void Pounds_for_a_pound_of_nitrogen(double fraction, double pounds, double whole)
    {
        Assert.Equal(pounds, NutrientArithmetic.GramsOfProduct(1, fraction), 0.001);
        Assert.Equal(whole, Math.Round(NutrientArithmetic.GramsOfProduct(1, fraction)));
    }
}
