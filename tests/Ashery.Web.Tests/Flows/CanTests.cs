using System.Globalization;

namespace Ashery.Web.Tests.Flows;

public sealed class CanTests(TheBrowser browser)
{
    [Fact]
    public async Task Materials_in_a_water_become_a_picture_figures_and_words()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/can?water=hard&m=epsom-salt&g=2&crop=rose");
        await w.HeadingAsync("In the can");
        await Expect(w.Page.GetByRole(AriaRole.Img, new() { NameRegex = new("Conductivity and pH of the can in the window of Rose") })).ToBeVisibleAsync();
        await Expect(w.Page.GetByRole(AriaRole.Img, new() { NameRegex = new("What is near coming out") })).ToBeVisibleAsync();
        await w.SeesAsync("pH 7.5 fresh");

        await w.Page.GetByLabel("Material 2").SelectOptionAsync("calcium-nitrate-double");
        await w.Page.WaitForURLAsync("**calcium-nitrate-double**");
        await w.SeesAsync("Its grams are missing");
        await w.Page.GetByLabel("g in a litre").Nth(1).FillAsync("60");
        await w.Page.GetByLabel("g in a litre").Nth(1).PressAsync("Tab");
        await w.Page.WaitForURLAsync("**g=60**");
        await w.SeesAsync("order of magnitude");
        await w.SeesAsync("Gypsum");
    }

    [Fact]
    public async Task A_kept_feed_goes_in_at_a_strength()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site, 1280);
        var feed = site.Garden.Feeds.First(f => f.Dissolves);
        await w.GoAsync($"/can?water=soft&feed={feed.Id}&strength=2 g/L");
        await w.SeesAsync("Nutrients");
        var nitrogen = double.Parse(
            (await w.Page.Locator("tr", new() { Has = w.Page.GetByRole(AriaRole.Rowheader, new() { Name = "N", Exact = true }) }).First.Locator("td").First.TextContentAsync())!, CultureInfo.InvariantCulture);

        // 2 g/L of a feed holds 2000 mg times its label's nitrogen a litre, to the purity of the salts behind the label.
        Assert.InRange(nitrogen / (2000 * feed.Label[Ashery.Nutrients.Nutrient.N]), 0.93, 1.07);
    }

    [Theory]
    [InlineData("m=mkp&g=-1", "f-m0")]
    [InlineData("m=mkp&g=1,5", "f-g0")]
    [InlineData("m=&g=2", "f-m0")]
    [InlineData("m=mkp&g=1&m=mkp&g=2", "f-m1")]
    [InlineData("m=mkp&g=1&celsius=60", "f-celsius")]
    [InlineData("m=mkp&g=1&strength=strong", "f-strength")]
    [InlineData("m=mkp&g=1&water=gone", "f-water")]
    [InlineData("feed=gone", "f-feed")]
    [InlineData("m=neem-cake&g=1", "f-m0")]
    public async Task What_cannot_be_is_answered_at_its_field(string query, string field)
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/can?" + query);
        await Expect(w.Page.Locator($"#{field}")).ToHaveAttributeAsync("aria-invalid", "true");
    }

    [Fact]
    public async Task The_mixing_page_shows_the_can_of_its_blend()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/mix?want=3:1:3&from=chosen&m=potassium-nitrate&m=mkp&m=ammonium-nitrate&measure=free");
        var can = w.Page.GetByRole(AriaRole.Region, new() { Name = "In the can" });
        await Expect(can).ToContainTextAsync("1 g in a litre");
        await w.Link("All about the can").ClickAsync();
        await w.HeadingAsync("In the can");
        await w.SeesAsync("Nutrients");
    }
}
