namespace Ashery.Web.Tests.Support;

/// <summary>One Chromium for all tests.</summary>
public sealed class TheBrowser : IAsyncLifetime
{
    // A browser that looks for updates is slow to start and fails where there is no internet.
    private static readonly string[] Switches =
    [
        "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
        "--disable-component-update", "--disable-sync", "--force-color-profile=srgb", "--font-render-hinting=none",
    ];

    private IPlaywright? playwright;
    private IBrowser? browser;

    internal IBrowser Browser => browser!;

    public async ValueTask InitializeAsync()
    {
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
        {
            ExecutablePath = Environment.GetEnvironmentVariable("CHROMIUM") ?? "/usr/bin/chromium",
            Args = Switches,
            Headless = true,
        });
        SetDefaultExpectTimeout(15_000);
    }

    /// <summary>A fresh window on a site.</summary>
    internal async Task<Window> OpenAsync(Site site, int width = 390, bool scripts = true, ColorScheme scheme = ColorScheme.Light)
    {
        var context = await Browser.NewContextAsync(new BrowserNewContextOptions
        {
            BaseURL = site.Address,
            ViewportSize = new ViewportSize { Width = width, Height = width < 600 ? 844 : 900 },
            JavaScriptEnabled = scripts,
            ColorScheme = scheme,
            Locale = "en-GB",
            TimezoneId = "UTC",
            ReducedMotion = ReducedMotion.Reduce,
        });
        context.SetDefaultTimeout(20_000);
        return new Window(context, await context.NewPageAsync());
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null)
        {
            await browser.CloseAsync();
        }

        playwright?.Dispose();
    }
}
