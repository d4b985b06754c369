using Ashery.Quantities;
using CsCheck;

namespace Ashery.Tests.Quantities;

public class QuantityTextTests
{
    [Theory]
    [InlineData(0, "0 g")]
    [InlineData(0.0854, "85.4 mg")]
    [InlineData(0.35, "0.35 g")]
    [InlineData(75, "75 g")]
    [InlineData(43.1818, "43.2 g")]
    [InlineData(1234.5, "1.23 kg")]
    public void Metric_masses(double grams, string text) => Assert.Equal(text, QuantityText.Of(new Mass(grams)));

    [Theory]
    [InlineData(100, "3.53 oz")]
    [InlineData(1000, "2.2 lb")]
    public void Us_masses(double grams, string text) => Assert.Equal(text, QuantityText.Of(new Mass(grams), usUnits: true));

    [Theory]
    [InlineData(0.005, false, "5 mL")]
    [InlineData(10, false, "10 L")]
    [InlineData(0.005, true, "1 tsp")]
    [InlineData(0.0591, true, "2 fl oz")]
    [InlineData(3.785411784, true, "1 gal")]
    public void Volumes(double litres, bool us, string text) => Assert.Equal(text, QuantityText.Of(new Volume(litres), us));

    [Fact]
    public void What_is_written_is_read_back_to_half_a_percent() =>
        Gen.Double[1e-4, 9e5].Sample(grams =>
        {
            var back = QuantityReader.Mass(QuantityText.Of(new Mass(grams)), "mass").Value.Grams;
            return Math.Abs(back - grams) <= 0.0051 * grams;
        });
}
