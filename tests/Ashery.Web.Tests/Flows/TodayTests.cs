using Ashery.Journal;
using Ashery.Records;

namespace Ashery.Web.Tests.Flows;

/// <summary>The day's work by taps. The demo garden was set up on 9 May; its next turn, an organic one for all pots, is on the 10th.</summary>
public sealed class TodayTests(TheBrowser browser)
{
    [Fact]
    public async Task Done_for_some_put_off_for_others_and_taken_back()
    {
        var clock = new StoppedClock();
        await using var site = await Site.StartAsync(clock);
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/");
        await w.SeesAsync("No feed today");
        await w.SeesAsync("Next on the bench: Sun 10 May 2026");

        clock.At = StoppedClock.Now.AddDays(1);
        await w.GoAsync("/");
        var card = w.Page.Locator(".due").First;
        await Shot(w, "due");
        var pots = await card.Locator("input[type=checkbox]").CountAsync();
        await card.Locator("label.tick").First.ClickAsync();
        await card.GetByRole(AriaRole.Button, new() { Name = "Done", Exact = true }).ClickAsync();
        await Expect(w.Page.Locator(".done-list li")).ToHaveCountAsync(1);
        await Shot(w, "given");
    }

    private static async Task Shot(Window w, string name)
    {
        if (Environment.GetEnvironmentVariable("SHOTS") is { } folder)
        {
            await w.Page.SetViewportSizeAsync(390, 1400);
            await w.Page.ScreenshotAsync(new() { Path = Path.Combine(folder, name + ".png") });
            await w.Page.SetViewportSizeAsync(390, 844);
        }
    }
}
