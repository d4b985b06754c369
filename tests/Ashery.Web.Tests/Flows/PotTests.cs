namespace Ashery.Web.Tests.Flows;

public sealed class PotTests(TheBrowser browser)
{
    [Fact]
    public async Task A_pot_is_added_measured_changed_and_removed()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/pots/add");
        await w.Button("Add the pot").ClickAsync();
        await Expect(w.Page.Locator("#f-name-wrong")).ToContainTextAsync("missing");
        await Expect(w.Page.Locator("#f-crop-wrong")).ToContainTextAsync("missing");
        await Expect(w.Page.Locator("#f-volume-wrong")).ToContainTextAsync("missing");

        await w.Page.GetByLabel("Name").FillAsync("Blue tub");
        await w.Page.GetByLabel("Plant", new() { Exact = true }).SelectOptionAsync("rose");
        await w.Page.GetByLabel("Across the rim").FillAsync("30");
        await w.Page.GetByLabel("Height").FillAsync("28");
        await w.Page.GetByLabel("Last repotted").FillAsync("2025-03-01");
        await w.Button("Add the pot").ClickAsync();
        await w.SeesAsync("Added the pot Blue tub");
        var pot = site.Garden.Pots[^1];
        Assert.Equal((30.0, 28.0, new DateOnly(2025, 3, 1)), (pot.Size!.TopDiameter, pot.Size.Height, pot.LastRepotted));

        // A frustum of 30 cm across the rim and 28 cm high holds at most the cylinder, at least half of it.
        var cylinder = Math.PI * 15 * 15 * 28 / 1000;
        Assert.InRange(pot.Volume.Litres, cylinder / 2, cylinder);

        await w.Link("Blue tub").ClickAsync();
        await w.Page.GetByLabel("How many like it").FillAsync("2.5");
        await w.Button("Save the pot").ClickAsync();
        await Expect(w.Page.Locator("#f-count-wrong")).ToContainTextAsync("whole number");
        await w.Page.GetByLabel("How many like it").FillAsync("2");
        await w.Button("Save the pot").ClickAsync();
        await w.SeesAsync("Changed the pot Blue tub");
        Assert.Equal(2, site.Garden.Pots[^1].Count);

        await w.Link("Blue tub").ClickAsync();
        await w.Button("Remove this pot").ClickAsync();
        await w.SeesAsync("Removed the pot Blue tub");
        Assert.DoesNotContain(site.Garden.Pots, p => p.Name == "Blue tub");
    }

    [Fact]
    public async Task The_gate_says_not_today()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/pots");
        var pot = site.Garden.Pots[0];
        var card = w.Page.Locator("li.box").Filter(new() { Has = w.Page.GetByRole(AriaRole.Link, new() { Name = pot.Name, Exact = true }) });
        await Expect(card).Not.ToContainTextAsync("Not today");
        await card.GetByLabel("How is it?").SelectOptionAsync("dry");
        await Expect(card).ToContainTextAsync("Not today.");
        await Expect(card.GetByLabel("How is it?")).ToHaveValueAsync("dry");
        Assert.Contains($"state-{pot.Id}=dry", w.Page.Url, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_pot_has_a_dose_with_its_reasons()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/pots");
        await Expect(w.Page.Locator(".walk > li")).ToHaveCountAsync(site.Garden.Pots.Count);
        var first = w.Page.Locator(".walk > li").First;
        await first.GetByText("Why so much, and first aid").ClickAsync();
        await Expect(first.GetByRole(AriaRole.Heading, new() { Name = "When it got too much" })).ToBeVisibleAsync();
    }
}
