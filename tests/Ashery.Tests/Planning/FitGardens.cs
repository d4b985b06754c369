using Ashery.Climate;
using Ashery.Feeds;
using Ashery.Gardens;
using Ashery.Planning.Fit;

namespace Ashery.Tests.Planning;

/// <summary>Gardens for fits: small, with the normals a made year needs.</summary>
internal static class FitGardens
{
    public static readonly DateOnly From = new(2027, 3, 1);

    /// <summary>A mild place; south of the equator the same with the months turned by half a year.</summary>
    public static Garden Mild(double latitude = 42, params Ashery.Pots.Pot[] pots) => SomeGardens.With() with
    {
        Place = new Place { Name = "mild", Latitude = latitude, Normals = Normals(15, 10, latitude < 0 ? 6 : 0, 70) },
        Pots = pots.Length > 0 ? pots : [SomeGardens.Pot("a", 10, "bougainvillea"), SomeGardens.Pot("b", 3, "tropical-hibiscus")],
        Feeds = [SomeGardens.Mineral, SomeGardens.Organic],
    };

    public static IReadOnlyList<MonthlyNormal> Normals(double mean, double swing, int coldest, double rain) =>
    [
        .. Enumerable.Range(0, 12).Select(m =>
        {
            var t = mean - (swing * Math.Cos((m - coldest) * Math.PI / 6));
            return new MonthlyNormal(t + 5, t - 5, rain);
        }),
    ];

    public static FittedYear Fit(Garden garden, DateOnly? from = null, FitReplan? replan = null, int threads = 0)
    {
        var made = YearFit.Plan(new FitRequest(garden, from ?? From) { Draws = 40, Threads = threads, Replan = replan });
        Assert.True(made.Ok, string.Join(" ", made.Problems.Select(static p => p.Message)));
        return made.Value;
    }

    /// <summary>Days of mineral and organic feed.</summary>
    public static IEnumerable<DateOnly> Rounds(Ashery.Planning.YearPlan plan) =>
        plan.Feeds.Where(static f => f.Kind is FeedKind.Mineral or FeedKind.Organic).Select(static f => f.Date).Distinct();
}
