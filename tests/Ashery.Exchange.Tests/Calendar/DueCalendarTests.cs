using Ashery.Exchange.Calendar;
using Ashery.Exchange.Gardens;
using Ashery.Gardens;
using Ashery.Journal;
using Ashery.Today;
using Ical.Net.CalendarComponents;

namespace Ashery.Exchange.Tests.Calendar;

/// <summary>The reminders as Ical.Net, a general library for RFC 5545, reads them.</summary>
public sealed class DueCalendarTests
{
    private static readonly DateOnly Today = new(2026, 5, 11);

    private static readonly DateTimeOffset Stamp = new(2026, 5, 11, 4, 5, 6, TimeSpan.Zero);

    private static readonly Garden Demo = DemoGarden.Create(Today);

    private static readonly DuePlan Plan = DuePlan.For(Demo, Today, daysAhead: 366);

    [Fact]
    public void Each_feed_to_give_is_an_all_day_event_with_an_alarm_in_the_morning()
    {
        var day = DueWork.For(new(Demo, Plan, []));
        var events = Read(DueCalendar.Write(day, Demo, Stamp, 6));
        Assert.Equal(day.Open.Count + day.Coming.Count, events.Count);
        Assert.Equal(
            day.Open.Select(_ => Today).Concat(day.Coming.Select(static r => r.On)).Order(),
            events.Select(static e => DateOnly.FromDateTime(e.Start!.Value)).Order());
        Assert.All(events, static e =>
        {
            Assert.True(e.IsAllDay);
            var alarm = Assert.Single(e.Alarms);
            Assert.Equal("DISPLAY", alarm.Action);

            // RFC 5545, 3.8.6.3: relative to the start of the day.
            Assert.Equal(6, alarm.Trigger!.Duration!.Value.Hours);
        });
        Assert.Equal(events.Count, events.Select(static e => e.Uid).Distinct().Count());
        Assert.Contains(events, static e => e.Description!.StartsWith("Overdue since 10 May.", StringComparison.Ordinal));
    }

    [Fact]
    public void What_was_given_is_gone_and_what_was_put_off_is_elsewhere()
    {
        var open = DueWork.For(new(Demo, Plan, [])).Open[0];
        List<string> pots = [.. open.Pots.Select(static p => p.PotId)];
        var moved = new Entry { Id = Guid.NewGuid(), Day = Today, Pots = pots[..1], Facts = new TaskMoved(open.Task, Today.AddDays(2)) };
        var given = new Entry { Id = Guid.NewGuid(), Day = Today, Pots = pots[1..], Facts = new FeedGiven(open.Task.FeedId, [], open.Task) };
        var events = Read(DueCalendar.Write(DueWork.For(new(Demo, Plan, [moved, given])), Demo, Stamp));
        Assert.DoesNotContain(events, e => DateOnly.FromDateTime(e.Start!.Value) == Today && e.Summary == open.FeedName);
        var name = Demo.Pots.Single(p => p.Id == pots[0]).Name;
        Assert.Contains(name, Assert.Single(events, e => DateOnly.FromDateTime(e.Start!.Value) == Today.AddDays(2) && e.Summary == open.FeedName).Description!, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_work_gives_the_same_text_and_names_stay_text()
    {
        var hostile = Demo with { Name = "a\nBEGIN:VEVENT", Pots = [.. Demo.Pots.Select(static p => p with { Name = "x;,\\\r\nEND:VCALENDAR" })] };
        var day = DueWork.For(new(Demo, Plan, []));
        Assert.Equal(DueCalendar.Write(day, hostile, Stamp), DueCalendar.Write(day, hostile, Stamp));
        Assert.Equal(day.Open.Count + day.Coming.Count, Read(DueCalendar.Write(day, hostile, Stamp)).Count);
    }

    private static List<CalendarEvent> Read(string text) => [.. Ical.Net.Calendar.Load(text)!.Events];
}
