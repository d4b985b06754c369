using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Problems;

namespace Ashery.Tests.Materials;

public class InlineMaterialTests
{
    private static readonly MaterialCatalogue Catalogue = MaterialCatalogue.Default;

    // Grades of the trade, printed on bags: common practice, no source.
    [Theory]
    [InlineData("urea=46-0-0")]
    [InlineData("map-granular=12-61-0")]
    [InlineData("map-granular=11-52-0")]
    [InlineData("dap-granular=18-46-0")]
    [InlineData("potassium-chloride=0-0-60")]
    [InlineData("potassium-sulfate=0-0-50")]
    [InlineData("ammonium-sulfate=21-0-0")]
    [InlineData("magnesium-nitrate-hexahydrate=11-0-0")]
    [InlineData("neem-cake=4-1-1.5")]
    public void Grades_of_the_trade_pass(string text)
    {
        var read = InlineMaterial.Parse(text, Catalogue);
        Assert.True(read.Ok, string.Join(' ', read.Problems));
        Assert.Equal(text[(text.IndexOf('=') + 1)..], GradeReader.Write(read.Value.Label));
        Assert.Equal(text[..text.IndexOf('=')], read.Value.Id);
        Assert.All(read.Problems, p => Assert.NotEqual(Severity.Error, p.Severity));
    }

    [Theory]
    [InlineData("urea=48-0-0", "more than the pure salt holds")] // pure urea: 46.65 % N, from its formula
    [InlineData("map-granular=12-65-0", "more than the pure salt holds")]
    [InlineData("potassium-sulfate=0-0-60", "more than the pure salt holds")]
    [InlineData("ammonium-sulfate=21-5-0", "holds no P2O5")]
    [InlineData("urea=46,5-0-0", "comma")]
    [InlineData("urea=46:0:0", "ratio")]
    [InlineData("urea=46-0", "three figures")]
    [InlineData("urea=-46-0-0", "negative")]
    [InlineData("urea=x-0-0", "not a number")]
    [InlineData("urea=NaN-0-0", "not a finite number")]
    [InlineData("neem-cake=60-30-20", "add up to 110 %")]
    [InlineData("ureaa=46-0-0", "not in the catalogue")]
    [InlineData("=46-0-0", "no name")]
    public void What_cannot_be_is_explained(string text, string words)
    {
        var read = InlineMaterial.Parse(text, Catalogue);
        Assert.False(read.Ok);
        Assert.Contains(read.Problems, p => p.Message.Contains(words, StringComparison.Ordinal));
    }

    [Fact]
    public void An_unknown_name_brings_the_nearest() =>
        Assert.Contains("urea", InlineMaterial.Parse("ureaa", Catalogue).Problems[0].WayOut, StringComparison.Ordinal);

    [Fact]
    public void Keeps_the_proportions_of_nitrogen_and_the_other_contents()
    {
        var plain = Catalogue.Find("calcium-ammonium-nitrate")!;
        var read = InlineMaterial.Parse("calcium-ammonium-nitrate=25-0-0", Catalogue).Value!;
        Assert.Equal(0.25, read.Nitrogen.Total, 12);
        Assert.Equal(plain.Nitrogen.Nitrate / plain.Nitrogen.Total, read.Nitrogen.Nitrate / read.Nitrogen.Total, 12);
        Assert.Equal(plain.Label[Nutrient.Ca], read.Label[Nutrient.Ca]);
    }

    [Fact]
    public void Technical_map_brings_its_own_sulfur_density_and_solubility()
    {
        var read = InlineMaterial.Parse("map-granular=12-61-0", Catalogue);
        Assert.Equal(0, read.Value!.Label[Nutrient.S]);
        Assert.Equal(Catalogue.Find("map-technical")!.BulkDensity, read.Value.BulkDensity);
        Assert.True(read.Value.Dissolves);
        Assert.Contains(read.Problems, p => p.Severity == Severity.Note && p.Message.Contains("technical grade", StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_kept_is_said()
    {
        var read = InlineMaterial.Parse("ammonium-sulfate=20.5-0-0", Catalogue);
        Assert.Contains("S 24 %", read.Problems[^1].Message, StringComparison.Ordinal);
    }

    // 1.10 kg CaCO3 a kg is printed for ammonium sulfate (source acidity-lbton, seen); at 20.5 % N Pierre's rule takes off
    // 0.5 x 0.005 / 14.007 x 50.04 = 0.0089.
    [Fact]
    public void Lime_equivalent_moves_with_the_nitrogen() =>
        Assert.Equal(1.1 - 0.0089, InlineMaterial.Parse("ammonium-sulfate=20.5-0-0", Catalogue).Value!.LimeEquivalent!.Value, 3);
}
