using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Ashery.Gardens;
using Ashery.Today;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using IcsCalendar = Ical.Net.Calendar;

namespace Ashery.Exchange.Calendar;

/// <summary>
/// What is due and what comes as an iCalendar text (RFC 5545) to subscribe to: an all-day event for each feed that is still to be given, what
/// is overdue on today, with an alarm in the morning. What was given, skipped or put off is gone or elsewhere at the next look.
/// </summary>
public static class DueCalendar
{
    /// <summary>Category of the events.</summary>
    public const string Category = "feed";

    /// <summary>The usual hour of the alarm: moist medium, cool of the morning.</summary>
    public const int MorningHour = 7;

    /// <summary>Writes the calendar.</summary>
    /// <param name="day">The work around today.</param>
    /// <param name="garden">Whose it is: names of garden and pots.</param>
    /// <param name="stamp">When it was written (DTSTAMP).</param>
    /// <param name="hour">Hour of the alarm, by the clock of whoever reads the calendar.</param>
    public static string Write(DueDay day, Garden garden, DateTimeOffset stamp, int hour = MorningHour)
    {
        var calendar = new IcsCalendar { ProductId = "-//Ashery//Feeds to give//EN" };
        calendar.AddProperty("X-WR-CALNAME", CalendarText.Line(garden.Name));

        // RFC 7986, 5.7; the second is what older readers look for.
        calendar.AddProperty("REFRESH-INTERVAL;VALUE=DURATION", "PT6H");
        calendar.AddProperty("X-PUBLISHED-TTL", "PT6H");
        var at = new CalDateTime(stamp.UtcDateTime, true);
        var names = garden.Pots.ToDictionary(static p => p.Id, static p => p.Name, StringComparer.Ordinal);
        foreach (var round in day.Open.Concat(day.Coming))
        {
            calendar.Events.Add(Event(round, day.Today, garden.Name, names, at, hour));
        }

        return new CalendarSerializer(calendar).SerializeToString() ?? "";
    }

    private static CalendarEvent Event(DueRound round, DateOnly today, string garden, Dictionary<string, string> names, CalDateTime at, int hour)
    {
        var on = round.On < today ? today : round.On;
        List<string> lines = [];
        if (round.On < today)
        {
            lines.Add(string.Create(CultureInfo.InvariantCulture, $"Overdue since {round.On:d MMMM}."));
        }

        lines.AddRange(round.Pots.GroupBy(static p => CalendarText.Amount(p.Dose)).Select(g => $"{g.Key}: {string.Join(", ", g.Select(p => names.GetValueOrDefault(p.PotId, p.PotId)))}"));
        lines.AddRange(round.Pots.SelectMany(static p => p.Holds).Select(static h => h.Words).Distinct(StringComparer.Ordinal));
        lines.AddRange(round.How);
        var summary = CalendarText.Line(round.FeedName);
        return new()
        {
            Uid = Uid(garden, round),
            DtStamp = at,
            Start = new CalDateTime(on),
            End = new CalDateTime(on.AddDays(1)),
            Summary = summary,
            Description = CalendarText.Plain(string.Join('\n', lines)),
            Categories = [Category],
            Transparency = TransparencyType.Transparent,
            Alarms = { new Alarm { Action = AlarmAction.Display, Trigger = new Trigger(Duration.FromHours(hour)), Description = summary } },
        };
    }

    /// <summary>The same planned feed keeps its UID when it becomes overdue; what was put off for some pots is an event of its own.</summary>
    private static string Uid(string garden, DueRound round)
    {
        var what = round.Pots.Any(static p => p.IsMoved || p.PushedBy is not null) ? string.Create(CultureInfo.InvariantCulture, $"{round.Task} {round.On:yyyy-MM-dd}") : round.Task.ToString();
        return $"{Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes($"{garden}\n{what}")).AsSpan(0, 12))}@ashery.invalid";
    }
}
