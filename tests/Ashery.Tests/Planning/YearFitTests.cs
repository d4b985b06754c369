using Ashery.Climate;
using Ashery.Gardens;
using Ashery.Planning;
using Ashery.Planning.Fit;

namespace Ashery.Tests.Planning;

/// <summary>What a fitted year promises.</summary>
public class YearFitTests
{
    [Fact]
    public void It_fares_better_than_the_calendar_on_years_it_was_not_fitted_to()
    {
        var year = FitGardens.Fit(FitGardens.Mild());
        Assert.True(year.Gained);
        Assert.True(year.Fitted.Score < year.BesideMeasure.Score, $"{year.Fitted} against {year.BesideMeasure}");
        Assert.Equal(FitGardens.Rounds(year.Plan).Count(), year.Fitted.Rounds);
        Assert.Equal(FitGardens.Rounds(year.Beside).Count(), year.BesideMeasure.Rounds);
    }

    [Fact]
    public void The_plan_beside_it_is_the_rule_of_thumb()
    {
        var garden = FitGardens.Mild();
        var year = FitGardens.Fit(garden);
        var calendar = YearPlanner.Plan(new(garden, FitGardens.From));
        Assert.Equal(Doses(calendar), Doses(year.Beside));
    }

    [Fact]
    public void The_same_request_gives_the_same_plan_on_one_thread_and_on_two()
    {
        var garden = FitGardens.Mild();
        FittedYear one = FitGardens.Fit(garden, threads: 1), two = FitGardens.Fit(garden, threads: 2);
        Assert.Equal(Doses(one.Plan), Doses(two.Plan));
        Assert.Equal(one.Fitted, two.Fitted);
        Assert.Equal(one.Changes, two.Changes);
    }

    [Fact]
    public void Another_seed_gives_other_years()
    {
        var garden = FitGardens.Mild();
        var other = YearFit.Plan(new FitRequest(garden, FitGardens.From) { Draws = 40, Seed = 9 }).Value!;
        Assert.NotEqual(FitGardens.Fit(garden).Fitted, other.Fitted);
    }

    [Fact]
    public void Every_round_says_what_became_of_it()
    {
        var year = FitGardens.Fit(FitGardens.Mild());
        var calendar = FitGardens.Rounds(year.Beside).ToList();
        Assert.Equal(calendar, year.Changes.Where(static c => c.Before is not null).Select(static c => c.Before!.Value).Order());
        Assert.Equal(FitGardens.Rounds(year.Plan).Order(), year.Changes.Where(static c => c.Fitted is not null).Select(static c => c.Fitted!.Value).Order());
        Assert.All(year.Changes, static c => Assert.NotEmpty(c.Words));
        Assert.Contains(year.Changes, static c => c.Words != "As it was.");
    }

    // Bands: order of quantiles, odds a share, rain not negative; the limit is that of the crop row.
    [Fact]
    public void Each_pot_has_its_bands_and_bounds()
    {
        var year = FitGardens.Fit(FitGardens.Mild());
        Assert.All(year.Pots, static pot =>
        {
            Assert.Equal(366, pot.Fitted.Days.Count);
            Assert.All(pot.Fitted.Days, static d =>
            {
                Assert.True(d.Ec.Low <= d.Ec.Median && d.Ec.Median <= d.Ec.High && d.Ec.Low >= 0);
                Assert.True(d.Nitrogen.Low <= d.Nitrogen.Median && d.Nitrogen.Median <= d.Nitrogen.High && d.Nitrogen.Low >= 0);
                Assert.InRange(d.OddsOverEc, 0, 1);
                Assert.True(d.RainMm >= 0);
            });
            Assert.NotEmpty(pot.Assumed);
        });
        Assert.Equal(3.0, year.Pots[0].Fitted.Limits.MostEc);
    }

    [Fact]
    public void One_pot_is_enough()
    {
        var year = FitGardens.Fit(FitGardens.Mild(42, SomeGardens.Pot("only", 5, "zonal-geranium")));
        Assert.Single(year.Pots);
        Assert.True(year.Fitted.Score <= year.BesideMeasure.Score);
    }

    [Fact]
    public void Without_pots_or_climate_it_says_what_is_missing()
    {
        var empty = YearFit.Plan(new(FitGardens.Mild() with { Pots = [] }, FitGardens.From));
        Assert.Equal("pots", Assert.Single(empty.Problems).Field);
        var bare = YearFit.Plan(new(SomeGardens.With(new Season(SeasonKind.Growing, new(3, 1), new(10, 31))), FitGardens.From));
        Assert.False(bare.Ok);
        Assert.All(bare.Problems, static p => Assert.NotEmpty(p.WayOut));
        Assert.Equal("from", Assert.Single(YearFit.Plan(new(FitGardens.Mild(), new(1801, 1, 1))).Problems).Field);
        Assert.Equal("draws", Assert.Single(YearFit.Plan(new(FitGardens.Mild(), FitGardens.From) { Draws = 3 }).Problems).Field);
    }

    [Fact]
    public void Without_feeds_there_is_nothing_to_fit_and_the_pots_are_still_shown()
    {
        var year = FitGardens.Fit(FitGardens.Mild() with { Feeds = [] });
        Assert.False(year.Gained);
        Assert.Empty(year.Plan.Feeds);
        Assert.Equal(2, year.Pots.Count);
    }

    [Theory]
    [InlineData(78, -12)]
    [InlineData(-75, -20)]
    public void A_polar_place_rests_all_year(double latitude, double mean)
    {
        var garden = FitGardens.Mild(latitude);
        var cold = garden with { Place = garden.Place with { Normals = FitGardens.Normals(mean, 10, latitude < 0 ? 6 : 0, 20) } };
        var year = FitGardens.Fit(cold);
        Assert.Empty(FitGardens.Rounds(year.Plan));
        Assert.Equal(0, year.Fitted.GivenN);
        Assert.Equal(0, year.Fitted.HungryDays);
    }

    [Fact]
    public void A_named_rest_of_a_whole_year_feeds_nothing()
    {
        var garden = FitGardens.Mild();
        var rest = garden with { Place = garden.Place with { Seasons = [new(SeasonKind.Resting, new(1, 1), new(12, 31)), new(SeasonKind.Growing, new(1, 1), new(12, 31))] } };
        Assert.Empty(FitGardens.Rounds(FitGardens.Fit(rest).Plan));
    }

    [Fact]
    public void It_can_be_stopped()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Throws<OperationCanceledException>(() => YearFit.Plan(new(FitGardens.Mild(), FitGardens.From), null, stop.Token));
    }

    [Fact]
    public void A_first_plan_comes_early()
    {
        var told = new Told();
        _ = YearFit.Plan(new FitRequest(FitGardens.Mild(), FitGardens.From) { Draws = 40 }, told);
        Assert.NotEmpty(told.First!.Feeds);
        Assert.Equal(1, told.Last);
    }

    internal static List<string> Doses(YearPlan plan) =>
        [.. plan.Feeds.SelectMany(static f => f.Doses.Select(d => FormattableString.Invariant($"{f.Date:yyyy-MM-dd} {f.FeedId} {d.PotId} {d.Grams:R}")))];

    private sealed class Told : IProgress<FitProgress>
    {
        public YearPlan? First { get; private set; }

        public double Last { get; private set; }

        public void Report(FitProgress value)
        {
            First = value.First ?? First;
            Last = value.Share;
        }
    }
}
