using Ashery.Quantities;

namespace Ashery.Tests.Quantities;

public class QuantityReaderTests
{
    // NIST Special Publication 811, appendix B.8 (from memory): 1 oz = 28.34952 g, 1 lb = 453.59237 g.
    [Theory]
    [InlineData("75g", 75)]
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

    [Theory]
    [InlineData("5mL", 0.005)]
    [InlineData("0.5 l", 0.5)]
    [InlineData("2cl", 0.02)]
    public void Volumes_read_in_litres(string text, double litres) =>
        Assert.Equal(litres, QuantityReader.Volume(text, "scoop", "5mL").Value.Litres, 1e-12);

    [Theory]
    [InlineData("", "missing")]
    [InlineData("75", "no unit")]
    [InlineData("7,5g", "comma")]
    [InlineData("0g", "not above zero")]
    [InlineData("-5g", "not above zero")]
    [InlineData("75stone", "not a unit")]
    [InlineData("5mL", "not a unit")]
    [InlineData("NaNg", "number")]
    [InlineData("g", "number")]
    [InlineData("1e9kg", "number")]
    [InlineData("99999999kg", "above 1000 kg")]
    [InlineData("111111111111111111111111111111111111111111111111111g", "too long")]
    public void What_is_no_mass_says_why_and_shows_one(string text, string message)
    {
        var problem = Assert.Single(QuantityReader.Mass(text, "batch", "75g").Problems);
        Assert.Equal("batch", problem.Field);
        Assert.Contains(message, problem.Message, StringComparison.Ordinal);
        Assert.Contains("75g", problem.WayOut, StringComparison.Ordinal);
    }
}
