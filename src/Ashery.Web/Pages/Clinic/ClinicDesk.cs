using Ashery.Clinic;
using Ashery.Gardens;
using Ashery.Journal;
using Ashery.Planning.Fit;
using Ashery.Pots;
using Ashery.Records;
using Ashery.Today;
using Ashery.Web.Gardens;

namespace Ashery.Web.Pages.Clinic;

/// <summary>What the garden's records and the pot model tell the clinic of a pot.</summary>
internal static class ClinicDesk
{
    // A median over so many draws is steady enough for a prior; the chart of the roots takes more.
    private const int Draws = 24;
    private const int ReadingsOf = 30;
    private const double OfTheModel = 0.6, WithReadings = 0.85;

    /// <summary>The pot's history today; null when there is no such pot.</summary>
    public static PotHistory? History(GardenDesk desk, IJournal journal, string potId, DateOnly today)
    {
        if (desk.Garden.Pots.FirstOrDefault(p => p.Id == potId) is not { } pot)
        {
            return null;
        }

        var readings = journal.Query(new() { Pots = [potId], Kinds = [EntryKind.Measured], From = today.AddDays(-ReadingsOf), To = today });
        var ec = Newest(readings, MeasuredKind.LeachateEc);
        var ph = Newest(readings, MeasuredKind.LeachatePh) ?? Newest(readings, MeasuredKind.ExtractPh);
        var evening = Evening(desk, potId, today);
        return new()
        {
            NitrogenMgPerLitre = evening?.Nitrogen.Median,
            ExtractEc = ec ?? evening?.Ec.Median,
            PH = ph,
            AgeDays = Age(pot, today),
            DaysSinceFeed = SinceFeed(journal, potId, today),
            Trust = ec is null && ph is null ? OfTheModel : WithReadings,
        };
    }

    private static double? Newest(IReadOnlyList<StoredEntry> entries, MeasuredKind what) =>
        entries.Select(static e => e.Entry.Facts).OfType<Measured>().FirstOrDefault(m => m.What == what)?.Value;

    private static FitDay? Evening(GardenDesk desk, string potId, DateOnly today)
    {
        if (desk.Garden.Feeds.Count == 0)
        {
            return null;
        }

        var plan = desk.Year(DuePlan.For(desk.Garden, today, 1).YearFrom);
        var year = PotYear.Of(desk.Garden, plan, potId, Draws);
        var day = today.DayNumber - plan.From.DayNumber;
        return year.Ok && day >= 0 && day < year.Value.Course.Days.Count ? year.Value.Course.Days[day] : null;
    }

    private static int? Age(Pot pot, DateOnly today) =>
        (pot.LastRepotted ?? pot.Planted) is { } since && since <= today ? today.DayNumber - since.DayNumber : null;

    private static int? SinceFeed(IJournal journal, string potId, DateOnly today) =>
        journal.Query(new() { Pots = [potId], Kinds = [EntryKind.FeedGiven], To = today, AtMost = 1 }) is [var last, ..] ? today.DayNumber - last.Entry.Day.DayNumber : null;
}
