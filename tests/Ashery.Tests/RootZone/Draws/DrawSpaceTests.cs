using Ashery.Materials;
using Ashery.RootZone;
using Ashery.RootZone.Draws;
using Ashery.RootZone.Feeding;

namespace Ashery.Tests.RootZone.Draws;

public class DrawSpaceTests
{
    [Fact]
    public void Every_constant_with_a_range_is_drawn_or_said_not_to_be()
    {
        var ranged = RootZoneConstants.Default.All.Where(static c => c.Low is not null).Select(static c => c.Id).Order(StringComparer.Ordinal);
        var grouped = SpreadRows.Groups.SelectMany(static g => g.Constants).Order(StringComparer.Ordinal).ToList();
        Assert.Equal(ranged, grouped);
        Assert.All(SpreadRows.Groups.Where(static g => g.Id != "none").SelectMany(static g => g.Constants), static id => Assert.NotEqual(id, ConstantWords.Of(id)));
        Assert.All(Enum.GetValues<UncertainGroup>(), static g => Assert.NotEmpty(SpreadRows.NameOf(g)));
    }

    [Fact]
    public void No_draw_leaves_its_range()
    {
        foreach (var figure in DrawSpace.Of(Terrace.Scenario()).Figures)
        {
            Assert.True(figure.Low <= figure.Usual && figure.Usual <= figure.High, figure.Id);
            Assert.Equal(figure.Low, figure.At(0), 1e-9);
            Assert.Equal(figure.High, figure.At(1), 1e-9);
        }
    }

    /// <summary>Mean and variance of a triangular distribution, (a + b + c)/3 and (a² + b² + c² - ab - ac - bc)/18 (any textbook of statistics).</summary>
    [Theory]
    [InlineData(0, 2, 10)]
    [InlineData(1.3, 1.3, 2)]
    [InlineData(-1, 4, 4)]
    public void Draws_have_the_mean_and_spread_of_the_triangle(double low, double top, double high)
    {
        var figure = new UncertainFigure("f", "f", UncertainGroup.Plant, low, top, high);
        const int N = 20_000;
        var values = LatinHypercube.Of(["f"], N, 3, 0).Select(figure.At).ToList();
        Assert.Equal((low + top + high) / 3, values.Average(), 2e-4 * (high - low));
        var variance = ((low * low) + (top * top) + (high * high) - (low * top) - (low * high) - (top * high)) / 18;
        Assert.Equal(variance, values.Sum(v => Math.Pow(v - figure.Mean, 2)) / N, 1e-3 * variance);
        Assert.Equal(Math.Sqrt(variance), figure.Deviation, 1e-12);
    }

    [Fact]
    public void A_hypercube_has_one_draw_in_each_stratum_of_each_figure_and_no_figure_goes_with_another()
    {
        const int N = 500;
        string[] ids = ["a", "b", "c"];
        var shares = LatinHypercube.Of(ids, N, 11, 0);
        for (var j = 0; j < 3; j++)
        {
            var strata = Enumerable.Range(0, N).Select(i => (int)(shares[(i * 3) + j] * N)).Order().ToList();
            Assert.Equal(Enumerable.Range(0, N), strata);
        }

        // Correlation of independent columns has a standard error of 1/sqrt(N) = 0.045.
        for (var (j, k) = (0, 1); j < 2; j++, k = 2)
        {
            var r = Enumerable.Range(0, N).Average(i => (shares[(i * 3) + j] - 0.5) * (shares[(i * 3) + k] - 0.5)) * 12;
            Assert.InRange(r, -0.18, 0.18);
        }

        // A figure keeps its draws when another joins before it.
        var more = LatinHypercube.Of(["z", .. ids], N, 11, 0);
        Assert.Equal(shares[3], more[5]);
    }

    [Fact]
    public void Feeds_rot_within_the_range_of_their_class_and_keep_their_nitrogen()
    {
        var meal = FeedBuilder.Of(MaterialCatalogue.Default.Find("neem-cake")!);
        var scenario = Terrace.Scenario() with { Events = [new DryFeedEvent(Terrace.Start, meal, 10)] };
        var space = DrawSpace.Of(scenario);
        Assert.Contains(space.Figures, static f => f.Id == "cake-fast");
        Assert.DoesNotContain(space.Figures, static f => f.Id is "meal-fast" or "coated-rate" or "can-strength");
        var shares = space.Figures.Select(static f => f.Id is "cake-fast" ? 0.99 : (f.Usual - f.Low) / (f.High - f.Low)).ToArray();
        var drawn = Assert.IsType<DryFeedEvent>(Assert.Single(DrawnFeeds.Of(scenario, scenario.Medium, space, shares)));
        Assert.Equal(meal.Nitrogen, drawn.Feed.Nitrogen, 1e-12);
        Assert.Equal(10, drawn.Grams, 1e-9);
        Assert.True(drawn.Feed.CakeN / drawn.Feed.OrganicN > OrganicClass.Cake.FastShare.Value);
    }
}
