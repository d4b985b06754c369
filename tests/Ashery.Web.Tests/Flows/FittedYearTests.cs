using Ashery.Planning.Fit;

namespace Ashery.Web.Tests.Flows;

/// <summary>The year fitted on request, on a garden of three pots so that it is quick.</summary>
public sealed class FittedYearTests(TheBrowser browser)
{
    [Theory]
    [InlineData(390)]
    [InlineData(1280)]
    public async Task A_button_fits_the_year_and_the_page_shows_what_the_library_found(int width)
    {
        await using var site = await Site.StartAsync();
        site.Put(g => g with { Pots = [.. g.Pots.Take(3)] });
        await using var w = await browser.OpenAsync(site, width);
        await w.GoAsync("/year?from=2026-05-09");
        await FitAsync(w);
        var year = YearFit.Plan(new FitRequest(site.Garden, new DateOnly(2026, 5, 9))).Value!;
        var rows = w.Page.GetByRole(AriaRole.Region, new() { Name = "The fitted year beside the rule of thumb" }).Locator("tbody tr").First.Locator("td");
        Assert.Equal(
            [FormattableString.Invariant($"{year.Fitted.Rounds}"), FormattableString.Invariant($"{year.BesideMeasure.Rounds}")],
            await rows.AllInnerTextsAsync());
        await Checks.NoSidewaysScrollAsync(w.Page, "fitted year");
        await Checks.BigTargetsAsync(w.Page, "fitted year");
        await Checks.AxeAsync(w.Page, "fitted year");
        await ShotAsync(w, "fitted", width);
        await w.Page.GetByRole(AriaRole.Region, new() { Name = "Pots under the fitted plan" }).GetByRole(AriaRole.Link).First.ClickAsync();
        await Expect(w.Page.GetByRole(AriaRole.Heading, new() { Name = $"The roots of {site.Garden.Pots[0].Name}" })).ToBeVisibleAsync();
        await Expect(w.Page.Locator("figcaption")).ToContainTextAsync("The fitted year.");
        await Checks.AxeAsync(w.Page, "roots of a fitted pot");
        await ShotAsync(w, "roots", width);
    }

    [Fact]
    public async Task After_a_missed_feed_and_a_storm_the_rest_of_the_year_is_planned_again()
    {
        await using var site = await Site.StartAsync();
        site.Put(g => g with { Pots = [.. g.Pots.Take(2)] });
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/year?from=2026-03-01");
        await FitAsync(w);

        // Wrong first: every field says what is wrong with it, and what was typed stays.
        await w.Page.GetByText("Plan again from a day").ClickAsync();
        await w.Page.GetByLabel("Day of the storm", new() { Exact = true }).FillAsync("2026-05-04");
        await w.Button("Plan again").ClickAsync();
        await Expect(w.Page.Locator("main")).ToContainTextAsync("A storm needs its day and its rain.");
        await Expect(w.Page.GetByLabel("Day of the storm", new() { Exact = true })).ToHaveValueAsync("2026-05-04");
        await w.Page.Locator("#f-rainMm").FillAsync("85");
        var box = w.Page.GetByRole(AriaRole.Group, new() { Name = "Feeds that were missed" }).GetByRole(AriaRole.Checkbox).Last;
        var missed = DateOnly.ParseExact((await box.GetAttributeAsync("value"))!, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
        await box.CheckAsync();
        await Checks.AxeAsync(w.Page, "form to plan again");
        await ShotAsync(w, "again-form", 390);
        await w.Button("Plan again").ClickAsync();
        await LookAsync(w);
        await Expect(w.Page.GetByRole(AriaRole.Heading, new() { Name = "Fitted again from Sat 9 May 2026" })).ToBeVisibleAsync();
        var request = new FitRequest(site.Garden, new DateOnly(2026, 3, 1));
        var before = YearFit.Plan(request).Value!;
        var again = YearFit.Plan(request with { Replan = new(before, new DateOnly(2026, 5, 9)) { Missed = [missed], Told = [new(new DateOnly(2026, 5, 4), 85)] } }).Value!;
        var rows = w.Page.GetByRole(AriaRole.Region, new() { Name = "The year fitted again beside the plan that was followed" }).Locator("tbody tr").First.Locator("td");
        Assert.Equal(
            [FormattableString.Invariant($"{again.Fitted.Rounds}"), FormattableString.Invariant($"{again.BesideMeasure.Rounds}")],
            await rows.AllInnerTextsAsync());
        await Checks.NoSidewaysScrollAsync(w.Page, "year fitted again");
        await Checks.AxeAsync(w.Page, "year fitted again");
        await ShotAsync(w, "again", 390);
        await ShotAsync(w, "again", 1280);
        await Checks.AxeAsync(w.Page, "year fitted again, wide");
    }

    [Fact]
    public async Task A_garden_that_changed_is_no_longer_shown_as_fitted()
    {
        await using var site = await Site.StartAsync();
        site.Put(g => g with { Pots = [.. g.Pots.Take(1)] });
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/year?from=2026-05-09");
        await FitAsync(w);
        site.Put(g => g with { Settings = g.Settings with { ScaleStep = 0.5 } });
        await w.GoAsync("/year?from=2026-05-09");
        await Expect(w.Button("Fit the year")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Without_a_climate_table_it_says_what_is_missing()
    {
        await using var site = await Site.StartAsync();
        site.Put(g => g with { Pots = [.. g.Pots.Take(1)], Place = g.Place with { Normals = null, Seasons = [new(Ashery.Climate.SeasonKind.Growing, new(3, 1), new(10, 31))] } });
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/year?from=2026-05-09");
        await w.Button("Fit the year").ClickAsync();
        await Expect(w.Page.Locator("main")).ToContainTextAsync("normals");
    }

    /// <summary>A picture to look at, where a folder is named.</summary>
    private static async Task ShotAsync(Window w, string name, int width)
    {
        if (Environment.GetEnvironmentVariable("ASHERY_SHOTS") is { } folder)
        {
            await w.Page.SetViewportSizeAsync(width, 1500);
            await w.Page.EvaluateAsync("() => scrollTo(0, 0)");
            await w.Page.ScreenshotAsync(new() { Path = Path.Combine(folder, FormattableString.Invariant($"{name}-{width}.png")) });
            await w.Page.EvaluateAsync("() => scrollTo(0, 1400)");
            await w.Page.ScreenshotAsync(new() { Path = Path.Combine(folder, FormattableString.Invariant($"{name}-{width}-below.png")) });
        }
    }

    private static async Task FitAsync(Window w)
    {
        await w.Button("Fit the year").ClickAsync();
        await LookAsync(w);
        await Expect(w.Page.GetByRole(AriaRole.Heading, new() { Name = "Fitted to the roots" })).ToBeVisibleAsync();
    }

    private static async Task LookAsync(Window w)
    {
        for (var i = 0; i < 30 && await w.Button("Look again").CountAsync() > 0; i++)
        {
            await w.Button("Look again").ClickAsync();
        }
    }
}
