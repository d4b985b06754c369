using Ashery.Compatibility;
using Ashery.Materials;

namespace Ashery.Tests.Compatibility;

/// <summary>
/// Solubilities in g to 1 kg of water, CRC Handbook 98th ed. (seen as a data file made from its table): potassium sulfate 92.4 at
/// 10 °C, 110.5 at 20 °C; ammonium sulfate 727.1 and 751.3; mono-ammonium phosphate 282.1 and 358.7; potassium nitrate 319.3 at 20 °C.
/// </summary>
public class StockStrengthTests
{
    private static readonly StockStrength Strengths = new();

    [Fact]
    public void Potassium_sulfate_sets_the_strength_of_its_mixtures()
    {
        var bound = Of("ammonium-sulfate", "potassium-sulfate");
        Assert.Equal("potassium sulfate", bound.Salt);
        Assert.Equal(1 / ((0.5 / 110.5) + (0.5 / 751.3)), bound.At20, 6);
        Assert.Equal(1 / ((0.5 / 92.4) + (0.5 / 727.1)), bound.At10, 6);
    }

    [Fact]
    public void Granular_map_is_bounded_by_the_pure_salt() =>
        Assert.Equal(1 / ((0.5 / 358.7) + (0.5 / 751.3)), Of("map-granular", "ammonium-sulfate").At20, 6);

    [Fact]
    public void A_salt_formed_across_the_two_counts_even_where_neither_part_holds_it()
    {
        // Potassium nitrate 13.8-0-46 (label) with ammonium sulfate 21 N 24 S: the potassium of half a gram, 0.5 x 0.46 x 2 / 94.195
        // mol, needs half as much sulfate, which is there; as potassium sulfate it is 0.426 g for each gram of the mix.
        var bound = Of("potassium-nitrate", "ammonium-sulfate");
        var label = MaterialCatalogue.Default.Find("potassium-nitrate")!.Label[Ashery.Nutrients.Nutrient.K];
        Assert.Equal("potassium sulfate", bound.Salt);
        Assert.Equal(110.5 / (0.5 * label * 2 / 94.195 / 2 * 174.252), bound.At20, 0.5);
    }

    [Fact]
    public void The_words_carry_the_figure_for_equal_weights_and_the_rule_for_others()
    {
        var limit = CompatibilityChart.Default
            .Judge(MaterialCatalogue.Default.Find("map-granular")!, MaterialCatalogue.Default.Find("potassium-sulfate")!).InSolution.Limit!;
        Assert.Contains("half and half at most 168 g", limit, StringComparison.Ordinal);
        Assert.Contains("below 1", limit, StringComparison.Ordinal);
        Assert.Contains("110.5 g/L", limit, StringComparison.Ordinal);
    }

    private static Strength Of(string a, string b) => Strengths.Of(MaterialCatalogue.Default.Find(a)!, MaterialCatalogue.Default.Find(b)!)!;
}
