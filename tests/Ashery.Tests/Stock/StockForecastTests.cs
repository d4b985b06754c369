using Ashery.Feeds;
using Ashery.Journal;
using Ashery.Planning;
using Ashery.Pots;
using Ashery.Stock;
using Ashery.Tests.Planning;
using Ashery.Today;

namespace Ashery.Tests.Stock;

/// <summary>How far bags and batches reach under a plan that is written by hand.</summary>
public class StockForecastTests
{
    private static readonly DateOnly Today = StockTales.Start;

    // 40 g of "two" a feed (20 g urea, 20 g sulfate of potash): pot a 20 g, the row of four 5 g each.
    private static readonly IReadOnlyList<PlannedFeed> Plan = Of(0, 10, 20, 30);

    private static DateOnly To => Today.AddDays(364);

    [Fact]
    public void A_line_runs_out_on_the_first_day_it_does_not_hold_enough()
    {
        var bag = StockTales.Entry(-5, new BagBought("potassium-sulfate", 50, 3, "s1"), 8);
        var forecast = Forecast([bag]);
        var line = forecast.Line("potassium-sulfate")!;
        Assert.Equal(Today.AddDays(20), line.RunsOut);
        Assert.Equal(50, line.UsedGrams, 1e-9);
        Assert.Equal(Today.AddDays(20), line.Bags.Single(static b => b.Bag.Bought is not null).EmptyOn);
        Assert.Null(forecast.Line("urea")!.RunsOut);

        // 80 g needed, 50 g there, bags of 50 g at 3: one bag.
        var buy = forecast.Shopping.Single(static s => s.MaterialId == "potassium-sulfate");
        Assert.Equal((80.0, 50.0, 50.0, 1, 3.0), (buy.NeededGrams, buy.OnShelfGrams, buy.ToBuyGrams, buy.Bags, buy.Cost));
    }

    [Fact]
    public void What_is_mixed_already_counts()
    {
        var bag = StockTales.Entry(-5, new BagBought("potassium-sulfate", 50, 3, "s1"), 8);
        var batch = StockTales.Entry(-4, new BatchMade("x", "two", [new("urea", "urea", 30), new("potassium-sulfate", "potassium-sulfate", 30)]));
        var forecast = Forecast([bag, batch]);

        // 60 g are mixed: 40 for day 0, 20 for day 10; the 20 g left in the bag make the rest of day 10 (10 g) and half of day 20.
        Assert.Equal(Today.AddDays(20), forecast.Line("potassium-sulfate")!.RunsOut);
        Assert.Equal(20, forecast.Line("potassium-sulfate")!.UsedGrams, 1e-9);
        Assert.Equal(Today.AddDays(10), Assert.Single(forecast.Batches).EmptyOn);
    }

    [Fact]
    public void A_batch_past_its_use_by_is_not_reckoned_with()
    {
        var batch = StockTales.Entry(-4, new BatchMade("x", "two", [new("urea", "urea", 100)], Today.AddDays(5)));
        var forecast = Assert.Single(Forecast([batch]).Batches);
        Assert.Equal((40.0, 60.0), (forecast.UsedGrams, forecast.LeftAtUseBy));
        Assert.Null(forecast.EmptyOn);
    }

    [Fact]
    public void Given_skipped_and_moved_feeds_answer_the_plan()
    {
        var bag = StockTales.Entry(-5, new BagBought("potassium-sulfate", 1000), 8);
        var task = new TaskId(Today.AddDays(10), "two");
        Assert.Equal(80, Used([bag]), 1e-9);
        Assert.Equal(70, Used([bag, StockTales.Entry(0, new TaskSkipped(task, "rain"), 12, "a")]), 1e-9);
        Assert.Equal(80, Used([bag, StockTales.Entry(0, new TaskMoved(task, Today.AddDays(12)), 12, "a", "row")]), 1e-9);

        // Half of today's feed is given: 10 g of the bag are gone, 70 are still needed.
        var given = StockTales.Entry(0, new FeedGiven("two", [new("a", 20)], new TaskId(Today, "two")), 12, "a");
        Assert.Equal(70, Used([bag, given]), 1e-9);

        // A feed that was due before and put off to a day to come is needed then; one that was never answered is not.
        var late = StockForecast.Of(StockTales.Garden, Ledger([bag]), [bag], Plan, Today.AddDays(15), To);
        Assert.Equal(40, late.Line("potassium-sulfate")!.UsedGrams, 1e-9);
        var moved = StockTales.Entry(12, new TaskMoved(task, Today.AddDays(16)), 12, "a", "row");
        Assert.Equal(60, StockForecast.Of(StockTales.Garden, Ledger([bag]), [bag, moved], Plan, Today.AddDays(15), To).Line("potassium-sulfate")!.UsedGrams, 1e-9);
    }

    [Fact]
    public void What_is_left_on_its_best_before_is_told()
    {
        var bag = StockTales.Entry(-5, new BagBought("potassium-sulfate", 1000, null, null, Today.AddDays(15)), 8);
        Assert.Equal(960, Forecast([bag]).Line("potassium-sulfate")!.Bags.Single(static b => b.Bag.Bought is not null).LeftAtBestBefore!.Value, 1e-9);
    }

    [Fact]
    public void The_planned_year_of_a_garden_takes_no_more_from_bags_than_it_shops_for()
    {
        var garden = SomeGardens.With(new Ashery.Climate.Season(Ashery.Climate.SeasonKind.Growing, new(1, 1), new(12, 31))) with
        {
            Shelf = [SomeGardens.Bag("ammonium-sulfate", 10, 4, 1000), SomeGardens.Bag("neem-cake", null)],
        };
        var forecast = StockOutlook.For(garden, StockLedger.Of(garden, []), [], Today);
        var buy = forecast.Shopping.Single(static s => s.MaterialId == "ammonium-sulfate");
        Assert.Equal((int)Math.Ceiling((buy.NeededGrams - 10) / 1000), buy.Bags);
        Assert.Equal(buy.Bags * 4.0, buy.Cost);
        Assert.NotNull(buy.RunsOut);
        Assert.Equal(10, forecast.Line("ammonium-sulfate")!.UsedGrams, 1e-9);
    }

    private static double Used(IReadOnlyList<Entry> entries) => Forecast(entries).Line("potassium-sulfate")!.UsedGrams;

    private static StockLedger Ledger(IReadOnlyList<Entry> entries) => StockLedger.Of(StockTales.Garden, entries);

    private static StockForecast Forecast(IReadOnlyList<Entry> entries) => StockForecast.Of(StockTales.Garden, Ledger(entries), entries, Plan, Today, To);

    private static IReadOnlyList<PlannedFeed> Of(params int[] days) =>
        [.. days.Select(static d => new PlannedFeed(Today.AddDays(d), FeedKind.Mineral, "two", "two", ["a", "row"], 20, [Dose("a", 20), Dose("row", 5)], []))];

    private static Dose Dose(string pot, double grams) => new()
    {
        PotId = pot, FeedId = "two", Grams = grams, WantedGrams = grams, NitrogenPerLitreMonth = 0, NitrogenPerLitreSeason = 0, RateBand = "", Reasons = [],
    };
}
