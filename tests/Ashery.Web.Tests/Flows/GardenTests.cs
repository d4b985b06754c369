using Ashery.Exchange.Gardens;

namespace Ashery.Web.Tests.Flows;

public sealed class GardenTests(TheBrowser browser)
{
    private const string Hostile = "<script>alert('x')</script>\"&'; DROP TABLE pot; -- \u202Eesrever ";

    [Fact]
    public async Task The_demo_goes_in_one_click_and_comes_back_in_one()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/");
        await w.SeesAsync("Demo garden");
        Assert.Equal(18, site.Garden.Pots.Sum(p => p.Count));
        await w.Button("Remove the demo").ClickAsync();
        await w.SeesAsync("Three things make a year of feeds");
        Assert.False(site.Garden.IsDemo);
        Assert.Empty(site.Garden.Pots);
        await Expect(w.Main).Not.ToContainTextAsync("Demo garden");
        await w.Button("Undo").ClickAsync();
        await w.SeesAsync("Demo garden");
        Assert.Equal(18, site.Garden.Pots.Sum(p => p.Count));
    }

    [Fact]
    public async Task Every_page_works_on_an_empty_garden()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/");
        await w.Button("Remove the demo").ClickAsync();
        await w.SeesAsync("Three things make a year of feeds");
        foreach (var (name, path) in AllPages.All.Where(p => !p.Path.Contains('{', StringComparison.Ordinal) && p.Name is not ("nothing-here" or "too-large")))
        {
            await w.GoAsync(path);
            await Checks.OutlineAsync(w.Page, name);
            await Checks.NoSidewaysScrollAsync(w.Page, name);
        }
    }

    [Fact]
    public async Task The_second_of_two_windows_is_told_and_keeps_what_it_typed()
    {
        await using var site = await Site.StartAsync();
        await using var first = await browser.OpenAsync(site);
        await using var second = await browser.OpenAsync(site);
        await first.GoAsync("/settings");
        await second.GoAsync("/settings");
        await first.Page.GetByLabel("Name of the garden").FillAsync("First window");
        await first.Button("Save the settings").ClickAsync();
        await first.SeesAsync("Changed the settings");

        await second.Page.GetByLabel("Name of the garden").FillAsync("Second window");
        await second.Button("Save the settings").ClickAsync();
        await Expect(second.Page.GetByRole(AriaRole.Alert)).ToContainTextAsync("changed in another window");
        await Expect(second.Page.GetByLabel("Name of the garden")).ToHaveValueAsync("Second window");
        Assert.Equal("First window", site.Garden.Name);

        await second.Button("Save the settings").ClickAsync();

        // The footer says so of the first window's change already.
        await Expect(second.Page.GetByRole(AriaRole.Status)).ToContainTextAsync("Changed the settings");
        Assert.Equal("Second window", site.Garden.Name);
    }

    [Fact]
    public async Task Going_back_to_any_change_is_a_change_that_can_be_undone()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        foreach (var name in new[] { "One", "Two", "Three" })
        {
            site.Put(g => g with { Name = name }, $"Named it {name}");
        }

        await w.GoAsync("/settings/changes");
        await w.Page.Locator("li").Filter(new() { HasText = "Named it Two" }).GetByRole(AriaRole.Button).ClickAsync();
        await Expect(w.Main).ToContainTextAsync("Went back to before: Named it Two");
        Assert.Equal("One", site.Garden.Name);
        await w.Button("Undo this").ClickAsync();
        await Expect(w.Main).ToContainTextAsync("Went back to before: Went back to before: Named it Two");
        Assert.Equal("Three", site.Garden.Name);
    }

    [Fact]
    public async Task Settings_change_what_pages_show_and_what_is_wrong_is_said()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/settings");
        await w.Page.GetByLabel("Currency").FillAsync("Euro");
        await w.Page.GetByLabel("Scale step").FillAsync("0,5");
        await w.Button("Save the settings").ClickAsync();
        await Expect(w.Page.Locator("#f-currency-wrong")).ToContainTextAsync("not a currency code");
        await Expect(w.Page.Locator("#f-step-wrong")).ToContainTextAsync("comma");
        await Expect(w.Page.GetByLabel("Scale step")).ToHaveValueAsync("0,5");
        await w.Page.GetByLabel("Currency").FillAsync("usd");
        await w.Page.GetByLabel("Scale step").FillAsync("0.5");
        await w.Page.GetByLabel("Units").SelectOptionAsync("us");
        await w.Button("Save the settings").ClickAsync();
        await w.SeesAsync("Changed the settings");
        Assert.Equal(("USD", true, 0.5), (site.Garden.Settings.Currency, site.Garden.Settings.UsUnits, site.Garden.Settings.ScaleStep));
        await w.GoAsync("/pots");
        await w.SeesAsync(" gal");
        await w.GoAsync("/shelf");
        await w.SeesAsync("USD a kg");

        // NIST Handbook 44, appendix C (from memory): 1 gal is 3.785411784 L exactly.
        await w.GoAsync("/pots/add");
        await w.Page.GetByLabel("Name").FillAsync("Bucket");
        await w.Page.GetByLabel("Plant", new() { Exact = true }).SelectOptionAsync("rose");
        await w.Page.GetByLabel("Volume").FillAsync("5");
        await w.Button("Add the pot").ClickAsync();
        await w.SeesAsync("Added the pot Bucket");
        Assert.Equal(18.92705892, site.Garden.Pots[^1].Volume.Litres, 9);
    }

    [Fact]
    public async Task A_scoop_is_added_weighed_and_removed()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/settings/scoops");
        await w.Page.GetByLabel("Name", new() { Exact = true }).FillAsync("Red spoon");
        await w.Page.GetByLabel("Level volume").FillAsync("5");
        await w.Button("Add the scoop").ClickAsync();
        await w.SeesAsync("Added the scoop Red spoon");
        var card = w.Page.GetByRole(AriaRole.Region, new() { Name = "Red spoon" });
        await card.GetByText("Weigh a material with it").ClickAsync();
        await card.GetByLabel("Material").SelectOptionAsync("epsom-salt");
        await card.GetByLabel("Their mass together").FillAsync("47");
        await card.GetByRole(AriaRole.Button, new() { Name = "Keep it" }).ClickAsync();
        await w.SeesAsync("Weighed Epsom salt with Red spoon");
        Assert.Equal(4.7, site.Garden.Scoops[^1].Calibrations["epsom-salt"].Typical, 9);
        await w.Page.GetByRole(AriaRole.Region, new() { Name = "Red spoon" }).GetByRole(AriaRole.Button, new() { Name = "Remove the scoop" }).ClickAsync();
        await w.SeesAsync("Removed the scoop Red spoon");
        Assert.DoesNotContain(site.Garden.Scoops, s => s.Name == "Red spoon");
    }

    [Fact]
    public async Task The_garden_goes_along_in_a_file_and_comes_back()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/settings/backup");
        var download = await w.Page.RunAndWaitForDownloadAsync(() => w.Page.GetByRole(AriaRole.Link, new() { NameRegex = new("^Take the garden along") }).ClickAsync());
        var text = await File.ReadAllTextAsync(await download.PathAsync(), TestContext.Current.CancellationToken);
        Assert.Equal(GardenFile.Write(site.Garden), text);
        var pots = site.Garden.Pots.Select(p => p.Name).ToList();
        site.Put(_ => site.Garden with { Pots = [] });
        await w.GoAsync("/settings/restore");
        await w.Page.GetByLabel("Garden file").SetInputFilesAsync(new FilePayload { Name = "garden.json", MimeType = "application/json", Buffer = "{\"format\":\"other\"}"u8.ToArray() });
        await w.Button("Bring it in").ClickAsync();
        await Expect(w.Page.GetByRole(AriaRole.Alert)).ToBeVisibleAsync();
        await w.Page.GetByLabel("Garden file").SetInputFilesAsync(new FilePayload { Name = "garden.json", MimeType = "application/json", Buffer = System.Text.Encoding.UTF8.GetBytes(text) });
        await w.Button("Bring it in").ClickAsync();
        await w.SeesAsync("Brought in the garden");
        Assert.Equal(pots, site.Garden.Pots.Select(p => p.Name));
    }

    [Fact]
    public async Task Hostile_and_endless_names_are_shown_and_do_nothing()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        var endless = new string('W', 180);
        site.Put(g => g with
        {
            Name = Hostile,
            Pots = [g.Pots[0] with { Name = Hostile }, g.Pots[1] with { Name = endless, Place = endless }, .. g.Pots.Skip(2)],
            Shelf = [g.Shelf[0] with { Material = g.Shelf[0].Material with { Name = endless } }, g.Shelf[1] with { Material = g.Shelf[1].Material with { Name = Hostile } }, .. g.Shelf.Skip(2)],
            Feeds = [g.Feeds[0] with { Name = Hostile }, g.Feeds[1] with { Name = endless }, .. g.Feeds.Skip(2)],
        }, Hostile);
        foreach (var path in new[] { "/", "/shelf", "/mix?want=5:1:4&from=shelf&measure=free", "/pots", "/year", "/cards", "/cards/{feed}", "/cards/year", "/settings", "/settings/scoops", "/settings/changes", "/pots/{pot}", "/shelf/{bag}" })
        {
            await w.GoAsync(AllPages.On(site, path));
            await Checks.NoSidewaysScrollAsync(w.Page, path);
            Assert.Equal(0, await w.Page.Locator("main script").CountAsync());
        }

        await w.GoAsync("/pots");
        await Expect(w.Main).ToContainTextAsync("<script>alert('x')</script>");
    }
}
