using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Problems;

namespace Ashery.Tests.Materials;

public class LabelCheckTests
{
    private static readonly MaterialCatalogue Catalogue = MaterialCatalogue.Default;

    // Pure K2SO4 by IUPAC weights: 44.87 % K = 54.06 % K2O; pure KH2PO4: 22.76 % P = 52.15 % P2O5.
    [Theory]
    [InlineData("potassium-sulfate", "K2O 41.5", "K2O", "K")]
    [InlineData("potassium-sulfate", "K2O 44.9", "K2O", "K")]
    [InlineData("mkp", "P2O5 22.7; K2O 34", "P2O5", "P")]
    public void Oxide_and_element_confused_are_asked_about(string id, string label, string typed, string meant)
    {
        var warning = Assert.Single(Check(id, label).Problems, p => p.Severity == Severity.Warning);
        Assert.Equal($"label, {typed}", warning.Field);
        Assert.EndsWith($"type it as {meant}.", warning.WayOut, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("potassium-sulfate", "K 50", "type it as K2O")]
    [InlineData("mkp", "P 52; K 34", "type it as P2O5")]
    [InlineData("epsom-salt", "Mg 16", "type it as MgO")]
    [InlineData("calcium-nitrate-double", "N 15.5; Ca 26", "type it as CaO")]
    [InlineData("potassium-sulfate", "K2O 60", "At most 54.06 % is possible")]
    [InlineData("ammonium-sulfate", "N 21; P2O5 5", "Choose another material")]
    [InlineData("iron-edta", "Fe 13; Mg 2", "Choose another material")]
    public void More_than_the_pure_salt_is_refused(string id, string label, string wayOut)
    {
        var check = Check(id, label);
        Assert.False(check.Ok);
        Assert.Contains(check.Problems, p => p.WayOut.Contains(wayOut, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("N 60; P2O5 30; K2O 20", "add up to")]
    [InlineData("K2O 60; Cl 47; Na 10", "add up to")]
    [InlineData("N 10; NH4-N 8; NO3-N 5", "more than the total")]
    [InlineData("Fe 500", "more than the whole bag")]
    [InlineData("N 20; N 21", "twice")]
    [InlineData("K2O 46; K 46", "not the same content")]
    public void What_cannot_be_of_any_bag_is_refused(string label, string words)
    {
        var check = LabelCheck.Check(LabelReader.Parse(label).Value!);
        Assert.False(check.Ok);
        Assert.Contains(check.Problems, p => p.Message.Contains(words, StringComparison.Ordinal));
    }

    [Fact]
    public void Traces_typed_in_percent_are_explained_as_milligrams()
    {
        var problem = Assert.Single(LabelCheck.Check(LabelReader.Parse("Fe 500").Value!).Problems);
        Assert.Contains("500 mg/kg is 0.05 %", problem.WayOut, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(-1)]
    public void Figures_from_a_file_that_are_no_contents_are_refused(double percent) =>
        Assert.False(LabelCheck.Check([new LabelLine(LabelItem.N, percent)]).Ok);

    [Fact]
    public void Both_bases_that_agree_are_fine() => Assert.Empty(Check("potassium-sulfate", "K2O 50; K 41.5; SO3 44; S 17.6").Problems);

    [Fact]
    public void Missing_forms_are_a_warning() =>
        Assert.Equal(Severity.Warning, Assert.Single(LabelCheck.Check(LabelReader.Parse("N 20; NO3-N 12").Value!).Problems).Severity);

    // Conversion as printed on labels (article 6 of EC 2003/2003, from memory): Ca = CaO x 0.715, Mg = MgO x 0.603, S = SO3 x 0.400.
    [Theory]
    [InlineData("CaO 26", Nutrient.Ca, 26 * 0.715)]
    [InlineData("MgO 16", Nutrient.Mg, 16 * 0.603)]
    [InlineData("SO3 32", Nutrient.S, 32 * 0.400)]
    [InlineData("P 22.7", Nutrient.P, 22.7 / 0.436)]
    [InlineData("K 41.5", Nutrient.K, 41.5 / 0.830)]
    [InlineData("B 200 mg/kg", Nutrient.B, 0.02)]
    [InlineData("Fe 5 g/kg", Nutrient.Fe, 0.5)]
    public void Every_basis_becomes_ours(string label, Nutrient nutrient, double percent) =>
        Assert.Equal(percent, LabelCheck.Check(LabelReader.Parse(label).Value!).Value!.Label.Percent(nutrient), percent * 0.0015);

    [Theory]
    [InlineData("N 13,5", "comma")]
    [InlineData("XX 5", "not a nutrient")]
    [InlineData("N", "not a line")]
    [InlineData("", "empty")]
    [InlineData("N -5", "negative")]
    [InlineData("N NaN", "not a line")]
    public void Lines_that_cannot_be_read_are_explained(string label, string words) =>
        Assert.Contains(LabelReader.Parse(label).Problems, p => p.Message.Contains(words, StringComparison.Ordinal));

    private static Result<CheckedLabel> Check(string id, string label) =>
        LabelCheck.Check(LabelReader.Parse(label).Value!, Catalogue.Find(id));
}
