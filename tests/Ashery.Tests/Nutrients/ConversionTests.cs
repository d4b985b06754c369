using Ashery.Nutrients;

namespace Ashery.Tests.Conversions;

public class ConversionTests
{
    // Factors worked out with IUPAC 2021 abridged weights (weights recalled, not looked up), to 1e-6.
    [Theory]
    [InlineData("P2O5", "P", 0.436429)]
    [InlineData("K2O", "K", 0.830150)]
    [InlineData("CaO", "Ca", 0.714696)]
    [InlineData("MgO", "Mg", 0.603042)]
    [InlineData("SO3", "S", 0.400465)]
    [InlineData("Na2O", "Na", 0.741864)]
    [InlineData("NO3", "N", 0.225905)]
    [InlineData("NH4", "N", 0.776484)]
    [InlineData("NH3", "N", 0.822441)]
    [InlineData("CO(NH2)2", "N", 0.466465)]
    [InlineData("SO4", "S", 0.333764)]
    [InlineData("PO4", "P", 0.326145)]
    [InlineData("CaCO3", "Ca", 0.400436)]
    [InlineData("MgCO3", "Mg", 0.288271)]
    [InlineData("H3BO3", "B", 0.174831)]
    public void Element_in_a_compound(string compound, string element, double factor) =>
        Assert.Equal(factor, Read(compound).Fraction(element), 1e-6);

    [Theory]
    [InlineData("P2O5", "P", 2.291325)]
    [InlineData("K2O", "K", 1.204601)]
    [InlineData("CaO", "Ca", 1.399197)]
    [InlineData("MgO", "Mg", 1.658260)]
    [InlineData("SO3", "S", 2.497099)]
    [InlineData("Na2O", "Na", 1.347956)]
    [InlineData("NO3", "N", 4.426644)]
    [InlineData("NH4", "N", 1.287856)]
    public void Compound_for_an_element_is_one_division(string compound, string element, double factor) =>
        Assert.Equal(factor, 1 / Read(compound).Fraction(element), 1e-6);

    [Theory]
    [InlineData("CaCO3", "CaO", 1.784796)]
    [InlineData("CaCO3", "MgO", 2.483277)]
    [InlineData("CaCO3", "MgCO3", 1.187077)]
    public void Lime_for_a_base(string lime, string other, double factor) =>
        Assert.Equal(factor, Read(lime).MolarMass / Read(other).MolarMass, 1e-6);

    // Printed to four places on a web page (conv-page, seen).
    [Fact]
    public void Printed_factors()
    {
        Assert.Equal(0.4364, LabelBasis.PhosphorusInP2O5, 4);
        Assert.Equal(0.8301, LabelBasis.PotassiumInK2O, 1e-4);
    }

    // Article 6 of EC 2003/2003 (from memory): the factors that law prints.
    [Theory]
    [InlineData(LabelBasis.PhosphorusInP2O5, 0.436)]
    [InlineData(LabelBasis.PotassiumInK2O, 0.830)]
    [InlineData(LabelBasis.CalciumInCaO, 0.715)]
    [InlineData(LabelBasis.MagnesiumInMgO, 0.603)]
    [InlineData(LabelBasis.SulfurInSO3, 0.400)]
    public void Statutory_factors(double factor, double printed) => Assert.Equal(printed, factor, 5e-4);

    [Fact]
    public void Constants_in_code_are_those_of_the_weights_in_the_data()
    {
        Assert.Equal(LabelBasis.PhosphorusInP2O5, Read("P2O5").Fraction("P"), 1e-12);
        Assert.Equal(LabelBasis.PotassiumInK2O, Read("K2O").Fraction("K"), 1e-12);
        Assert.Equal(LabelBasis.CalciumInCaO, Read("CaO").Fraction("Ca"), 1e-12);
        Assert.Equal(LabelBasis.MagnesiumInMgO, Read("MgO").Fraction("Mg"), 1e-12);
        Assert.Equal(LabelBasis.SulfurInSO3, Read("SO3").Fraction("S"), 1e-12);
    }

    // Molar masses as printed in the retrieved Wikipedia boxes (seen): KH2PO4 136.086, K2CO3 138.205, Ca(NO3)2 164.088 and its tetrahydrate 236.15.
    [Theory]
    [InlineData("KH2PO4", 136.086, 0.005)]
    [InlineData("K2CO3", 138.205, 0.005)]
    [InlineData("Ca(NO3)2", 164.088, 0.005)]
    [InlineData("Ca(NO3)2·4H2O", 236.15, 0.005)]
    [InlineData("FeSO4·7H2O", 278.02, 0.02)]
    public void Molar_masses_in_print(string formula, double printed, double within) => Assert.Equal(printed, Read(formula).MolarMass, within);

    [Theory]
    [InlineData("")]
    [InlineData("Xx")]
    [InlineData("(NH4")]
    [InlineData("NH4)")]
    [InlineData("()")]
    [InlineData("N·")]
    [InlineData("n")]
    [InlineData("K2SO4!")]
    [InlineData("((((((((((N))))))))))")]
    public void What_is_no_formula_is_a_problem(string text) => Assert.False(Formula.Parse(text).Ok);

    [Fact]
    public void A_number_before_a_part_multiplies_it()
    {
        var double_salt = Read("5Ca(NO3)2·NH4NO3·10H2O");
        Assert.Equal((5, 12, 24, 5 * 6 + 3 + 10), (double_salt.Count("Ca"), double_salt.Count("N"), double_salt.Count("H"), double_salt.Count("O")));
    }

    private static Formula Read(string text) => Formula.Parse(text).Value!;
}
