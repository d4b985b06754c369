using System.Text.Json;
using Ashery.Cli.Tests.Frame;
using Ashery.Exchange.Gardens;
using Ashery.Gardens;

namespace Ashery.Cli.Tests.Verbs;

/// <summary><c>year --fit</c>, on a garden of one pot so that it is quick.</summary>
public sealed class FittedYearTests : IDisposable
{
    private readonly TemporaryFolder folder = new();
    private readonly string file;

    public FittedYearTests()
    {
        var demo = DemoGarden.Create(new DateOnly(2026, 3, 1));
        file = folder.File("small.json");
        File.WriteAllText(file, GardenFile.Write(demo with { Pots = [demo.Pots[0]] }));
    }

    [Fact]
    public void Text_and_json_show_the_same_plan_and_the_same_words_give_the_same_bytes()
    {
        var json = Run("--fit", "--json");
        Assert.Equal(0, json.Code);
        Assert.Equal(json.Output, Run("--fit", "--json").Output);
        using var year = JsonDocument.Parse(json.Output);
        var text = Run("--fit");
        Assert.Contains("fitted to the root zone", text.Output, StringComparison.Ordinal);
        foreach (var feed in year.RootElement.GetProperty("plan").GetProperty("feeds").EnumerateArray())
        {
            Assert.Contains(feed.GetProperty("date").GetString()!, text.Output, StringComparison.Ordinal);
        }

        foreach (var change in year.RootElement.GetProperty("changes").EnumerateArray().Select(static c => c.GetProperty("words").GetString()!).Where(static w => w != "As it was."))
        {
            Assert.Contains(change.Split(' ')[0], text.Output, StringComparison.Ordinal);
        }

        Assert.Empty(text.Errors);
    }

    [Fact]
    public void A_missed_day_is_left_out_of_the_year_that_is_fitted_again()
    {
        using var year = JsonDocument.Parse(Run("--fit", "--json").Output);
        var days = year.RootElement.GetProperty("plan").GetProperty("feeds").EnumerateArray()
            .Where(static f => f.GetProperty("kind").GetString() is "mineral" or "organic").Select(static f => f.GetProperty("date").GetString()!).Distinct().ToList();
        var missed = days.Last(static d => string.CompareOrdinal(d, "2026-07-15") < 0);
        using var again = JsonDocument.Parse(Run("--fit", "--json", "--today", "2026-07-15", "--missed", missed).Output);
        var now = again.RootElement.GetProperty("plan").GetProperty("feeds").EnumerateArray().Select(static f => f.GetProperty("date").GetString()!).ToList();
        Assert.DoesNotContain(missed, now);
        Assert.Equal("2026-07-15", again.RootElement.GetProperty("since").GetString());
    }

    [Theory]
    [InlineData("draws", "--fit", "--draws", "3")]
    [InlineData("draws", "--fit", "--draws", "many")]
    [InlineData("seed", "--fit", "--seed", "-1")]
    [InlineData("draws", "--draws", "100")]
    [InlineData("today", "--today", "2026-06-01")]
    [InlineData("today", "--fit", "--missed", "2026-06-01")]
    [InlineData("today", "--fit", "--today", "2031-06-01")]
    [InlineData("missed", "--fit", "--today", "2026-06-01", "--missed", "Friday")]
    [InlineData("weather", "--fit", "--today", "2026-06-01", "--weather", "no such file.csv")]
    public void Wrong_words_are_told_by_field(string field, params string[] words)
    {
        var run = Run([.. words]);
        Assert.Equal(2, run.Code);
        Assert.Contains(field, run.Said, StringComparison.Ordinal);
    }

    public void Dispose() => folder.Dispose();

    private Printed Run(params string[] words) => Command.Run(["year", "--garden", file, "--from", "2026-03-01", .. words]);
}
