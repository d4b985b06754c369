using Ashery.Journal;
using Ashery.Planning;
using Ashery.Problems;
using Ashery.Records;
using Ashery.Stock;
using Ashery.Web.Forms;
using Ashery.Web.Gardens;

namespace Ashery.Web.Pages.Diary;

/// <summary>The season report that an address asks for.</summary>
internal sealed class ReportDesk(GardenDesk desk, IJournal journal, DateOnly today)
{
    private const int Most = 200_000;

    private static readonly string[] Kinds = [.. DiaryGroups.AllKinds];

    public DateOnly From(FieldReader read) => read.Date("from") ?? new DateOnly(today.Year, 1, 1);

    public DateOnly To(FieldReader read) => read.Date("to") ?? today;

    public Result<SeasonReport> Report(Draft asked)
    {
        var read = new FieldReader(asked);
        var (from, to) = (From(read), To(read));
        if (!read.Fine)
        {
            return Result.Fail<SeasonReport>(read.Problems);
        }

        var garden = desk.Garden;
        var pots = asked.Has("pot") ? [asked["pot"]] : (IReadOnlyList<string>)[];
        var entries = journal.Query(new JournalQuery { Kinds = Kinds, Pots = pots, From = from, To = to, AtMost = Most }).Select(static e => e.Entry).ToList();
        return SeasonReport.Of(new SeasonReportRequest(garden, entries, from, to)
        {
            Today = today,
            Pots = pots,
            Planned = Planned(from, to),
            BatchPrices = Prices(from, to),
        });
    }

    // The plan of the whole span, a year at a time.
    private List<PlannedFeed> Planned(DateOnly from, DateOnly to)
    {
        List<PlannedFeed> planned = [];
        for (var start = from; start <= to && start.Year < 2199; start = start.AddYears(1))
        {
            planned.AddRange(desk.Year(start).Feeds.Where(f => f.Date >= start && f.Date < start.AddYears(1) && f.Date <= to));
        }

        return planned;
    }

    private Dictionary<Guid, double> Prices(DateOnly from, DateOnly to)
    {
        var books = journal.Query(new JournalQuery { Kinds = StockLedger.Kinds, AtMost = Most }).Select(static e => e.Entry).ToList();
        var costs = StockCosts.Of(desk.Garden, StockLedger.Of(desk.Garden, books), from, to);
        return costs.Batches.Where(static b => b.PerKg is not null).ToDictionary(static b => b.Batch.Id, static b => b.PerKg!.Value / 1000);
    }
}
