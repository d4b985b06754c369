using Ashery.Compatibility;
using Ashery.Gardens;
using Ashery.Journal;
using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Quantities;
using Ashery.Stock;

namespace Ashery.Tests.Stock;

/// <summary>What to weigh, and what became of it.</summary>
public class BatchTests
{
    private static readonly DateOnly Day = StockTales.Start.AddDays(30);

    [Fact]
    public void The_bag_that_expires_first_is_weighed_out_first_then_the_older()
    {
        var late = StockTales.Entry(0, new BagBought("urea", 400, null, "late", new(2029, 1, 1)));
        var soon = StockTales.Entry(2, new BagBought("urea", 150, null, "soon", new(2027, 6, 1)));
        var ledger = StockLedger.Of(StockTales.Garden, [late, soon]);
        var proposal = BatchPlanner.For(StockTales.Garden, ledger, "two", 1000, Day).Value!;
        Assert.Equal(
            [("potassium-sulfate", 500.0, null), ("urea", 150.0, "soon"), ("urea", 350.0, "late")],
            proposal.Weighings.OrderBy(static w => w.MaterialId, StringComparer.Ordinal).Select(static w => (w.BagId, w.Grams, w.Bag?.Lot)));
        Assert.Equal(new DateOnly(2027, 6, 1), proposal.UseBy.Day);
        Assert.Equal("270331-01", proposal.Lot);
    }

    [Fact]
    public void A_bag_past_its_date_too_little_and_too_small_for_the_scale_are_said()
    {
        var old = StockTales.Entry(0, new BagBought("map-technical", 100, null, "old", new(2027, 3, 10)));
        var ledger = StockLedger.Of(StockTales.Garden, [old]);
        var notes = BatchPlanner.For(StockTales.Garden, ledger, "three", 2000, Day).Value!.Notes;
        Assert.Contains(notes, static n => n.Message.Contains("best before 2027-03-10", StringComparison.Ordinal));
        Assert.Contains(notes, static n => n.Message.Contains("the bags hold 400 g of the 500 g", StringComparison.Ordinal));
        var small = BatchPlanner.For(StockTales.Garden, ledger, "three", 1, Day).Value!.Notes;
        Assert.Contains(small, static n => n.Message.Contains("less than your scale shows", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("no-such", 100, "feed")]
    [InlineData("two", 0, "grams")]
    [InlineData("two", double.NaN, "grams")]
    [InlineData("two", 1e9, "grams")]
    public void What_cannot_be_is_named(string feed, double grams, string field)
    {
        var proposal = BatchPlanner.For(StockTales.Garden, StockLedger.Of(StockTales.Garden, []), feed, grams, Day);
        Assert.Equal(field, Assert.Single(proposal.Problems).Field);
    }

    // Agronomy question-and-answer page on computing a fertiliser grade (seen when the reference was gathered): DAP 41.3, urea 25.2 and KCl 31.7 kg
    // with 1.8 kg of filler are 100 kg of 19-19-19. Its printed figures are rounded to 0.1 kg, so the grade is held to 0.05 points.
    [Fact]
    public void Grade_as_made_is_that_of_the_published_weighings()
    {
        var garden = new Garden { Name = "g", Place = StockTales.Garden.Place, Shelf = [Bag("dap-granular", 18, 46, 0), Bag("urea", 46, 0, 0), Bag("potassium-chloride", 0, 0, 60), Bag("gypsum", 0, 0, 0)] };
        var made = BatchReport.Of(garden, "none", [Weigh("dap-granular", 413), Weigh("urea", 252), Weigh("potassium-chloride", 317), Weigh("gypsum", 18)]).Value!;
        Assert.All([Nutrient.N, Nutrient.P, Nutrient.K], n => Assert.Equal(19, made.AsMade.Grade.Percent(n), 0.05));
        Assert.Null(made.Feed);
        Assert.Empty(made.Tolerances);
    }

    // Watts, Vegetable Gardening: the home mixing of fertilizers (1912 from memory; text seen): 500 lb nitrate of soda 16 %, 941 lb of 17 % phosphate and
    // 400 lb of 50 % muriate in a ton of 2000 lb are 4-8-10; pounds are weighed as grams here.
    [Fact]
    public void Grade_as_made_of_a_home_mix_of_1912()
    {
        var garden = new Garden { Name = "g", Place = StockTales.Garden.Place, Shelf = [Bag("sodium-nitrate", 16, 0, 0), Bag("ssp", 0, 17, 0), Bag("potassium-chloride", 0, 0, 50), Bag("gypsum", 0, 0, 0)] };
        var made = BatchReport.Of(garden, "none", [Weigh("sodium-nitrate", 500), Weigh("ssp", 941), Weigh("potassium-chloride", 400), Weigh("gypsum", 159)]).Value!;
        Assert.Equal(4, made.AsMade.Grade.Percent(Nutrient.N), 0.01);
        Assert.Equal(8, made.AsMade.Grade.Percent(Nutrient.P), 0.01);
        Assert.Equal(10, made.AsMade.Grade.Percent(Nutrient.K), 0.01);
    }

    [Fact]
    public void A_slip_of_the_scale_shows_in_the_grade_and_against_the_tolerance()
    {
        var right = BatchReport.Of(StockTales.Garden, "two", [Weigh("urea", 100), Weigh("potassium-sulfate", 100)]).Value!;
        Assert.All(right.Nutrients, static n => Assert.Equal(n.Wanted, n.Made, 1e-9));
        Assert.All(right.Tolerances, static t => Assert.True(t.Passes));

        // 80 g of urea for 100: N 46 x 80/180 = 20.4 % instead of 23 %.
        var wrong = BatchReport.Of(StockTales.Garden, "two", [Weigh("urea", 80), Weigh("potassium-sulfate", 100)]).Value!;
        Assert.Equal(46.0 * 80 / 180, wrong.AsMade.Grade.Percent(Nutrient.N), 1e-6);
        Assert.False(wrong.Tolerances[0].Passes);
        Assert.Equal("eu2019-mineral", wrong.Tolerances[0].Rule.Id);
        Assert.Equal(90, wrong.Parts.Single(static p => p.MaterialId == "urea").Wanted!.Value, 1e-9);
    }

    [Fact]
    public void A_part_left_out_is_told_as_nothing_weighed()
    {
        var report = BatchReport.Of(StockTales.Garden, "three", [Weigh("urea", 25), Weigh("potassium-sulfate", 50)]).Value!;
        Assert.Equal(0, report.Parts.Single(static p => p.MaterialId == "map-technical").Grams);
    }

    [Fact]
    public void The_entry_gets_the_next_lot_of_its_day_and_the_use_by()
    {
        var dated = StockTales.Entry(0, new BagBought("urea", 400, null, null, new(2028, 2, 29)));
        var first = Make([dated], [Weigh("urea", 50, dated.Id), Weigh("potassium-sulfate", 50), Weigh("map-technical", 0)]);
        var made = Assert.IsType<BatchMade>(first.Facts);
        Assert.Equal("270331-01", made.Lot);
        Assert.Equal(new DateOnly(2028, 2, 29), made.UseBy);
        Assert.Equal(2, made.Weighings.Count);
        Assert.Equal("270331-02", ((BatchMade)Make([dated, first], [Weigh("urea", 50)]).Facts).Lot);
    }

    [Fact]
    public void A_weighing_that_names_no_bag_takes_the_date_of_the_bag_that_expires_first()
    {
        var soon = StockTales.Entry(0, new BagBought("urea", 40, null, null, new(2027, 9, 1)));
        var late = StockTales.Entry(0, new BagBought("urea", 400, null, null, new(2029, 2, 1)));
        Assert.Equal(new DateOnly(2027, 9, 1), ((BatchMade)Make([soon, late], [Weigh("urea", 50), Weigh("potassium-sulfate", 50)]).Facts).UseBy);
    }

    [Fact]
    public void What_must_never_be_mixed_is_not_made()
    {
        // Quicklime sets ammonia free at once (the chart's own hard stop).
        var pair = CompatibilityChart.Default.JudgeAll([.. MaterialCatalogue.Default.All]).First(static p => p.DryToday.IsHardStop);
        var garden = StockTales.Garden with { Shelf = [Bag(pair.A, 0, 0, 0, asIs: true), Bag(pair.B, 0, 0, 0, asIs: true)], Feeds = [StockTales.Feed("never", (pair.A, 0.5), (pair.B, 0.5))] };
        var ledger = StockLedger.Of(garden, []);
        Assert.True(BatchPlanner.For(garden, ledger, "never", 100, Day).Value!.IsForbidden);
        var order = new BatchOrder { Id = Guid.NewGuid(), Day = Day, FeedId = "never", Weighings = [Weigh(pair.A, 50), Weigh(pair.B, 50)] };
        Assert.Equal("weighings", Assert.Single(BatchMaker.Make(garden, ledger, order).Problems).Field);
    }

    [Fact]
    public void Use_by_is_the_day_itself_where_parts_may_not_be_kept_together()
    {
        var keeps = UseBy.Of(Day, new(StorageClass.KeepsDry, "dry", null, "-"), []);
        Assert.Null(keeps.Day);
        Assert.Equal(Day, UseBy.Of(Day, new(StorageClass.OnTheDay, "wet", null, "-"), []).Day);
    }

    private static Entry Make(IReadOnlyList<Entry> before, IReadOnlyList<Weighing> weighings) => BatchMaker.Make(
        StockTales.Garden, StockLedger.Of(StockTales.Garden, before), new() { Id = Guid.NewGuid(), Day = Day, FeedId = "two", Weighings = weighings }).Value!;

    private static Weighing Weigh(string material, double grams, Guid? bag = null) => new(material, material, grams, bag);

    private static Bag Bag(string material, double n, double p, double k, bool asIs = false)
    {
        var basis = MaterialCatalogue.Default.Find(material)!;
        return new(material, asIs ? basis : OwnBag.WithLabel(basis, LabelAnalysis.Grade(n, p, k)), new Mass(5000), null, null);
    }
}
