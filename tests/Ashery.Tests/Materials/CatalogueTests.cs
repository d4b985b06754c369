using Ashery.Materials;
using Ashery.Nutrients;

namespace Ashery.Tests.Materials;

public class CatalogueTests
{
    [Fact]
    public void Holds_at_least_a_hundred_materials_all_readable()
    {
        Assert.True(MaterialCatalogue.Default.All.Count >= 100);
        Assert.All(MaterialCatalogue.Default.All, m => Assert.True(m.Label.Percent(Nutrient.N) <= 100));
    }

    [Theory]
    [InlineData("amonium-sulfate", "ammonium-sulfate")]
    [InlineData("sulphate of ammonia", "ammonium-sulfate")]
    [InlineData("epsom", "epsom-salt")]
    [InlineData("MOP", "potassium-chloride")]
    public void Suggests_what_was_meant(string typed, string meant) => Assert.Contains(meant, MaterialCatalogue.Default.Suggest(typed));

    [Fact]
    public void Suggests_nothing_for_noise() => Assert.Empty(MaterialCatalogue.Default.Suggest("qqqqzzzzxx"));
}
