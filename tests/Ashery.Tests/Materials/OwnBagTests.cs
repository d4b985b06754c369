using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Problems;

namespace Ashery.Tests.Materials;

public class OwnBagTests
{
    private static readonly MaterialCatalogue Catalogue = MaterialCatalogue.Default;

    [Fact]
    public void A_bag_of_a_salt_keeps_what_its_label_does_not_name()
    {
        var known = Catalogue.Find("ammonium-sulfate")!;
        var bag = OwnBag.Of(known, Lines("N 20.5"), id: "green-shed-sulfate", name: "Sulfate from the shed").Value!;
        Assert.Equal("green-shed-sulfate", bag.Id);
        Assert.Equal(0.205, bag.Label[Nutrient.N], 12);
        Assert.Equal(0.205, bag.Nitrogen.Ammonium, 12);
        Assert.Equal(known.Label[Nutrient.S], bag.Label[Nutrient.S]);
        Assert.Equal(known.CompatibilityGroup, bag.CompatibilityGroup);
    }

    [Fact]
    public void Typed_forms_replace_the_proportions()
    {
        var bag = OwnBag.Of(Catalogue.Find("calcium-ammonium-nitrate")!, Lines("N 26; NO3-N 12; NH4-N 14")).Value!;
        Assert.Equal(0.12, bag.Nitrogen.Nitrate, 12);
        Assert.Equal(0.14, bag.Nitrogen.Ammonium, 12);
    }

    [Fact]
    public void A_compound_brings_ions_hazards_and_a_lime_equivalent_of_its_label()
    {
        var bag = OwnBag.Compound("rose-feed", "Rose feed", MaterialKind.Straight, Lines("NH4-N 7; NO3-N 5; P2O5 8; K2O 16; MgO 3; S 8"), dissolves: true).Value!;
        Assert.Equal(0.12, bag.Label[Nutrient.N], 12);
        Assert.True(bag.Hazards.Contains(Hazard.Oxidiser));
        Assert.True(bag.Hazards.Contains(Hazard.AmmoniaWithAlkali));
        Assert.Superset(new HashSet<string> { "ammonium", "nitrate", "phosphate", "potassium", "magnesium", "sulfate" }, bag.Ions.ToHashSet());

        // Pierre's rule by hand, eq/kg: N 0.5x120/14.007=4.284, S 2x80/32.06=4.990, P 34.91/30.974=1.127, K 132.82/39.098=3.397, Mg 2x18.09/24.305=1.489.
        Assert.Equal((4.284 + 4.990 + 1.127 - 3.397 - 1.489) * 0.050043, bag.LimeEquivalent!.Value, 3);
        Assert.Null(bag.SaltIndex);
    }

    [Fact]
    public void A_compound_without_forms_says_how_it_is_reckoned() =>
        Assert.Contains(OwnBag.Compound("x", "X", MaterialKind.Straight, Lines("N 12"), dissolves: false).Problems, p => p.Severity == Severity.Warning);

    [Theory]
    [InlineData("")]
    [InlineData("Rose Feed")]
    [InlineData("=cmd")]
    [InlineData("-x")]
    [InlineData("a/b")]
    public void Ids_that_cannot_be_are_refused(string id) =>
        Assert.Equal("id", OwnBag.Compound(id, "X", MaterialKind.Straight, Lines("N 12"), dissolves: false).Problems[0].Field);

    private static IReadOnlyList<LabelLine> Lines(string label) => LabelReader.Parse(label).Value!;
}
