using Ashery.Feeds;
using Ashery.Nutrients;

namespace Ashery.Web.Tests.Flows;

public sealed class MixTests(TheBrowser browser)
{
    [Fact]
    public async Task A_wish_becomes_blends_a_limit_changes_them_and_back_goes_back()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site, 1280);
        await w.GoAsync("/mix?want=5:1:4&from=shelf&measure=free");
        await w.HeadingAsync("Mix for 5:1:4");
        await Expect(w.Page.Locator("article.blend")).ToHaveCountAsync(20);
        await w.SeesAsync("Proved");
        await Expect(w.Page.GetByRole(AriaRole.Img, new() { NameRegex = new("N-P-K triangle, target 5:1:4") })).ToBeVisibleAsync();

        await w.Page.GetByText("Limits", new() { Exact = true }).ClickAsync();
        await w.Page.GetByLabel("Chloride").FillAsync("0.1");
        await w.Page.GetByLabel("Chloride").PressAsync("Tab");
        await w.Page.WaitForURLAsync("**chloride=0.1**");
        await Expect(w.Page.GetByLabel("Chloride")).ToHaveValueAsync("0.1");
        await w.Page.GoBackAsync();
        await Expect(w.Page.GetByLabel("Or a ratio or grade")).ToHaveValueAsync("5:1:4");
        Assert.DoesNotContain("chloride=0.1", w.Page.Url, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_blend_is_kept_as_a_feed_and_printed()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/mix?want=5:1:4&from=shelf&measure=free&batch=500g");
        await w.Link("All about blend 2").ClickAsync();
        var second = w.Page.Locator("#blend-2");
        await Expect(second).ToContainTextAsync("mean relative deviation");
        var grade = (await second.Locator(".grade").TextContentAsync())!;
        await w.Page.GetByLabel("Keep it as a feed called").FillAsync("Porch <mix>");
        await w.Button("Keep the feed").ClickAsync();
        await Expect(w.Page.GetByRole(AriaRole.Heading, new() { Name = "Porch <mix>", Level = 2 })).ToBeVisibleAsync();
        var feed = site.Garden.Feeds[^1];
        Assert.Equal(("Porch <mix>", FeedKind.Mineral), (feed.Name, feed.Kind));
        Assert.StartsWith(grade.Split('-')[0].Split('.')[0], (feed.Label[Nutrient.N] * 100).ToString("0.0", System.Globalization.CultureInfo.InvariantCulture), StringComparison.Ordinal);
        Assert.Equal(1, feed.Parts.Values.Sum(), 6);

        foreach (var (form, begins) in new[] { ("PDF", "%PDF-"), ("SVG", "<"), ("HTML", "<!doctype html>"), ("Text", "") })
        {
            var download = await w.Page.RunAndWaitForDownloadAsync(() => w.Link(form).ClickAsync());
            var bytes = await File.ReadAllBytesAsync(await download.PathAsync(), TestContext.Current.CancellationToken);
            Assert.StartsWith(begins, System.Text.Encoding.Latin1.GetString(bytes), StringComparison.Ordinal);
            Assert.True(bytes.Length > 500, form);
        }
    }

    [Fact]
    public async Task Out_of_reach_is_an_answer()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/mix?want=40-20-30&from=shelf&measure=free");
        var far = w.Page.GetByRole(AriaRole.Region, new() { Name = "Out of reach" });
        await Expect(far).ToContainTextAsync("Nearest");
        await Expect(far).ToContainTextAsync("Falls short");
        await Expect(far).ToContainTextAsync("To buy");
    }

    [Theory]
    [InlineData("want=four", "f-want")]
    [InlineData("want=5:1:4&urea=lots", "f-urea")]
    [InlineData("want=5:1:4&batch=-3g", "f-batch")]
    [InlineData("want=5:1:4&batch=NaN", "f-batch")]
    [InlineData("want=5:1:4&limit=moon<=3%25", "f-limit")]
    [InlineData("want=5:1:4&measure=scale&step=0", "f-step")]
    [InlineData("want=0:0:0", "f-want")]
    [InlineData("want=5:1:4&from=chosen", "f-from")]
    public async Task What_cannot_be_is_answered_at_its_field(string query, string field)
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/mix?from=shelf&" + query);
        await Expect(w.Page.Locator($"#{field}")).ToHaveAttributeAsync("aria-invalid", "true");
        await Expect(w.Page.Locator($"#{field}-wrong")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Chosen_materials_by_the_scoop()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site, 1280);
        await w.GoAsync("/mix?want=3:1:3&from=chosen&measure=scoop&scoop=teaspoon&batch=60g..80g");
        foreach (var (name, id) in new[] { ("Ammonium sulfate", "ammonium-sulfate"), ("Steamed bone meal", "bone-meal-steamed"), ("Sulphate of potash", "potassium-sulfate") })
        {
            await w.Page.GetByLabel(name, new() { Exact = true }).CheckAsync();
            await w.Page.WaitForURLAsync($"**m={id}**");
        }

        await Expect(w.Page.Locator("#blend-1")).ToContainTextAsync("scoop");
    }
}
