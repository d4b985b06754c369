using Ashery.Cautions;
using Ashery.Materials;
using Ashery.Sources;

namespace Ashery.Tests.Cautions;

public class CautionTests
{
    private static readonly CautionIndex Index = CautionIndex.Default;

    [Fact]
    public void Every_hazard_has_words() =>
        Assert.All(Enum.GetValues<Hazard>(), hazard =>
        {
            var material = Find("filler-sand") with { Hazards = new HashSet<Hazard> { hazard } };
            var without = Find("filler-sand") with { Hazards = new HashSet<Hazard>() };
            var added = Index.CautionsFor([material], Enum.GetValues<CautionUse>()).Except(Index.CautionsFor([without], Enum.GetValues<CautionUse>()));
            Assert.NotEmpty(added);
        });

    [Fact]
    public void The_label_comes_first_whatever_is_done() =>
        Assert.All(Enum.GetValues<CautionUse>(), use => Assert.Equal("label-first", Index.CautionsFor([], use)[0]));

    [Theory]
    [InlineData("castor-cake", CautionUse.Mixing, "ricin")]
    [InlineData("nitric-acid", CautionUse.Dissolving, "acid-into-water")]
    [InlineData("potassium-nitrate", CautionUse.Storing, "oxidiser")]
    [InlineData("ammonium-nitrate", CautionUse.Storing, "explosive-precursor")]
    [InlineData("ammonium-sulfate", CautionUse.Mixing, "ammonia")]
    [InlineData("bone-meal-steamed", CautionUse.Feeding, "animal-by-product")]
    [InlineData("copper-sulfate-pentahydrate", CautionUse.Feeding, "water-life")]
    [InlineData("boric-acid", CautionUse.Mixing, "narrow-margin")]
    [InlineData("epsom-salt", CautionUse.Spraying, "spray-cool-morning")]
    [InlineData("potassium-sulfate", CautionUse.Feeding, "run-off")]
    [InlineData("potassium-sulfate", CautionUse.Mixing, "wash-hands")]
    [InlineData("potassium-sulfate", CautionUse.Storing, "children-and-animals")]
    [InlineData("potassium-sulfate", CautionUse.Overdose, "overdose-flush")]
    public void The_dangers_of_a_use_are_named(string material, CautionUse use, string caution) =>
        Assert.Contains(caution, Index.CautionsFor([Find(material)], use));

    [Fact]
    public void A_harmless_salt_brings_no_warning_of_acid_or_fire()
    {
        var ids = Index.CautionsFor([Find("potassium-sulfate")], CautionUse.Mixing, CautionUse.Storing);
        Assert.DoesNotContain("acid-into-water", ids);
        Assert.DoesNotContain("oxidiser", ids);
    }

    [Fact]
    public void Words_are_short_and_have_a_listed_source() =>
        Assert.All(Index.All, caution =>
        {
            Assert.InRange(caution.Words.Length, 20, 220);
            Assert.EndsWith(".", caution.Words, StringComparison.Ordinal);
            Assert.NotNull(SourceIndex.Default.Find(caution.SourceId));
            Assert.Same(caution, Index.Find(caution.Id));
        });

    private static Material Find(string id) => MaterialCatalogue.Default.Find(id)!;
}
