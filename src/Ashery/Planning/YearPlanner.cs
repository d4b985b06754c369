using Ashery.Climate;
using Ashery.Crops;
using Ashery.Feeds;
using Ashery.Nutrients;
using Ashery.Pots;

namespace Ashery.Planning;

/// <summary>Plans a year of feeds.</summary>
public static class YearPlanner
{
    private const int IntervalDays = 14;

    public static YearPlan Plan(YearRequest request)
    {
        var garden = request.Garden;
        var to = request.From.AddYears(1).AddDays(-1);
        var seasons = SeasonCalendar.For(garden.Place, new SeasonThresholds());
        List<DateOnly> dates = [];
        for (var day = request.From; day <= to; day = day.AddDays(1))
        {
            var s = seasons.Of(day);
            if (s.HasFlag(DaySeasons.Growing) && !s.HasFlag(DaySeasons.Resting) && !s.HasFlag(DaySeasons.Hot) && (dates.Count == 0 || day.DayNumber - dates[^1].DayNumber >= IntervalDays))
            {
                dates.Add(day);
            }
        }

        var feed = garden.Feeds.FirstOrDefault(static f => f.Kind == FeedKind.Mineral);
        List<PlannedFeed> feeds = [];
        foreach (var date in feed is null ? [] : dates)
        {
            var doses = garden.Pots.Select(pot => CropCatalogue.Default.Find(pot.CropId) is { } crop
                ? Dosing.For(new() { Pot = pot, Crop = crop, Feed = feed!, On = date, FeedsInSeason = dates.Count, SeasonMonths = 6, ScaleStep = garden.Settings.ScaleStep })
                : null).OfType<Dose>().Where(static d => d.Grams > 0);
            feeds.AddRange(doses.GroupBy(static d => d.Grams).OrderBy(static g => g.Key).Select(g => new PlannedFeed(
                date, FeedKind.Mineral, feed!.Id, feed.Name, [.. g.Select(static d => d.PotId)], g.Key, [.. g], ["Growing season."])));
        }

        return new YearPlan
        {
            From = request.From,
            To = to,
            Seasons = Stretches(seasons, request.From, to),
            Feeds = feeds,
            Months = MonthTotals(garden, feeds),
            Shopping = [],
        };
    }

    private static List<DatedSeason> Stretches(SeasonCalendar calendar, DateOnly from, DateOnly to)
    {
        List<DatedSeason> all = [];
        foreach (var kind in Enum.GetValues<SeasonKind>())
        {
            DateOnly? start = null;
            for (var day = from; day <= to.AddDays(1); day = day.AddDays(1))
            {
                var on = day <= to && calendar.Of(day).HasFlag(SeasonCalendar.Flag(kind));
                if (on && start is null)
                {
                    start = day;
                }
                else if (!on && start is { } s)
                {
                    all.Add(new(kind, s, day.AddDays(-1)));
                    start = null;
                }
            }
        }

        return all;
    }

    private static List<MonthTotal> MonthTotals(Gardens.Garden garden, List<PlannedFeed> feeds)
    {
        var labels = garden.Feeds.ToDictionary(static f => f.Id, static f => f.Label);
        var counts = garden.Pots.ToDictionary(static p => p.Id, static p => p.Count);
        return [.. feeds.GroupBy(static f => (f.Date.Year, f.Date.Month)).Select(g => new MonthTotal(
            g.Key.Year,
            g.Key.Month,
            new LabelAnalysisGrams(Enum.GetValues<Nutrient>().ToDictionary(static n => n, n => g.Sum(f => labels[f.FeedId][n] * f.Doses.Sum(d => d.Grams * counts[d.PotId]))))))];
    }
}
