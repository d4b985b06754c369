using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Ashery.Gardens;
using Ashery.Planning;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using IcsCalendar = Ical.Net.Calendar;

namespace Ashery.Exchange.Calendar;

/// <summary>
/// The year as an iCalendar file (RFC 5545): one all-day event for each feed of a day, one for each day of liming. The same plan and stamp
/// give the same bytes, and an event keeps its UID as long as day and feed stay, so that a calendar updates instead of doubling.
/// </summary>
public static class YearCalendar
{
    /// <summary>Category of the events that are feeds.</summary>
    public const string FeedCategory = "feed";

    /// <summary>Category of the events that are lime.</summary>
    public const string LimeCategory = "lime";

    /// <summary>Writes the calendar.</summary>
    /// <param name="plan">What to write.</param>
    /// <param name="garden">Whose it is: names of pots.</param>
    /// <param name="stamp">When it was written (DTSTAMP).</param>
    public static string Write(YearPlan plan, Garden garden, DateTimeOffset stamp)
    {
        var calendar = new IcsCalendar { ProductId = "-//Ashery//Year of feeds//EN" };
        calendar.AddProperty("X-WR-CALNAME", CalendarText.Plain(garden.Name).Replace('\n', ' '));
        var at = new CalDateTime(stamp.UtcDateTime, true);
        var names = garden.Pots.ToDictionary(static p => p.Id, static p => p.Name, StringComparer.Ordinal);
        foreach (var day in plan.Feeds.GroupBy(static f => (f.Date, f.FeedId)))
        {
            var first = day.First();
            List<string> lines = [.. day.Select(f => Line(f, names)), "", .. first.Reasons, .. first.How];
            calendar.Events.Add(Event(garden.Name, day.Key.Date, day.Key.FeedId, at, first.FeedName, lines, FeedCategory));
        }

        var limes = plan.LimeDebts.SelectMany(static d => d.Corrections.Select(c => (d.PotId, Correction: c)));
        foreach (var day in limes.GroupBy(static c => (c.Correction.Date, c.Correction.MaterialId)).OrderBy(static g => g.Key.Date).ThenBy(static g => g.Key.MaterialId, StringComparer.Ordinal))
        {
            var first = day.First().Correction;
            List<string> lines = [.. day.Select(c => string.Create(CultureInfo.InvariantCulture, $"{c.Correction.Grams:0.#} g: {names.GetValueOrDefault(c.PotId, c.PotId)}")), "", first.Words];
            calendar.Events.Add(Event(garden.Name, day.Key.Date, "lime " + day.Key.MaterialId, at, first.MaterialName, lines, LimeCategory));
        }

        return new CalendarSerializer(calendar).SerializeToString() ?? "";
    }

    private static CalendarEvent Event(string garden, DateOnly day, string what, CalDateTime at, string summary, List<string> lines, string category) => new()
    {
        Uid = Uid(garden, day, what),
        DtStamp = at,
        Start = new CalDateTime(day),
        End = new CalDateTime(day.AddDays(1)),
        Summary = CalendarText.Plain(summary).Replace('\n', ' '),
        Description = CalendarText.Plain(string.Join('\n', lines)),
        Categories = [category],
        Transparency = TransparencyType.Transparent,
    };

    private static string Line(PlannedFeed feed, Dictionary<string, string> names) =>
        $"{CalendarText.Amount(feed.Doses[0])}: {string.Join(", ", feed.Pots.Select(id => names.GetValueOrDefault(id, id)))}";

    private static string Uid(string garden, DateOnly day, string what)
    {
        var hash = SHA256.HashData(Encoding.UTF8.GetBytes($"{garden}\n{what}"));
        return string.Create(CultureInfo.InvariantCulture, $"{day:yyyyMMdd}-{Convert.ToHexStringLower(hash.AsSpan(0, 8))}@ashery.invalid");
    }
}
