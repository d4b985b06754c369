using Ashery.Crops;

namespace Ashery.Tests.Crops;

public class CropCatalogueTests
{
    [Fact]
    public void Holds_at_least_forty_crops_with_ids_as_typed_on_the_command_line()
    {
        Assert.True(CropCatalogue.Default.All.Count >= 40);
        Assert.All(CropCatalogue.Default.All, crop => Assert.Matches("^[a-z]+(-[a-z]+)*$", crop.Id));
    }

    [Fact]
    public void Finds_by_id_and_answers_null_for_a_stranger()
    {
        Assert.Equal("Hibiscus rosa-sinensis", CropCatalogue.Default.Find("tropical-hibiscus")?.Latin);
        Assert.Null(CropCatalogue.Default.Find("fax-machine"));
    }

    [Theory]
    [InlineData("hibiscus", "hardy-hibiscus")]
    [InlineData("petuna", "petunia")]
    public void Suggests_what_a_misspelt_id_may_have_meant(string typed, string meant) =>
        Assert.Contains(meant, CropCatalogue.Default.Suggest(typed));

    [Fact]
    public void Suggests_nothing_for_noise_of_any_length()
    {
        Assert.Empty(CropCatalogue.Default.Suggest(new string('x', 100_000)));
        Assert.Empty(CropCatalogue.Default.Suggest(""));
    }
}
