using System.Globalization;
using System.Text;
using System.Text.Json;
using Ashery.Exchange.Calendar;
using Ashery.Exchange.Gardens;
using Ashery.Gardens;
using Ashery.Planning;
using Ical.Net.CalendarComponents;

namespace Ashery.Exchange.Tests.Calendar;

/// <summary>The year as JSON keeps its contract, and the calendar file holds the same dates, as a general library for RFC 5545 reads it.</summary>
public class YearFilesTests
{
    private static readonly DateOnly Today = new(2027, 2, 3);

    private static readonly DateTimeOffset Stamp = new(2027, 2, 3, 4, 5, 6, TimeSpan.Zero);

    private static readonly Garden Demo = DemoGarden.Create(Today);

    private static readonly YearPlan Plan = YearPlanner.Plan(new(Demo, Today));

    [Fact]
    public void Json_of_the_year_keeps_its_contract()
    {
        using var json = JsonDocument.Parse(YearJson.Write(Plan));
        var root = json.RootElement;
        foreach (var season in root.GetProperty("seasons").EnumerateArray())
        {
            Assert.Contains(season.GetProperty("name").GetString(), (string[])["growing", "hot", "rainy", "resting"]);
            Assert.True(Date(season, "from") <= Date(season, "to"));
        }

        var pots = Demo.Pots.Select(static p => p.Id).ToHashSet();
        var feeds = root.GetProperty("feeds").EnumerateArray().ToList();
        Assert.NotEmpty(feeds);
        Assert.All(feeds, feed =>
        {
            Assert.InRange(Date(feed, "date"), Plan.From, Plan.To);
            Assert.All(feed.GetProperty("pots").EnumerateArray(), p => Assert.Contains(p.GetString()!, pots));
            Assert.Contains(feed.GetProperty("kind").GetString(), (string[])["mineral", "organic", "foliar", "traceElements", "inoculant"]);
            Assert.False(string.IsNullOrEmpty(feed.GetProperty("feed").GetString()));
            Assert.True(feed.GetProperty("grams").GetDouble() > 0);
            Assert.True(feed.GetProperty("reasons").GetArrayLength() > 0);
        });
        Assert.Equal(5, feeds.Select(static f => f.GetProperty("kind").GetString()).Distinct().Count());
    }

    [Fact]
    public void The_calendar_file_parses_and_holds_the_dates_of_the_json()
    {
        using var json = JsonDocument.Parse(YearJson.Write(Plan));
        var expected = json.RootElement.GetProperty("feeds").EnumerateArray()
            .Select(static f => (Date(f, "date"), f.GetProperty("feedName").GetString()!)).Distinct().Order().ToList();
        var events = Read(YearCalendar.Write(Plan, Demo, Stamp));
        var feeds = events.Where(static e => e.Categories.Contains(YearCalendar.FeedCategory)).ToList();
        Assert.Equal(expected, feeds.Select(static e => (DateOnly.FromDateTime(e.Start!.Value), e.Summary!)).Order());
        Assert.All(events, static e =>
        {
            Assert.True(e.IsAllDay);
            Assert.Equal(Stamp.UtcDateTime, e.DtStamp!.AsUtc);
        });
        Assert.Equal(events.Count, events.Select(static e => e.Uid).Distinct().Count());
    }

    [Fact]
    public void Lime_days_are_in_the_calendar_too()
    {
        var hungry = Demo with { Feeds = [.. Demo.Feeds.Where(static f => f.Id == "terrace-blend").Select(static f => f with { LimeEquivalent = 3 })] };
        var plan = YearPlanner.Plan(new(hungry, Today));
        var expected = plan.LimeDebts.SelectMany(static d => d.Corrections).Select(static c => c.Date).Distinct().Order().ToList();
        Assert.NotEmpty(expected);
        Assert.Equal(expected, Read(YearCalendar.Write(plan, hungry, Stamp)).Where(static e => e.Categories.Contains(YearCalendar.LimeCategory)).Select(static e => DateOnly.FromDateTime(e.Start!.Value)).Order());
    }

    [Fact]
    public void The_same_plan_gives_the_same_bytes_and_a_new_stamp_keeps_the_uids()
    {
        Assert.Equal(YearCalendar.Write(Plan, Demo, Stamp), YearCalendar.Write(Plan, Demo, Stamp));
        Assert.Equal(YearJson.Write(Plan), YearJson.Write(YearPlanner.Plan(new(Demo, Today))));
        var later = Read(YearCalendar.Write(Plan, Demo, Stamp.AddDays(9)));
        Assert.Equal(Read(YearCalendar.Write(Plan, Demo, Stamp)).Select(static e => e.Uid), later.Select(static e => e.Uid));
    }

    // RFC 5545, 3.1: lines end in CRLF and are folded at 75 octets; 3.3.11: commas, semicolons, backslashes and line breaks are escaped.
    [Theory]
    [InlineData("Roses, red; white \\ pink")]
    [InlineData("a\nBEGIN:VEVENT\nSUMMARY:gotcha\nEND:VEVENT")]
    [InlineData("END:VCALENDAR\r\nX-EVIL:1")]
    [InlineData("\u0000\u0007 bell")]
    [InlineData("জবা ফুলের টব জবা ফুলের টব জবা ফুলের টব জবা ফুলের টব")]
    [InlineData("Pot 🌺 half \ud83c pair")]
    [InlineData("\"quoted\":;,")]
    public void Hostile_names_stay_text(string name)
    {
        var garden = Demo with
        {
            Name = name,
            Pots = [.. Demo.Pots.Select(p => p with { Name = name })],
            Feeds = [.. Demo.Feeds.Select(f => f with { Name = name })],
        };
        var plan = YearPlanner.Plan(new(garden, Today));
        var text = YearCalendar.Write(plan, garden, Stamp);
        Assert.All(text.Split("\r\n"), static line =>
        {
            Assert.True(Encoding.UTF8.GetByteCount(line) <= 75, line);
            Assert.DoesNotContain('\n', line);
            Assert.DoesNotContain(line, static c => char.IsControl(c) && c != '\t');
        });
        Assert.Single(text.Split("\r\n"), static line => line == "BEGIN:VCALENDAR");
        Assert.Single(text.Split("\r\n"), static line => line == "END:VCALENDAR");
        var events = Read(text);
        Assert.Equal(plan.Feeds.Select(static f => (f.Date, f.FeedId)).Distinct().Count(), events.Count(static e => e.Categories.Contains(YearCalendar.FeedCategory)));
        Assert.DoesNotContain(events, static e => e.Summary == "gotcha");
    }

    [Fact]
    public void Names_with_the_signs_of_the_format_come_back_as_they_were()
    {
        const string name = "Roses, red; white \\ pink: জবা 🌺";
        var garden = Demo with { Feeds = [.. Demo.Feeds.Select(static f => f with { Name = name })] };
        Assert.All(Read(YearCalendar.Write(YearPlanner.Plan(new(garden, Today)), garden, Stamp)).Where(static e => e.Categories.Contains(YearCalendar.FeedCategory)), static e => Assert.StartsWith("Roses, red; white \\ pink: জবা 🌺", e.Summary, StringComparison.Ordinal));
    }

    [Fact]
    public void Json_of_the_dose_tells_each_pot_once_with_gate_and_first_aid()
    {
        using var json = JsonDocument.Parse(DoseJson.Write(DoseRound.For(new(Demo, new(2027, 5, 4))).Value!));
        var pots = json.RootElement.GetProperty("pots").EnumerateArray().ToList();
        Assert.Equal(Demo.Pots.Select(static p => p.Id).Order(StringComparer.Ordinal), pots.Select(static p => p.GetProperty("pot").GetString()!).Order(StringComparer.Ordinal));
        Assert.Equal(Enumerable.Range(1, pots.Count), pots.Select(static p => p.GetProperty("number").GetInt32()));
        Assert.All(pots, static p => Assert.True(p.GetProperty("firstAid").GetProperty("litresAPass").GetDouble() > 0));
    }

    private static List<CalendarEvent> Read(string text) => [.. Ical.Net.Calendar.Load(text)!.Events];

    private static DateOnly Date(JsonElement element, string name) => DateOnly.ParseExact(element.GetProperty(name).GetString()!, "yyyy-MM-dd", CultureInfo.InvariantCulture);
}
