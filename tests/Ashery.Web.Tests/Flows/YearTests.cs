using System.Globalization;
using Ashery.Planning;

namespace Ashery.Web.Tests.Flows;

public sealed class YearTests(TheBrowser browser)
{
    [Fact]
    public async Task The_calendar_file_holds_the_days_of_the_page()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/year?from=2026-05-09");
        var download = await w.Page.RunAndWaitForDownloadAsync(() => w.Link("For the calendar (ICS)").ClickAsync());
        var calendar = Ical.Net.Calendar.Load(await File.ReadAllTextAsync(await download.PathAsync(), TestContext.Current.CancellationToken))!;
        var days = calendar.Events.Select(e => e.Start!.Value.Date).Distinct().Order().ToList();
        var plan = YearPlanner.Plan(new YearRequest(site.Garden, new DateOnly(2026, 5, 9)));
        Assert.Equal(plan.Feeds.Select(f => f.Date.ToDateTime(TimeOnly.MinValue)).Distinct().Order(), days.Select(d => d));
        foreach (var summary in await w.Page.Locator("main > details > summary").AllAsync())
        {
            if (await summary.EvaluateAsync<bool>("s => !s.parentElement.open"))
            {
                await summary.ClickAsync();
            }
        }

        var shown = (await w.Page.Locator("main .feed-line h3").AllInnerTextsAsync())
            .Select(t => DateTime.ParseExact(t, "ddd d MMM yyyy", CultureInfo.InvariantCulture)).Distinct().Order();
        Assert.Equal(days, shown);
    }

    [Fact]
    public async Task A_rule_is_changed_the_year_follows_and_it_goes_back_as_published()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/year/rules/mineral-hot-season");
        await w.Page.GetByLabel("What to do").SelectOptionAsync("reduce");
        await w.Page.GetByLabel("Factor").FillAsync("7");
        await w.Button("Save the rule").ClickAsync();
        await Expect(w.Page.Locator("#f-factor-wrong")).ToContainTextAsync("outside 0 to 1");
        await w.Page.GetByLabel("Factor").FillAsync("0.25");
        await w.Button("Save the rule").ClickAsync();
        await w.HeadingAsync("Rules");
        Assert.Equal("reduce, factor=0.25", site.Garden.RuleChanges["mineral-hot-season"]);
        var july = YearPlanner.Plan(new YearRequest(site.Garden, new DateOnly(2026, 5, 9))).Feeds.Where(f => f.Kind == Ashery.Feeds.FeedKind.Mineral && f.Date.Month == 7);
        Assert.NotEmpty(july);

        await w.GoAsync("/year/rules/mineral-hot-season");
        await w.Button("As published").ClickAsync();
        await w.HeadingAsync("Rules");
        Assert.Empty(site.Garden.RuleChanges);
    }

    [Fact]
    public async Task Seasons_of_the_other_hemisphere_may_run_over_the_years_end()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/settings/place");
        await w.Page.GetByLabel("Latitude").FillAsync("-33");
        await w.Page.GetByRole(AriaRole.Group, new() { Name = "Growing" }).GetByLabel("First day").FillAsync("1 Sep");
        await w.Page.GetByRole(AriaRole.Group, new() { Name = "Growing" }).GetByLabel("Last day").FillAsync("30 Apr");
        await w.Page.GetByRole(AriaRole.Group, new() { Name = "Resting" }).GetByLabel("First day").FillAsync("May");
        await w.Button("Save the place").ClickAsync();
        await Expect(w.Page.Locator("#f-from-Resting-wrong")).ToContainTextAsync("not a day of the year");
        await Expect(w.Page.GetByRole(AriaRole.Group, new() { Name = "Growing" }).GetByLabel("Last day")).ToHaveValueAsync("30 Apr");
        await w.Page.GetByRole(AriaRole.Group, new() { Name = "Resting" }).GetByLabel("First day").FillAsync("1 May");
        await w.Page.GetByRole(AriaRole.Group, new() { Name = "Resting" }).GetByLabel("Last day").FillAsync("31 Aug");
        await w.Button("Save the place").ClickAsync();
        await w.SeesAsync("Changed the place and its seasons");
        Assert.Equal(2, site.Garden.Place.Seasons.Count);
        var plan = YearPlanner.Plan(new YearRequest(site.Garden, new DateOnly(2026, 5, 9)));
        Assert.DoesNotContain(plan.Feeds, f => f.Date.Month is >= 5 and <= 8);
        Assert.Contains(plan.Feeds, f => f.Date.Month is 1);
    }
}
