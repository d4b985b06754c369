using Ashery.Feeds;
using Ashery.Journal;
using Ashery.Nutrients;
using Ashery.Planning;
using CsCheck;

namespace Ashery.Tests.Journal;

public class SeasonReportTests
{
    private static readonly DateOnly Last = Plants.First.AddDays(200);

    /// <summary>Two halves of a season hold together what the whole holds: nothing twice, nothing lost.</summary>
    [Fact]
    public void Halves_add_up_to_the_whole() => Gen.Select(Plants.Entries.List[0, 60], Gen.Int[0, 199]).Sample((entries, cut) =>
    {
        var middle = Plants.First.AddDays(cut);
        var (whole, one, two) = (Report(entries, Plants.First, Last), Report(entries, Plants.First, middle), Report(entries, middle.AddDays(1), Last));
        foreach (var feed in Plants.Garden.Feeds)
        {
            Near(Grams(whole, feed.Id), Grams(one, feed.Id) + Grams(two, feed.Id));
        }

        Assert.Equal(whole.Losses.Count, one.Losses.Count + two.Losses.Count);
        Assert.Equal(whole.Photographs, one.Photographs + two.Photographs);
        int Read(SeasonReport r) => r.Pots.Sum(static p => p.Readings.Sum(static s => s.Count));
        Assert.Equal(Read(whole), Read(one) + Read(two));
    });

    /// <summary>Sums written out by hand from the entries alone.</summary>
    [Fact]
    public void Grams_and_nutrients_follow_from_the_entries() => Plants.Entries.List[0, 60].Sample(entries =>
    {
        var report = Report(entries, Plants.First, Last);
        var counts = Plants.Garden.Pots.ToDictionary(static p => p.Id, static p => p.Count);
        foreach (var feed in Plants.Garden.Feeds)
        {
            var grams = entries.Select(static e => e.Facts).OfType<FeedGiven>().Where(f => f.FeedId == feed.Id).SelectMany(static f => f.Amounts).Sum(a => a.Grams * counts[a.PotId]);
            Near(grams, Grams(report, feed.Id));
            var total = report.Feeds.FirstOrDefault(f => f.FeedId == feed.Id);
            Near(grams * feed.Label[Nutrient.N], total?.Nutrients.GetValueOrDefault(Nutrient.N) ?? 0);
        }
    });

    [Fact]
    public void Every_planned_feed_of_a_pot_is_done_skipped_open_or_to_come() => Gen.Select(Plants.Entries.List[0, 40], Gen.Int[0, 200]).Sample((entries, today) =>
    {
        var planned = Enumerable.Range(0, 10).Select(static i => Planned(Plants.First.AddDays(i * 20), i % 2 == 0 ? "spring" : "summer", "tub", "bowl")).ToList();
        var report = SeasonReport.Of(new(Plants.Garden, [.. entries], Plants.First, Last) { Planned = planned, Today = Plants.First.AddDays(today) }).Value!;
        Assert.Equal(20, report.Tally.Planned);
        Assert.Equal(0, report.Pots.Single(static p => p.PotId == "crate").Tally.Planned);
        Assert.Equal(report.Tally, report.Pots.Aggregate(TaskTally.None, static (s, p) => s + p.Tally));
    });

    [Fact]
    public void Given_beats_skipped_and_moved_waits_for_its_new_day()
    {
        var (day, later) = (Plants.First.AddDays(10), Plants.First.AddDays(30));
        var task = new TaskId(day, "spring");
        List<Entry> entries =
        [
            Entry(day, ["tub"], new TaskSkipped(task, "rain")),
            Entry(day.AddDays(1), ["tub"], new FeedGiven("spring", [new("tub", 5)], task)),
            Entry(day, ["bowl"], new TaskMoved(task, later)),
        ];
        TaskTally On(int today) => SeasonReport.Of(new(Plants.Garden, entries, Plants.First, Last) { Planned = [Planned(day, "spring", "tub", "bowl", "crate")], Today = Plants.First.AddDays(today) }).Value!.Tally;
        Assert.Equal(new TaskTally(1, 0, 1, 1), On(20));
        Assert.Equal(new TaskTally(1, 0, 2, 0), On(31));
    }

    /// <summary>Urea at 12 for 4 kg is 3 a kg; half a kilogram of a feed that is 60 % urea costs 0.9 for it, and a feed with an unpriced part has no cost.</summary>
    [Fact]
    public void Cost_is_known_only_where_every_price_is()
    {
        var entries = new List<Entry> { Entry(Plants.First, ["tub"], new FeedGiven("spring", [new("tub", 500)])) };
        var half = SeasonReport.Of(new(Plants.Garden, entries, Plants.First, Last) { Today = Last }).Value!;
        Assert.Null(half.Feeds[0].Cost);
        Assert.Equal(["spring feed"], half.WithoutPrice);

        var priced = Plants.Garden with { Shelf = [.. Plants.Garden.Shelf.Select(static b => b with { Price = 12, Size = new(4000) })] };
        var whole = SeasonReport.Of(new(priced, entries, Plants.First, Last) { Today = Last }).Value!;
        Near(1.5, whole.Cost);
        var batch = Guid.NewGuid();
        var lot = SeasonReport.Of(new(priced, [entries[0] with { Facts = new FeedGiven("spring", [new("tub", 500)], null, batch) }], Plants.First, Last) { Today = Last, BatchPrices = new Dictionary<Guid, double> { [batch] = 0.01 } }).Value!;
        Near(5, lot.Cost);
    }

    [Fact]
    public void A_season_that_ends_before_it_begins_is_refused() =>
        Assert.Equal("to", SeasonReport.Of(new(Plants.Garden, [], Last, Plants.First) { Today = Last }).Problems[0].Field);

    private static SeasonReport Report(IReadOnlyList<Entry> entries, DateOnly from, DateOnly to) =>
        SeasonReport.Of(new(Plants.Garden, entries, from, to) { Today = Last }).Value!;

    private static double Grams(SeasonReport report, string feed) => report.Feeds.Where(f => f.FeedId == feed).Sum(static f => f.Grams);

    private static void Near(double expected, double actual) => Assert.True(Math.Abs(expected - actual) <= 1e-9 * Math.Max(1, Math.Abs(expected)), FormattableString.Invariant($"{expected} and {actual}"));

    private static Entry Entry(DateOnly day, string[] pots, EntryFacts facts) => new() { Id = Guid.NewGuid(), Day = day, Pots = pots, Facts = facts };

    private static PlannedFeed Planned(DateOnly day, string feed, params string[] pots) => new(day, FeedKind.Mineral, feed, feed, pots, 5, [], []);
}
