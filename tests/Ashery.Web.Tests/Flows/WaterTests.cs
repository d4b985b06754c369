namespace Ashery.Web.Tests.Flows;

public sealed class WaterTests(TheBrowser browser)
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_sheet_is_typed_in_judged_changed_removed_and_each_step_undone(bool scripts)
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site, scripts: scripts);
        var before = site.Garden.Waters.Count;
        await w.GoAsync("/water");
        await w.Link("Add a water").ClickAsync();
        await w.Page.GetByLabel("Name").FillAsync("Yard well");
        await Figure(w, "hardness").FillAsync("21");
        await Unit(w, "hardness").SelectOptionAsync("°dH");
        await Figure(w, "alkalinity").FillAsync("5.4");
        await Unit(w, "alkalinity").SelectOptionAsync("mmol/L");
        await Figure(w, "NO3").FillAsync("<2");
        await Unit(w, "NO3").SelectOptionAsync("mg/L as N");
        await w.Page.Locator("#f-ph").FillAsync("7.1");
        await w.Page.Locator("#f-ec").FillAsync("980");
        await w.Page.GetByLabel("Unit of EC").SelectOptionAsync("µS/cm");
        await w.Button("Keep this water").ClickAsync();
        await w.HeadingAsync("Yard well");
        await w.SeesAsync("Trouble for most plants in pots");
        var kept = site.Garden.Waters[^1];
        Assert.Equal(("yard-well", 7.1, "µS/cm"), (kept.Id, kept.PH!.Value, kept.Ec!.Unit));
        Assert.Contains(kept.Lines, static l => l is { Name: "NO3", Value: 2, Unit: "mg/L as N", Below: true });
        await Expect(w.Page.GetByRole(AriaRole.Img)).ToHaveCountAsync(2);
        await Expect(w.Link("Dissolve in this water")).ToHaveAttributeAsync("href", "/can?water=yard-well");

        await w.Link("Change the sheet").ClickAsync();
        await Expect(Figure(w, "NO3")).ToHaveValueAsync("<2");
        await Expect(Unit(w, "hardness")).ToHaveValueAsync("°dH");
        await Figure(w, "hardness").FillAsync("9");
        await w.Button("Save the water").ClickAsync();
        await w.SeesAsync("Changed the water Yard well");
        Assert.Equal(9, site.Garden.Waters[^1].Lines.Single(static l => l.Name == "hardness").Value);

        await w.Button("Use it by default").ClickAsync();
        await w.SeesAsync("Uses Yard well by default");
        Assert.Equal("yard-well", site.Garden.Settings.Water);
        await w.Link("Change the sheet").ClickAsync();
        await w.Button("Remove this water").ClickAsync();
        await w.HeadingAsync("Water");
        Assert.Equal((before, null), (site.Garden.Waters.Count, site.Garden.Settings.Water));
        await w.Page.GetByRole(AriaRole.Status).GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await w.SeesAsync("Went back to before: Removed the water Yard well");
        Assert.Equal("yard-well", site.Garden.Settings.Water);
    }

    [Theory]
    [InlineData("Ca", "-4", "", "negative")]
    [InlineData("Ca", "4,5", "", "Write 4.5")]
    [InlineData("Ca", "lots", "", "is not a number")]
    [InlineData("Ca", "NaN", "", "not a number")]
    [InlineData("Na", "90000000", "", "more than a mole")]
    [InlineData("Cl", "<b>7</b>", "", "is not a number")]
    public async Task A_wrong_figure_is_answered_at_its_field_and_what_was_typed_stays(string symbol, string typed, string unit, string answer)
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        var before = site.Garden.Waters.Count;
        await w.GoAsync("/water/new");
        await w.Page.GetByLabel("Name").FillAsync("Odd water");
        await Figure(w, "Mg").FillAsync("7.5");
        await Unit(w, "Mg").SelectOptionAsync("mg/L as CaCO3");
        await Figure(w, symbol).FillAsync(typed);
        await Unit(w, symbol).SelectOptionAsync(unit);
        await w.Button("Keep this water").ClickAsync();
        await Expect(w.Page.Locator($"#f-v-{symbol}-wrong")).ToContainTextAsync(answer, new() { IgnoreCase = true });
        await Expect(Figure(w, symbol)).ToHaveValueAsync(typed);
        await Expect(Figure(w, symbol)).ToHaveAttributeAsync("aria-invalid", "true");
        await Expect(Figure(w, "Mg")).ToHaveValueAsync("7.5");
        await Expect(Unit(w, "Mg")).ToHaveValueAsync("mg/L as CaCO3");
        await Expect(w.Page.GetByRole(AriaRole.Alert)).ToBeFocusedAsync();
        Assert.Equal(before, site.Garden.Waters.Count);
    }

    [Fact]
    public async Task Reports_that_cannot_be_are_explained()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site, 1280);
        await w.GoAsync("/water/new");
        await w.Button("Keep this water").ClickAsync();
        await Expect(w.Page.Locator("#f-name-wrong")).ToContainTextAsync("The name is missing");

        await w.Page.GetByLabel("Name").FillAsync("Well 2");
        await w.Button("Keep this water").ClickAsync();
        await Expect(w.Page.GetByRole(AriaRole.Alert)).ToContainTextAsync("The report is empty");

        // Off by more than 40 %: the heavy side is named.
        foreach (var (symbol, value) in new[] { ("Ca", "80"), ("Mg", "20"), ("Na", "40"), ("K", "4"), ("alkalinity", "80"), ("SO4", "30"), ("Cl", "10"), ("NO3", "5") })
        {
            await Figure(w, symbol).FillAsync(value);
        }

        await w.Button("Keep this water").ClickAsync();
        await Expect(w.Page.GetByRole(AriaRole.Alert)).ToContainTextAsync("The cations are heavy");
        await Expect(Figure(w, "Ca")).ToHaveValueAsync("80");

        await Figure(w, "Cl").FillAsync("");
        await w.Page.Locator("#f-ph").FillAsync("15");
        await Figure(w, "hardness").FillAsync("3");
        await w.Button("Keep this water").ClickAsync();
        await Expect(w.Page.Locator("#f-ph-wrong")).ToContainTextAsync("outside 2 to 12");
        await w.Page.Locator("#f-ph").FillAsync("7");
        await w.Button("Keep this water").ClickAsync();
        await Expect(w.Page.Locator("#f-v-hardness-wrong")).ToContainTextAsync("less than the calcium and magnesium");
    }

    [Fact]
    public async Task A_water_is_judged_for_a_crop()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/water/hard");
        await w.Page.GetByLabel("Judge it for").SelectOptionAsync("camellia");
        await w.Button("Judge").ClickAsync();
        await w.SeesAsync("Trouble for Camellia: alkalinity");
        await w.SeesAsync("it wants an acid medium");
        await w.GoAsync("/water");
        await w.SeesAsync("used by default");
    }

    [Fact]
    public async Task A_water_that_is_not_there_is_told()
    {
        await using var site = await Site.StartAsync();
        Assert.Equal(System.Net.HttpStatusCode.NotFound, (await site.Http.GetAsync("/water/no-such-water")).StatusCode);
        Assert.Equal(System.Net.HttpStatusCode.NotFound, (await site.Http.GetAsync("/water/hard/edit")).StatusCode);
    }

    private static ILocator Figure(Window w, string symbol) => w.Page.Locator($"#f-v-{symbol}");

    private static ILocator Unit(Window w, string symbol) => w.Page.Locator($"#f-v-{symbol}-unit");
}
