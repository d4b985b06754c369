using Ashery.Nutrients;
using Ashery.Problems;
using Ashery.Recipes;

namespace Ashery.Tests.Recipes;

public class WishReaderTests
{
    [Theory]
    [InlineData("17:5:24")]
    [InlineData(" 17 : 5 : 24 ")]
    [InlineData("N=17,P2O5=5,K2O=24")]
    [InlineData("N 17; P2O5 5; K2O 24")]
    [InlineData("k2o=24 n=17 p2o5=5")]
    public void Reads_a_ratio_however_it_is_written(string text)
    {
        var wish = WishReader.Parse(text).Value!;
        Assert.False(wish.IsGrade);
        Assert.Equal("17:5:24", wish.Name);
        Assert.Equal(17, wish.Shares[Nutrient.N]);
        Assert.Equal(5, wish.Shares[Nutrient.P]);
        Assert.Equal(24, wish.Shares[Nutrient.K]);
    }

    [Fact]
    public void Reads_secondary_and_trace_nutrients_by_name()
    {
        var wish = WishReader.Parse("17:5:24 Ca 4 Mg=2 0.1Fe").Value!;
        Assert.Equal(4, wish.Shares[Nutrient.Ca]);
        Assert.Equal(2, wish.Shares[Nutrient.Mg]);
        Assert.Equal(0.1, wish.Shares[Nutrient.Fe]);
        Assert.Equal("17:5:24 Ca 4 Mg 2 Fe 0.1", wish.Name);
    }

    [Fact]
    public void Reads_a_grade_as_mass_fractions()
    {
        var wish = WishReader.Parse("12-4-20 + 2 MgO").Value!;
        Assert.True(wish.IsGrade);
        Assert.Equal(0.12, wish.Shares[Nutrient.N], 1e-12);
        Assert.Equal(0.04, wish.Shares[Nutrient.P], 1e-12);
        Assert.Equal(0.20, wish.Shares[Nutrient.K], 1e-12);

        // 2 MgO hold 1.206 Mg: factor 0.6030 of the EC conversion table (Regulation 2003/2003, article 6; from memory).
        Assert.Equal(0.01206, wish.Shares[Nutrient.Mg], 0.00001);
    }

    [Fact]
    public void The_element_and_the_oxide_are_told_apart_and_the_conversion_is_said()
    {
        var read = WishReader.Parse("N=10 P=2.2 K=8.3");
        Assert.Equal(5.04, read.Value!.Shares[Nutrient.P], 0.01);
        Assert.Equal(10.0, read.Value.Shares[Nutrient.K], 0.01);
        Assert.Equal(2, read.Problems.Count);
        Assert.All(read.Problems, p => Assert.Equal(Severity.Note, p.Severity));
    }

    [Fact]
    public void A_hyphened_ratio_stays_a_ratio_where_a_ratio_is_asked_for()
    {
        Assert.False(WishReader.ParseRatio("17-5-24").Value!.IsGrade);
        Assert.True(WishReader.ParseGrade("17:5:24").Value!.IsGrade);
    }

    [Fact]
    public void A_zero_of_N_P_or_K_is_kept_as_wanted_absent() =>
        Assert.Equal(0, WishReader.Parse("1:0:1").Value!.Shares[Nutrient.P]);

    [Theory]
    [InlineData(null, "Nothing is wanted")]
    [InlineData("   ", "Nothing is wanted")]
    [InlineData("0:0:0", "Every part is zero")]
    [InlineData("0-0-0", "Every part is zero")]
    [InlineData("17:5", "2 parts")]
    [InlineData("17:5:24:2", "4 parts")]
    [InlineData("-17:5:24", "below 0")]
    [InlineData("NaN:5:24", "not a number")]
    [InlineData("Infinity:5:24", "above 1000000")]
    [InlineData("1e999:5:24", "above 1000000")]
    [InlineData("17::24", "missing")]
    [InlineData("17,5:5:24", "comma inside a number")]
    [InlineData("N=17,5", "comma inside a number")]
    [InlineData("seventeen", "not a nutrient")]
    [InlineData("17 5 24", "no nutrient's name")]
    [InlineData("N=17 N=18", "given twice")]
    [InlineData("17:5:24 N 3", "given twice")]
    [InlineData("17:5:24 Xx 3", "not a nutrient")]
    [InlineData("17:5:24 Mg", "missing")]
    [InlineData("17:5:24 Mg two", "not a number")]
    [InlineData("17:5:24 Mg 0", "wanted as zero")]
    [InlineData("17:5:24 Cl 2", "watched, not wanted")]
    [InlineData("60-30-20", "110 %")]
    [InlineData("12-4", "2 parts")]
    [InlineData("12--4-20", "4 parts")]
    [InlineData("101-0-0", "above 100")]
    [InlineData("1:5:24 Fe 0.00000001", "ten million times")]
    [InlineData("<script>alert(1)</script>", "not a nutrient")]
    [InlineData("\u202E17:5:24", "not a number")]
    public void Says_what_is_wrong_with_field_and_way_out(string? text, string message)
    {
        var read = WishReader.Parse(text);
        Assert.False(read.Ok);
        var problem = Assert.Single(read.Problems);
        Assert.Contains(message, problem.Message, StringComparison.Ordinal);
        Assert.NotEmpty(problem.Field);
        Assert.NotEmpty(problem.WayOut);
        Assert.DoesNotContain('\u202E', problem.Message);
    }

    [Fact]
    public void A_very_long_text_is_refused_unread() =>
        Assert.Contains("longer than", WishReader.Parse(new string('1', 1_000_000)).Problems[0].Message, StringComparison.Ordinal);
}
