using System.Text.Json;
using Ashery.Cli.Tests.Frame;
using Ical.Net;

namespace Ashery.Cli.Tests.Verbs;

public class YearTests
{
    /// <summary>Read back with the library Ical.Net, which follows RFC 5545.</summary>
    [Fact]
    public void The_calendar_file_holds_the_dates_of_the_json()
    {
        using var folder = new TemporaryFolder();
        var file = folder.File("feeds of the year.ics");
        var run = Command.Run("year", "--demo", "--from", "2026-03-01", "--ics", file, "--json");
        Assert.Equal(0, run.Code);
        using var json = JsonDocument.Parse(run.Output);
        var days = json.RootElement.GetProperty("feeds").EnumerateArray()
            .Select(static f => (f.GetProperty("date").GetString()!, f.GetProperty("feedName").GetString()!)).Distinct().Order().ToList();
        var calendar = Calendar.Load(File.ReadAllText(file))!;
        var events = calendar.Events.Where(static e => e.Categories.Contains(Exchange.Calendar.YearCalendar.FeedCategory))
            .Select(static e => (e.Start!.Value.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture), e.Summary!)).Distinct().Order().ToList();
        Assert.NotEmpty(days);
        Assert.Equal(days, events);
    }

    [Fact]
    public void The_same_words_give_the_same_bytes()
    {
        using var folder = new TemporaryFolder();
        Command.Run("year", "--demo", "--ics", folder.File("a.ics"));
        Command.Run("year", "--demo", "--ics", folder.File("b.ics"));
        Assert.Equal(File.ReadAllBytes(folder.File("a.ics")), File.ReadAllBytes(folder.File("b.ics")));
    }

    [Fact]
    public void A_file_that_cannot_be_written_is_told_and_nothing_is_left_behind()
    {
        using var folder = new TemporaryFolder();
        var run = Command.Run("year", "--demo", "--ics", Path.Combine(folder.Path, "no such folder", "a.ics"));
        Assert.Equal(2, run.Code);
        Assert.Contains("cannot be written", run.Said, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFileSystemEntries(folder.Path));
    }
}
