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
/// The year as an iCalendar file (RFC 5545): one all-day event for each feed. The same plan and stamp give the same bytes, and an
/// event keeps its UID as long as day and feed stay, so that a calendar updates instead of doubling.
/// </summary>
public static class YearCalendar
{
    /// <summary>Writes the calendar.</summary>
    /// <param name="plan">What to write.</param>
    /// <param name="garden">Whose it is: names of pots.</param>
    /// <param name="stamp">When it was written (DTSTAMP).</param>
    public static string Write(YearPlan plan, Garden garden, DateTimeOffset stamp)
    {
        var calendar = new IcsCalendar { ProductId = "-//Ashery//Year of feeds//EN" };
        calendar.AddProperty("X-WR-CALNAME", garden.Name);
        var at = new CalDateTime(stamp.UtcDateTime, true);
        var names = garden.Pots.ToDictionary(static p => p.Id, static p => p.Name, StringComparer.Ordinal);
        foreach (var day in plan.Feeds.GroupBy(static f => (f.Date, f.FeedId)))
        {
            var lines = new List<string>();
            foreach (var feed in day)
            {
                lines.Add(string.Create(CultureInfo.InvariantCulture, $"{feed.GramsPerPot:0.###} g: {string.Join(", ", feed.Pots.Select(id => names.GetValueOrDefault(id, id)))}"));
            }

            lines.AddRange(day.SelectMany(static f => f.Reasons).Distinct(StringComparer.Ordinal));
            calendar.Events.Add(new CalendarEvent
            {
                Uid = Uid(garden.Name, day.Key.Date, day.Key.FeedId),
                DtStamp = at,
                Start = new CalDateTime(day.Key.Date),
                End = new CalDateTime(day.Key.Date.AddDays(1)),
                Summary = Plain(day.First().FeedName),
                Description = Plain(string.Join("\n", lines)),
                Transparency = TransparencyType.Transparent,
            });
        }

        return new CalendarSerializer(calendar).SerializeToString() ?? "";
    }

    private static string Uid(string garden, DateOnly day, string feed)
    {
        var hash = SHA256.HashData(Encoding.UTF8.GetBytes($"{garden}\n{feed}"));
        return string.Create(CultureInfo.InvariantCulture, $"{day:yyyyMMdd}-{Convert.ToHexStringLower(hash.AsSpan(0, 8))}@ashery.invalid");
    }

    /// <summary>Control characters other than line feeds have no place in a text value (RFC 5545, 3.3.11).</summary>
    private static string Plain(string text) => string.Concat(text.Replace("\r\n", "\n", StringComparison.Ordinal).Where(static c => c == '\n' || !char.IsControl(c)));
}
