using Ashery.Quantities;

namespace Ashery.Tests.Quantities;

public class QuantityReaderTests
{
    // NIST Special Publication 811, appendix B.8 (from memory): 1 oz = 28.34952 g, 1 lb = 453.59237 g.
    [Theory]
    [InlineData("75g", 75)]
    [InlineData("0.1 g", 0.1)]
    [InlineData("1.5 kg", 1500)]
    [InlineData("250MG", 0.25)]
    [InlineData("1oz", 28.34952)]
    [InlineData("2 lb", 907.18474)]
    public void Masses_read_in_grams(string text, double grams)
    {
        var mass = QuantityReader.Mass(text, "batch", "75g");
        Assert.True(mass.Ok);
        Assert.Equal(grams, mass.Value.Grams, 1e-5);
    }

    // NIST Special Publication 811, appendix B.8 (from memory): 1 US gallon = 3.785412 L, 1 US fluid ounce = 29.57353 mL.
    [Theory]
    [InlineData("5mL", 5)]
    [InlineData("0.5 l", 500)]
    [InlineData("2cl", 20)]
    [InlineData("1 tsp", 5)]
    [InlineData("1/4 tsp", 1.25)]
    [InlineData("1 1/2 tsp", 7.5)]
    [InlineData("1 tbsp", 15)]
    [InlineData("1 gal", 3785.412)]
    [InlineData("1 quart", 946.353)]
    [InlineData("1 fl oz", 29.57353)]
    [InlineData("2 fl. oz", 59.14706)]
    public void Volumes_read_in_millilitres(string text, double millilitres) =>
        Assert.Equal(millilitres, QuantityReader.Volume(text, "scoop", "5mL").Value.Millilitres, 1e-3);

    [Theory]
    [InlineData("10g..15g", 10, 15)]
    [InlineData("10..15 g", 10, 15)]
    [InlineData("0.5kg..1kg", 500, 1000)]
    [InlineData("75g", 75, 75)]
    public void Windows_read_in_grams(string text, double from, double to)
    {
        var window = QuantityReader.MassWindow(text, "batch").Value;
        Assert.Equal((from, to), (window.From.Grams, window.To.Grams));
    }

    [Theory]
    [InlineData("", "missing")]
    [InlineData("75", "no unit")]
    [InlineData("7,5g", "comma")]
    [InlineData("1,000.5g", "comma")]
    [InlineData("0g", "not above zero")]
    [InlineData("-5g", "not above zero")]
    [InlineData("75stone", "not a unit")]
    [InlineData("5mL", "not a unit")]
    [InlineData("NaNg", "number")]
    [InlineData("NaN", "number")]
    [InlineData("Infinity", "number")]
    [InlineData("g", "number")]
    [InlineData("..", "no unit")]
    [InlineData("1e9kg", "number")]
    [InlineData("1/0 g", "fraction")]
    [InlineData("99999999kg", "above 1000 kg")]
    [InlineData("\u0007\u0000g", "number")]
    [InlineData("5 <b>x</b>", "no unit")]
    [InlineData("111111111111111111111111111111111111111111111111111g", "too long")]
    public void What_is_no_mass_says_why_and_shows_one(string text, string message)
    {
        var problem = Assert.Single(QuantityReader.Mass(text, "batch", "75g").Problems);
        Assert.Equal("batch", problem.Field);
        Assert.Contains(message, problem.Message, StringComparison.Ordinal);
        Assert.Contains("75g", problem.WayOut, StringComparison.Ordinal);
        Assert.DoesNotContain(problem.ToString(), char.IsControl);
    }

    [Fact]
    public void A_decimal_comma_is_shown_with_a_point() =>
        Assert.Contains("1.5 g", QuantityReader.Mass("1,5 g", "batch").Problems[0].WayOut, StringComparison.Ordinal);

    [Theory]
    [InlineData("15g..10g")]
    [InlineData("..15g")]
    [InlineData("10g..")]
    public void Windows_that_cannot_be_are_refused(string text) => Assert.False(QuantityReader.MassWindow(text, "batch").Ok);

    [Theory]
    [InlineData("12", 0.12)]
    [InlineData("12 %", 0.12)]
    [InlineData("0", 0)]
    public void Percent_reads_as_a_fraction(string text, double fraction) => Assert.Equal(fraction, QuantityReader.Percent(text, "N").Value, 12);

    [Theory]
    [InlineData("101")]
    [InlineData("-1")]
    [InlineData("12,5")]
    public void Percent_that_cannot_be_is_refused(string text) => Assert.False(QuantityReader.Percent(text, "N").Ok);
}
