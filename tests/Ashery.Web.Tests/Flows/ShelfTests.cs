using Ashery.Nutrients;

namespace Ashery.Web.Tests.Flows;

public sealed class ShelfTests(TheBrowser browser)
{
    [Fact]
    public async Task A_bag_of_the_catalogue_goes_on_the_shelf_and_off_again_and_each_step_can_be_undone()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        var before = site.Garden.Shelf.Count;
        await w.GoAsync("/shelf");
        await w.Link("Put a bag on the shelf").ClickAsync();
        await w.Page.GetByLabel("Find it in the catalogue").FillAsync("mono-potassium");
        await w.Page.GetByRole(AriaRole.Link, new() { NameRegex = new("^Mono-potassium phosphate") }).ClickAsync();
        await w.Page.GetByLabel("Left").FillAsync("1.5");
        await w.Page.GetByLabel("A full bag holds").FillAsync("2");
        await w.Page.GetByLabel("Price of a full bag").FillAsync("11");
        await w.Button("Put it on the shelf").ClickAsync();
        await w.HeadingAsync("Mono-potassium phosphate");
        var bag = site.Garden.Shelf[^1];
        Assert.Equal(("mkp", 1500.0, 5.5), (bag.Material.Id, bag.Stock!.Value.Grams, bag.PricePerKg!.Value));

        await w.Button("Take it off the shelf").ClickAsync();
        await w.HeadingAsync("Shelf");
        Assert.Equal(before, site.Garden.Shelf.Count);
        await w.Page.GetByRole(AriaRole.Status).GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await w.SeesAsync("Went back to before: Took Mono-potassium phosphate off the shelf");
        Assert.Equal(bag.Id, site.Garden.Shelf[^1].Id);
    }

    [Fact]
    public async Task A_label_that_cannot_be_is_explained_at_its_field_and_what_was_typed_stays()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/shelf/new?material=potassium-nitrate");
        await w.Page.GetByLabel("Name").FillAsync("My saltpetre");
        await w.Page.GetByLabel("K₂O or K").FillAsync("62");
        await w.Button("Put it on the shelf").ClickAsync();
        var k = w.Page.GetByLabel("K₂O or K");
        await Expect(k).ToHaveAttributeAsync("aria-invalid", "true");
        await Expect(k).ToHaveValueAsync("62");
        await Expect(w.Page.GetByLabel("Name")).ToHaveValueAsync("My saltpetre");
        await Expect(w.Page.Locator("#f-k-wrong")).ToContainTextAsync("more than the pure salt holds");
        await Expect(w.Page.GetByRole(AriaRole.Alert)).ToBeFocusedAsync();

        await k.FillAsync("46");
        await w.Button("Put it on the shelf").ClickAsync();
        await w.HeadingAsync("My saltpetre");
        Assert.Equal(0.46, site.Garden.Shelf[^1].Material.Label[Nutrient.K], 6);
    }

    [Theory]
    [InlineData("NaN", "is not a number")]
    [InlineData("12,5", "has a comma")]
    [InlineData("-3", "negative")]
    [InlineData("1e9", "is not a number")]
    [InlineData("999", "more than the whole bag")]
    [InlineData("<b>7</b>", "is not a number")]
    public async Task A_figure_that_is_none_is_answered_at_the_field(string typed, string answer)
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/shelf/new");
        await w.Page.GetByLabel("Name").FillAsync("Odd bag");
        await w.Page.GetByLabel("N (%)", new() { Exact = true }).FillAsync(typed);
        await w.Button("Put it on the shelf").ClickAsync();
        await Expect(w.Page.Locator("#f-n-wrong")).ToContainTextAsync(answer, new() { IgnoreCase = true });
        await Expect(w.Page.GetByLabel("N (%)", new() { Exact = true })).ToHaveValueAsync(typed);
        Assert.DoesNotContain(site.Garden.Shelf, b => b.Material.Name == "Odd bag");
    }

    [Fact]
    public async Task A_compound_of_its_own_label_is_kept_with_its_forms_and_basis()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/shelf/new?name=Balcony%20feed");
        await w.Page.GetByLabel("N (%)", new() { Exact = true }).FillAsync("14");
        await w.Page.GetByLabel("P₂O₅ or P").FillAsync("3");
        await w.Page.GetByLabel("K₂O or K").FillAsync("12");
        await w.Page.GetByLabel("The bag prints phosphorus and potassium as").SelectOptionAsync("element");
        await w.Page.GetByLabel("The rest of the label").FillAsync("NO3-N 8; NH4-N 6; MgO 2; B 200 mg/kg");
        await w.Button("Put it on the shelf").ClickAsync();
        await w.HeadingAsync("Balcony feed");
        var m = site.Garden.Shelf[^1].Material;

        // P2O5 / P and K2O / K as published checks print them: 1 / 0.4364 and 1 / 0.8301.
        Assert.Equal(0.03 / 0.4364, m.Label[Nutrient.P], 4);
        Assert.Equal(0.12 / 0.8301, m.Label[Nutrient.K], 4);
        Assert.Equal(0.0002, m.Label[Nutrient.B], 8);
        Assert.Equal((0.06, 0.08), (Math.Round(m.Nitrogen.Ammonium, 6), Math.Round(m.Nitrogen.Nitrate, 6)));
    }

    [Fact]
    public async Task The_shelf_goes_to_a_file_and_comes_back()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/shelf");
        var download = await w.Page.RunAndWaitForDownloadAsync(() => w.Link("Shelf as CSV").ClickAsync());
        var csv = await download.PathAsync();
        Assert.Equal("shelf.csv", download.SuggestedFilename);
        var names = site.Garden.Shelf.Select(b => (b.Id, b.Material.Name, b.Stock?.Grams, b.Price)).ToList();
        site.Put(g => g with { Shelf = [] });

        await w.GoAsync("/shelf/import");
        await w.Page.GetByLabel("File").SetInputFilesAsync(csv);
        await w.Button("Read it").ClickAsync();
        await w.HeadingAsync("Shelf");
        Assert.Equal(names, site.Garden.Shelf.Select(b => (b.Id, b.Material.Name, b.Stock?.Grams, b.Price)));
    }

    [Fact]
    public async Task A_line_that_cannot_be_read_is_named_and_nothing_is_changed()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/shelf/import");
        var before = site.Store.Load()!.Version;
        await w.Page.GetByLabel("File").SetInputFilesAsync(new FilePayload
        {
            Name = "shelf.csv", MimeType = "text/csv", Buffer = "material,name,N\nurea,Good,46\nurea,Bad,forty\n"u8.ToArray(),
        });
        await w.Button("Read it").ClickAsync();
        await Expect(w.Page.GetByRole(AriaRole.Alert)).ToContainTextAsync("forty");
        Assert.Equal(before, site.Store.Load()!.Version);

        await w.Page.GetByLabel("File").SetInputFilesAsync(new FilePayload { Name = "cat.png", MimeType = "image/png", Buffer = [0x89, 0x50, 0, 0xff, 0xfe] });
        await w.Button("Read it").ClickAsync();
        await Expect(w.Page.GetByRole(AriaRole.Alert)).ToContainTextAsync("not a text file");
    }

    [Fact]
    public async Task A_file_that_is_too_large_gets_words_with_and_without_scripts()
    {
        await using var site = await Site.StartAsync();
        var large = new FilePayload { Name = "large.csv", MimeType = "text/csv", Buffer = new byte[6 * 1024 * 1024] };
        await using (var w = await browser.OpenAsync(site, scripts: false))
        {
            await w.GoAsync("/shelf/import");
            await w.Page.GetByLabel("File").SetInputFilesAsync(large);
            await w.Button("Read it").ClickAsync();
            await w.HeadingAsync("That file is too large");
            w.Forgive("413");
        }

        await using (var w = await browser.OpenAsync(site))
        {
            await w.GoAsync("/shelf/import");
            await w.Page.GetByLabel("File").SetInputFilesAsync(large);
            await w.Button("Read it").ClickAsync();
            var says = await w.Page.GetByLabel("File").EvaluateAsync<string>("e => e.validationMessage");
            Assert.Contains("6.0 MB", says, StringComparison.Ordinal);
        }
    }
}
