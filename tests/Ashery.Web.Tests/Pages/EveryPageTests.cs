namespace Ashery.Web.Tests.Pages;

/// <summary>Every page on a phone, light and dark.</summary>
public sealed class EveryPageOnAPhoneTests(TheBrowser browser, LookOnly shared) : IClassFixture<LookOnly>
{
    public static TheoryData<string, string> Pages => [.. AllPages.All.Select(p => (p.Name, p.Path))];

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task A_phone_shows_it_whole_and_everybody_can_use_it(string name, string path)
    {
        await using var window = await browser.OpenAsync(shared.Site, 390);
        await shared.GoAsync(window, path);
        await Checks.OutlineAsync(window.Page, name);
        await Checks.NoSidewaysScrollAsync(window.Page, name);
        await Checks.BigTargetsAsync(window.Page, name);
        await Checks.AxeAsync(window.Page, name);
        await window.Page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
        await Checks.AxeAsync(window.Page, name + " in the dark", "color-contrast", "link-in-text-block");
    }
}

/// <summary>Every page in a wide window, light and dark.</summary>
public sealed class EveryPageInAWideWindowTests(TheBrowser browser, LookOnly shared) : IClassFixture<LookOnly>
{
    public static TheoryData<string, string> Pages => [.. AllPages.All.Select(p => (p.Name, p.Path))];

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task A_wide_window_shows_it_whole_and_everybody_can_use_it(string name, string path)
    {
        await using var window = await browser.OpenAsync(shared.Site, 1280, scheme: ColorScheme.Dark);
        await shared.GoAsync(window, path);
        await Checks.NoSidewaysScrollAsync(window.Page, name);
        await Checks.AxeAsync(window.Page, name + " in the dark");
        await window.Page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Light });
        await Checks.AxeAsync(window.Page, name, "color-contrast", "link-in-text-block");
    }
}

/// <summary>One server for all: these tests only look.</summary>
public sealed class LookOnly : IAsyncLifetime
{
    internal Site Site { get; private set; } = null!;

    internal async Task GoAsync(Window window, string path)
    {
        var answer = await window.Page.GotoAsync(AllPages.On(Site, path));
        Assert.Equal(path switch { "/nothing-here" => 404, _ when path.StartsWith("/too-large", StringComparison.Ordinal) => 413, _ => 200 }, answer!.Status);
        if (!answer.Ok)
        {
            window.Forgive("Failed to load resource");
        }
    }

    public async ValueTask InitializeAsync()
    {
        Site = await Site.StartAsync();
        Site.PutDemoJournal();
        Site.Put(g => g with { Name = "Harbour roof terrace" }, "Changed the settings");
        SampleDiary.Write(Site);
    }

    public ValueTask DisposeAsync() => Site.DisposeAsync();
}
