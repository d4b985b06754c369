using Ashery.Feeds;
using Ashery.Materials;
using Ashery.Nutrients;

namespace Ashery.Tests.Feeds;

public class FeedMakerTests
{
    private static Feed Made(params (string Material, double Share)[] parts) => FeedMaker.FromParts(
        "f", "f", FeedKind.Mineral, parts.ToDictionary(static p => p.Material, static p => p.Share), MaterialCatalogue.Default.Find, "feed").Value!;

    // Common practice, no source: 8 parts ammonium sulfate, 1 part 12-61-0 and 6 parts 0-0-50 by weight give 12.0-4.07-20.0.
    [Fact]
    public void Eight_one_six_is_twelve_four_twenty()
    {
        var feed = Made(("ammonium-sulfate", 8 / 15.0), ("map-technical", 1 / 15.0), ("potassium-sulfate", 6 / 15.0));
        Assert.Equal(12.0, feed.Label.Percent(Nutrient.N), 1);
        Assert.Equal(4.07, feed.Label.Percent(Nutrient.P), 1);
        Assert.Equal(20.0, feed.Label.Percent(Nutrient.K), 1);
        Assert.Equal(feed.Label[Nutrient.N], feed.Nitrogen.Total, 3);
    }

    [Fact]
    public void What_falls_out_of_solution_together_never_counts_as_dissolving()
    {
        Assert.True(Made(("potassium-nitrate", 1)).Dissolves);
        Assert.True(Made(("calcium-nitrate-tetrahydrate", 1)).Dissolves);
        Assert.False(Made(("calcium-nitrate-tetrahydrate", 0.5), ("epsom-salt", 0.5)).Dissolves);
        Assert.False(Made(("potassium-nitrate", 0.5), ("neem-cake", 0.5)).Dissolves);
    }

    // Rader, White and Whittaker 1943 (from memory): sodium nitrate 100; monopotassium phosphate 8.4, though a mole of it sets two osmoles free.
    [Fact]
    public void Phosphates_count_by_osmolality_where_no_soil_binds_them()
    {
        var mkp = Made(("mkp", 1));
        Assert.Equal(8.4, FeedSalt.Index(mkp, soilless: false)!.Value, 1);

        // 2 / 136.09 g/mol against 2 / 84.99 g/mol of sodium nitrate.
        Assert.InRange(FeedSalt.Index(mkp, soilless: true)!.Value, 100 * 84.99 / 136.09 * 0.97, 100 * 84.99 / 136.09 * 1.03);
        var nitrate = Made(("potassium-nitrate", 1));
        Assert.Equal(FeedSalt.Index(nitrate, soilless: false), FeedSalt.Index(nitrate, soilless: true));
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(1.5)]
    [InlineData(double.NaN)]
    [InlineData(-1)]
    public void Shares_that_do_not_add_up_are_named(double share)
    {
        var made = FeedMaker.FromParts("f", "f", FeedKind.Mineral, new Dictionary<string, double> { ["urea"] = share }, MaterialCatalogue.Default.Find, "feeds[0]");
        Assert.False(made.Ok);
        Assert.All(made.Problems, static p => Assert.StartsWith("feeds[0].parts", p.Field, StringComparison.Ordinal));
    }

    [Fact]
    public void An_unknown_figure_of_a_part_makes_the_sum_unknown() => Assert.Null(Made(("potassium-nitrate", 0.5), ("neem-cake", 0.5)).SaltIndex);
}
