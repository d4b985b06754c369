using Ashery.Climate;
using Ashery.Feeds;
using Ashery.Gardens;
using Ashery.Planning;

namespace Ashery.Tests.Planning;

/// <summary>The same climate north and south of the equator, half a year apart; every rule judged from the month's figures, not from the plan's seasons.</summary>
public class HemisphereTests
{
    // Invented normals: cold winter, hot July, wet October (north).
    private static readonly MonthlyNormal[] North =
    [
        new(8, 0, 60), new(10, 1, 55), new(15, 5, 60), new(20, 9, 70), new(25, 14, 60), new(30, 19, 30),
        new(35, 23, 10), new(33, 22, 25), new(28, 17, 90), new(21, 12, 190), new(15, 6, 120), new(9, 2, 80),
    ];

    private static readonly MonthlyNormal[] South = [.. Enumerable.Range(0, 12).Select(static m => North[(m + 6) % 12])];

    private static Garden Garden(MonthlyNormal[] normals, double latitude) =>
        SomeGardens.With() with { Place = new Place { Name = "x", Latitude = latitude, Normals = normals } };

    public static TheoryData<double, int> Places => new() { { 44, 1 }, { 44, 7 }, { -38, 1 }, { -38, 7 }, { -38, 11 } };

    [Theory]
    [MemberData(nameof(Places))]
    public void A_year_keeps_every_season_rule(double latitude, int firstMonth)
    {
        var normals = latitude > 0 ? North : South;
        var plan = YearPlanner.Plan(new(Garden(normals, latitude), new(2027, firstMonth, 1)));
        Assert.NotEmpty(plan.Feeds);
        Assert.All(plan.Feeds, f =>
        {
            var month = normals[f.Date.Month - 1];
            Assert.False((month.MeanMax + month.MeanMin) / 2 < 10, "nothing in rest");
            Assert.False(f.Kind is FeedKind.Mineral or FeedKind.Foliar or FeedKind.TraceElements && month.MeanMax >= 32, "no salts in heat");
            Assert.False(f.Kind == FeedKind.Organic && month.RainMm >= 150, "no meal in the rains");
        });

        // Not kept by feeding nothing: the hot months get organic feed, the wet month mineral.
        Assert.Contains(plan.Feeds, f => f.Kind == FeedKind.Organic && normals[f.Date.Month - 1].MeanMax >= 32);
        Assert.Contains(plan.Feeds, f => f.Kind == FeedKind.Mineral && normals[f.Date.Month - 1].RainMm >= 150);
        Assert.Contains(plan.Feeds, static f => f.Kind == FeedKind.Foliar);
    }

    [Fact]
    public void Half_a_year_apart_the_two_get_the_same_nitrogen()
    {
        var north = YearPlanner.Plan(new(Garden(North, 44), new(2027, 1, 1)));
        var south = YearPlanner.Plan(new(Garden(South, -44), new(2027, 7, 1)));
        foreach (var (a, b) in north.Supply.Zip(south.Supply))
        {
            Assert.InRange(b.Season, a.Season * 0.93, a.Season * 1.07);
        }
    }

    // Lang and Elliott 1991 (seen): nitrification is negligible in acid media; the temperature, 15 °C, is from memory.
    [Fact]
    public void Ammonium_in_cool_months_is_pointed_out()
    {
        var plan = YearPlanner.Plan(new(Garden(North, 44), new(2027, 1, 1)));
        Assert.All(plan.Feeds.Where(static f => f.Kind == FeedKind.Mineral), static f =>
        {
            var month = North[f.Date.Month - 1];
            Assert.Equal((month.MeanMax + month.MeanMin) / 2 < 15, f.Reasons.Any(static r => r.Contains("mostly ammonium", StringComparison.Ordinal)));
        });
    }
}
