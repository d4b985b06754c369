using Ashery.Journal;
using Ashery.Records;

namespace Ashery.Web.Tests.Flows;

/// <summary>
/// The day's work by taps. The demo garden is set up on 9 May; the turns of its growing year, fourteen days from 1 March, bring an organic feed on
/// 10 May (counted by hand).
/// </summary>
public sealed class TodayTests(TheBrowser browser)
{
    [Fact]
    public async Task Given_to_some_put_off_for_others_taken_back_and_overdue_tomorrow()
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
        var pots = await card.Locator("input[type=checkbox]").CountAsync();
        await card.Locator("label.tick").First.ClickAsync();
        await card.GetByRole(AriaRole.Button, new() { Name = "Done", Exact = true }).ClickAsync();
        await Expect(w.Page.Locator(".done-list li")).ToHaveCountAsync(1);
        await Expect(card.Locator("input[type=checkbox]")).ToHaveCountAsync(1);
        var given = Assert.IsType<FeedGiven>(Assert.Single(site.Journal.Query(new())).Entry.Facts);
        Assert.Equal(pots - 1, given.Amounts.Count);
        Assert.All(given.Amounts, static a => Assert.True(a.Grams > 0));

        await card.GetByRole(AriaRole.Button, new() { Name = "1 day", Exact = true }).ClickAsync();
        await Expect(w.Page.Locator(".due")).ToHaveCountAsync(0);
        Assert.Contains(site.Journal.Query(new()), static e => e.Entry.Facts is TaskMoved { To: { Month: 5, Day: 11 } });

        await w.Page.Locator(".done-list li").Filter(new() { HasText = "Gave" }).GetByRole(AriaRole.Button).ClickAsync();
        await Expect(card.Locator("input[type=checkbox]")).ToHaveCountAsync(pots - 1);
        Assert.IsType<TaskMoved>(Assert.Single(site.Journal.Query(new())).Entry.Facts);

        clock.At = StoppedClock.Now.AddDays(2);
        await w.GoAsync("/");
        await w.SeesAsync("Overdue since 10 May");
        await w.SeesAsync("Put off from 10 May");
    }

    [Fact]
    public async Task Without_scripts_the_same_by_forms_and_a_form_sent_again_counts_once()
    {
        var clock = new StoppedClock();
        await using var site = await Site.StartAsync(clock);
        clock.At = StoppedClock.Now.AddDays(1);
        await using var w = await browser.OpenAsync(site, scripts: false);
        await w.GoAsync("/");
        await w.Button("Dry pots").ClickAsync();
        await w.SeesAsync("pots wait");
        await w.SeesAsync("not today");
        await w.Button("Dry pots").ClickAsync();
        await Expect(w.Page.Locator(".hold strong").Filter(new() { HasText = "Wait." })).ToHaveCountAsync(0);

        await w.Page.Locator(".due").First.GetByRole(AriaRole.Button, new() { Name = "Rain", Exact = true }).ClickAsync();
        await w.SeesAsync("Skipped");
        await Expect(w.Page.Locator(".due")).ToHaveCountAsync(0);
        var skipped = Assert.Single(site.Journal.Query(new()));
        Assert.Equal("rain", Assert.IsType<TaskSkipped>(skipped.Entry.Facts).Why);
        await w.Button("Undo").First.ClickAsync();
        await Expect(w.Page.Locator(".due").First).ToBeVisibleAsync();

        // Nothing ticked is asked for again, and nothing is written.
        foreach (var tick in await w.Page.Locator(".due").First.Locator("label.tick").AllAsync())
        {
            await tick.ClickAsync();
        }

        await w.Page.Locator(".due").First.GetByRole(AriaRole.Button, new() { Name = "Done", Exact = true }).ClickAsync();
        await Expect(w.Page.GetByRole(AriaRole.Alert)).ToContainTextAsync("Tick at least one pot");
        Assert.Empty(site.Journal.Query(new()));
    }
}
