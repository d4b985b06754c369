using System.Diagnostics;

namespace Ashery.Web.Tests.Pages;

/// <summary>Makes the pictures of the documents; <c>eng/pictures</c> asks for them. Not a test: nothing is judged here.</summary>
public sealed class Pictures(TheBrowser browser, LookOnly shared) : IClassFixture<LookOnly>
{
    private const int Tallest = 1500;
    private static readonly string? Folder = Environment.GetEnvironmentVariable("ASHERY_PICTURES");

    public static bool NotAsked => Folder is null;

    [Fact(Skip = "Made on demand by eng/pictures", SkipWhen = nameof(NotAsked), SkipType = typeof(Pictures))]
    public async Task Every_page_and_a_printed_card()
    {
        Directory.CreateDirectory(Folder!);
        await EveryPageAsync(390);
        await EveryPageAsync(1280);
        await InTheDarkAsync();
        await PrintedCardAsync();
    }

    private async Task EveryPageAsync(int width)
    {
        await using var window = await browser.OpenAsync(shared.Site, width);
        foreach (var (name, path) in AllPages.All)
        {
            await shared.GoAsync(window, path);
            var high = await window.Page.EvaluateAsync<int>("() => document.documentElement.scrollHeight");
            await window.Page.SetViewportSizeAsync(width, Math.Min(high, Tallest));
            await window.Page.ScreenshotAsync(new() { Path = Path.Combine(Folder!, FormattableString.Invariant($"{name}-{width}.png")) });
            await window.Page.SetViewportSizeAsync(width, width < 600 ? 844 : 900);
        }
    }

    private async Task InTheDarkAsync()
    {
        await using var window = await browser.OpenAsync(shared.Site, 390, scheme: ColorScheme.Dark);
        await window.GoAsync("/mix");
        await window.Page.ScreenshotAsync(new() { Path = Path.Combine(Folder!, "mix-dark-390.png") });
    }

    private async Task PrintedCardAsync()
    {
        var pdf = Path.Combine(Folder!, "card.pdf");
        var feed = shared.Site.Garden.Feeds[0].Id;
        await File.WriteAllBytesAsync(pdf, await shared.Site.Http.GetByteArrayAsync($"/download/card.pdf?of={feed}"));
        using var toPng = Process.Start("pdftoppm", ["-r", "80", "-png", "-singlefile", pdf, Path.Combine(Folder!, "printed-card")]);
        await toPng.WaitForExitAsync();
        File.Delete(pdf);
    }
}
