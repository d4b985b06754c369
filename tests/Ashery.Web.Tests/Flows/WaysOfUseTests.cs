namespace Ashery.Web.Tests.Flows;

/// <summary>Keyboard alone, no scripts, light and dark by hand, paper.</summary>
public sealed class WaysOfUseTests(TheBrowser browser)
{
    [Fact]
    public async Task A_blend_is_found_and_kept_by_keyboard_alone()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site, 1280);
        var keys = w.Page.Keyboard;
        await w.GoAsync("/");
        await keys.PressAsync("Tab");
        await Expect(w.Link("Skip to the page")).ToBeFocusedAsync();
        await Expect(w.Link("Skip to the page")).ToBeInViewportAsync();
        await keys.PressAsync("Enter");
        await Expect(w.Main).ToBeFocusedAsync();

        await w.GoAsync("/");
        await TabToAsync(w, "Mix");
        await keys.PressAsync("Enter");
        await Expect(w.Page.Locator("h1")).ToContainTextAsync("Mix for");
        await Expect(w.Page.Locator("h1")).ToBeFocusedAsync();
        await TabToAsync(w, "Or a ratio or grade");
        await keys.TypeAsync("5:1:4");
        await keys.PressAsync("Enter");
        await w.HeadingAsync("Mix for 5:1:4");
        await TabToAsync(w, "Keep it as a feed called");
        await keys.PressAsync("Control+a");
        await keys.TypeAsync("By keyboard");
        await keys.PressAsync("Enter");
        await w.SeesAsync("Kept By keyboard as a feed");
        Assert.Equal("By keyboard", site.Garden.Feeds[^1].Name);
    }

    [Fact]
    public async Task What_has_the_focus_shows_it()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site, 1280);
        await w.GoAsync("/mix?want=5:1:4&from=shelf&measure=free");
        for (var i = 0; i < 40; i++)
        {
            await w.Page.Keyboard.PressAsync("Tab");
            var (width, what) = (await w.Page.EvaluateAsync<double>("() => parseFloat(getComputedStyle(document.activeElement).outlineWidth)"),
                await w.Page.EvaluateAsync<string>("() => document.activeElement.outerHTML.slice(0, 80)"));
            Assert.True(width >= 2, what);
        }
    }

    [Fact]
    public async Task Everything_is_done_without_scripts()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site, scripts: false);
        await w.GoAsync("/mix");
        await w.Page.GetByLabel("Or a ratio or grade").FillAsync("5:1:4");
        await w.Button("Find blends").ClickAsync();
        await w.HeadingAsync("Mix for 5:1:4");
        await w.Page.GetByLabel("Keep it as a feed called").FillAsync("Without scripts");
        await w.Button("Keep the feed").ClickAsync();
        await w.SeesAsync("Kept Without scripts as a feed");

        await w.GoAsync("/pots/add");
        await w.Button("Add the pot").ClickAsync();
        await Expect(w.Page.Locator("#f-name-wrong")).ToContainTextAsync("missing");
        await w.Page.GetByLabel("Name").FillAsync("Plain pot");
        await w.Page.GetByLabel("Plant", new() { Exact = true }).SelectOptionAsync("rose");
        await w.Page.GetByLabel("Volume").FillAsync("9");
        await w.Button("Add the pot").ClickAsync();
        await w.SeesAsync("Added the pot Plain pot");
        await w.Page.GetByLabel("Feed").SelectOptionAsync(site.Garden.Feeds[^1].Id);
        await w.Button("Work it out").ClickAsync();
        await w.SeesAsync("of Without scripts");

        await w.GoAsync("/settings/changes");
        await w.Button("Undo this").ClickAsync();
        await w.SeesAsync("Went back to before: Added the pot Plain pot");
        await w.Page.GetByLabel("Light or dark").SelectOptionAsync("dark");
        await w.Button("Set").ClickAsync();
        await Expect(w.Page.Locator("html")).ToHaveAttributeAsync("data-theme", "dark");
    }

    [Fact]
    public async Task Light_and_dark_follow_the_device_until_set_by_hand()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site, scheme: ColorScheme.Dark);
        await w.GoAsync("/help");
        var dark = await BackgroundAsync(w);
        await w.Page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Light });
        var light = await BackgroundAsync(w);
        Assert.NotEqual(dark, light);
        await w.Page.GetByLabel("Light or dark").SelectOptionAsync("dark");
        await Expect(w.Page.Locator("html")).ToHaveAttributeAsync("data-theme", "dark");
        await w.HeadingAsync("A short guide");
        Assert.Equal(dark, await BackgroundAsync(w));
        await w.GoAsync("/shelf");
        Assert.Equal(dark, await BackgroundAsync(w));
    }

    [Fact]
    public async Task Paper_shows_the_card_and_no_controls()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site, 800);
        await w.GoAsync(AllPages.On(site, "/cards/{feed}"));
        await w.Page.EmulateMediaAsync(new() { Media = Media.Print });
        await Expect(w.Page.Locator("article.card")).ToBeVisibleAsync();
        foreach (var gone in new[] { ".top", ".main-nav", ".foot", "main form", ".actions" })
        {
            foreach (var part in await w.Page.Locator(gone).AllAsync())
            {
                await Expect(part).ToBeHiddenAsync();
            }
        }
    }

    [Fact]
    public async Task On_a_phone_the_rooms_are_under_the_thumb()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/year");
        var box = await w.Page.GetByRole(AriaRole.Navigation, new() { Name = "Main" }).BoundingBoxAsync();
        Assert.True(box!.Y > 844 * 0.85, FormattableString.Invariant($"at {box.Y:0}"));
        Assert.Equal(844, box.Y + box.Height, 0.5);
    }

    private static Task<string> BackgroundAsync(Window w) => w.Page.EvaluateAsync<string>("() => getComputedStyle(document.body).backgroundColor");

    /// <summary>Presses Tab until the control of this label or name has the focus.</summary>
    private static async Task TabToAsync(Window w, string name)
    {
        for (var i = 0; i < 120; i++)
        {
            await w.Page.Keyboard.PressAsync("Tab");
            var now = await w.Page.EvaluateAsync<string>(
                "() => { const e = document.activeElement; return (e.labels?.[0]?.textContent ?? e.textContent).trim(); }");
            if (now == name)
            {
                return;
            }
        }

        Assert.Fail($"Tab never reaches {name}.");
    }
}
