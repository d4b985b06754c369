namespace Ashery.Web.Tests.Flows;

/// <summary>Acid, stock tanks and leaf sprays in a browser.</summary>
public sealed class InjectorTests(TheBrowser browser)
{
    [Fact]
    public async Task Acid_for_a_water_has_a_picture_a_table_and_its_cautions()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/can/acid?water=hard&acid=nitric&strength=60&aim=ph&to=6&litres=25");
        await w.HeadingAsync("Acid for a water");
        await Expect(w.Page.GetByRole(AriaRole.Img, new() { NameRegex = new("pH against acid") })).ToBeVisibleAsync();
        await w.SeesAsync("Pour acid into water");
        await w.SeesAsync("2019/1148");
        await w.SeesAsync("the pH rises as carbon dioxide leaves");

        // Without script, by the button: what was typed stays.
        await w.Page.GetByLabel("Target").FillAsync("6.4");
        await w.Page.GetByRole(AriaRole.Button, new() { Name = "Work it out" }).ClickAsync();
        await w.Page.WaitForURLAsync("**to=6.4**");
        await Expect(w.Page.GetByLabel("Target")).ToHaveValueAsync("6.4");
        await w.SeesAsync("pH 6.4 just mixed");
    }

    [Fact]
    public async Task A_feed_is_shared_over_tanks()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site, 1280);
        await w.GoAsync("/can/tanks?water=soft&m=calcium-nitrate-double&g=0.6&m=epsom-salt&g=0.4&m=mkp&g=0.15&ratio=100&tanks=2&coldest=5");
        await w.HeadingAsync("Stock tanks");
        await w.SeesAsync("Clear at 1:100 down to 5 °C, with a margin.");
        await Expect(w.Page.GetByRole(AriaRole.Img, new() { NameRegex = new("2 stock tanks") })).ToBeVisibleAsync();
        await Expect(w.Page.Locator("section", new() { HasText = "Filling tank A" }).Last).ToContainTextAsync("60 g of Calcium nitrate");
        await w.SeesAsync("never pour one tank into another");

        await w.Page.GetByLabel("Tanks", new() { Exact = true }).SelectOptionAsync("1");
        await w.Page.WaitForURLAsync("**tanks=1**");
        await w.SeesAsync("Not clear at 1:100");
    }

    [Fact]
    public async Task A_spray_is_judged_with_its_sources()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/can/spray?water=soft&m=epsom-salt&g=2&pot=3&pots=10&now=30");
        await w.HeadingAsync("Leaf spray");
        await w.SeesAsync("Within the printed limits.");
        await w.SeesAsync("no source stands behind it");
        await w.SeesAsync("About 45 mL a pot");
        await w.SeesAsync("Not now: ");
        await Expect(w.Page.GetByRole(AriaRole.Img, new() { NameRegex = new("The spray against printed limits") })).ToBeVisibleAsync();
        await w.Link("Acid").ClickAsync();
        await w.HeadingAsync("Acid for a water");
    }

    [Theory]
    [InlineData("/can/acid?water=hard&acid=nitric&strength=121&to=60", "f-strength")]
    [InlineData("/can/acid?water=hard&acid=nitric&density=0.5&to=60", "f-density")]
    [InlineData("/can/acid?water=hard&acid=sulfuric&density=1.835&to=60", "f-density")]
    [InlineData("/can/acid?water=hard&acid=nitric&strength=60&aim=ph&to=9", "f-to")]
    [InlineData("/can/acid?water=hard&acid=nitric&strength=60&to=900", "f-to")]
    [InlineData("/can/acid?water=hard&acid=nitric&strength=60&to=60&celsius=60", "f-celsius")]
    [InlineData("/can/acid?water=hard&acid=vinegar&strength=60&to=60", "f-acid")]
    [InlineData("/can/acid?water=hard&acid=nitric&strength=60&to=60&litres=0", "f-litres")]
    [InlineData("/can/acid?water=gone&acid=nitric&strength=60&to=60", "f-water")]
    [InlineData("/can/tanks?m=mkp&g=0.2&ratio=0", "f-ratio")]
    [InlineData("/can/tanks?m=mkp&g=-1", "f-m0")]
    [InlineData("/can/tanks?m=mkp&g=1&coldest=60", "f-coldest")]
    [InlineData("/can/tanks?m=phosphoric-acid-85&g=0.1&m=calcium-nitrate-double&g=0.5&tanks=1", "f-tanks")]
    [InlineData("/can/spray?m=epsom-salt&g=1,5", "f-g0")]
    [InlineData("/can/spray?m=epsom-salt&g=900", "f-m0")]
    [InlineData("/can/spray?m=epsom-salt&g=2&biuret=40", "f-biuret")]
    [InlineData("/can/spray?m=epsom-salt&g=2&crop=weed", "f-crop")]
    public async Task What_cannot_be_is_answered_at_its_field(string path, string field)
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync(path);
        await Expect(w.Page.Locator($"#{field}")).ToHaveAttributeAsync("aria-invalid", "true");
    }
}
