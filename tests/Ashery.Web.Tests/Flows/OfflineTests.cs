using Ashery.Journal;
using Ashery.Records;

namespace Ashery.Web.Tests.Flows;

/// <summary>A phone that loses its network and finds it again.</summary>
public sealed class OfflineTests(TheBrowser browser)
{
    private const string Controlled = "() => navigator.serviceWorker.controller !== null";

    [Fact]
    public async Task Today_opens_without_a_network_and_each_tap_is_written_once_later()
    {
        var clock = new StoppedClock();
        await using var site = await Site.StartAsync(clock);
        clock.At = StoppedClock.Now.AddDays(1);
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/");
        await w.Page.WaitForFunctionAsync(Controlled);
        var waiting = w.Page.Locator("[data-waiting]");
        await Expect(waiting).ToBeHiddenAsync();

        await w.Page.Context.SetOfflineAsync(true);
        await w.Page.Locator(".due").First.GetByRole(AriaRole.Button, new() { Name = "Done", Exact = true }).ClickAsync();
        await Expect(waiting).ToContainTextAsync("No network. 1 tap waits on this phone");
        await Expect(w.Page.Locator(".due")).ToBeHiddenAsync();

        // Closed and opened again, still without a network.
        await w.Page.ReloadAsync();
        await w.HeadingAsync("Sun 10 May 2026");
        await Expect(waiting).ToContainTextAsync("This page is as of");
        await Expect(waiting).ToContainTextAsync("1 tap waits");
        await Expect(w.Page.Locator(".due")).ToBeHiddenAsync();
        await w.Button("Hot day").ClickAsync();
        await Expect(waiting).ToContainTextAsync("2 taps wait");
        await w.Button("Heavy rain").ClickAsync();
        await Expect(waiting).ToContainTextAsync("3 taps wait");
        await waiting.Locator("li").Filter(new() { HasText = "heavy rain" }).GetByRole(AriaRole.Button, new() { Name = "Take back" }).ClickAsync();
        await Expect(waiting).ToContainTextAsync("2 taps wait");
        Assert.Empty(site.Journal.Query(new()));

        await w.Page.Context.SetOfflineAsync(false);
        await Expect(w.Page.Locator(".done-list li")).ToHaveCountAsync(1);
        await Expect(waiting).ToBeHiddenAsync();
        await w.GoAsync("/");
        await w.GoAsync("/");
        Assert.Equal(
            [EntryKind.FeedGiven, EntryKind.WeatherNoted],
            site.Journal.Latest(10).Select(static e => EntryKind.Of(e.Entry.Facts)).Order(StringComparer.Ordinal));
        Assert.All(site.Journal.Latest(10), static e => Assert.Equal((new DateOnly(2026, 5, 10), 1), (e.Entry.Day, e.Revision)));
        w.Forgive("ERR_INTERNET_DISCONNECTED");
        w.Forgive("Failed to fetch");
    }

    [Fact]
    public async Task What_the_server_refuses_stays_until_the_grower_decides()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/");
        await w.Page.EvaluateAsync(
            """
            async () => {
              const queue = self.AsheryQueue;
              const put = async (id, facts, pots, says) => queue.put({ id, owner: document.body.dataset.owner, at: 1, state: "waiting", problems: [], theirs: null, says, entry: { id, day: "2026-05-09", pots, facts } });
              await put("11111111-1111-4111-8111-111111111111", { kind: "measured", what: "leachateEc", value: 65 }, ["x"], "EC read");
              await put("22222222-2222-4222-8222-222222222222", { kind: "weatherNoted", what: "heat" }, [], "Hot day");
              await self.Ashery.send();
            }
            """);
        var waiting = w.Page.Locator("[data-waiting]");
        await Expect(waiting).ToContainTextAsync("Not taken: 65 is not between 0 and 50 mS/cm.");
        Assert.IsType<WeatherNoted>(Assert.Single(site.Journal.Query(new())).Entry.Facts);
        await w.Page.ReloadAsync();
        await Expect(waiting).ToContainTextAsync("Not taken");
        await waiting.GetByRole(AriaRole.Button, new() { Name = "Drop it" }).ClickAsync();
        await Expect(waiting).ToBeHiddenAsync();

        // The same id with other words: what stands is kept, and mine may be written beside it.
        await w.Page.EvaluateAsync(
            """
            async () => {
              const id = "22222222-2222-4222-8222-222222222222";
              await self.AsheryQueue.put({ id, owner: document.body.dataset.owner, at: 1, state: "waiting", problems: [], theirs: null, says: "Heavy rain", entry: { id, day: "2026-05-09", facts: { kind: "weatherNoted", what: "rain" } } });
              await self.Ashery.send();
            }
            """);
        await Expect(waiting).ToContainTextAsync("Somebody wrote this otherwise");
        Assert.Single(site.Journal.Query(new()));
        await waiting.GetByRole(AriaRole.Button, new() { Name = "Write mine as well" }).ClickAsync();
        await Expect(waiting).ToBeHiddenAsync();
        Assert.Equal(2, site.Journal.Query(new()).Count);
        w.Forgive("status of 409");
    }

    [Fact]
    public async Task A_new_version_takes_the_kept_pages_anew()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/");
        await w.Page.WaitForFunctionAsync(Controlled);

        // As an older version left it.
        await w.Page.EvaluateAsync(
            """
            async () => {
              await (await caches.open("ashery-files-old")).put("/old.css", new Response("old"));
              await (await caches.open("ashery-pages-old")).put("/", new Response("<html ><body>old</body></html>"));
              await (await navigator.serviceWorker.getRegistration()).unregister();
            }
            """);
        await w.Page.ReloadAsync();
        Assert.True(await w.Page.EvaluateAsync<bool>(
            """
            async () => {
              for (let i = 0; i < 300; i++) {
                if (navigator.serviceWorker.controller !== null && !(await caches.keys()).some(name => name.endsWith("-old"))) return true;
                await new Promise(done => setTimeout(done, 50));
              }
              return false;
            }
            """), "The new version took over.");
        var kept = await w.Page.EvaluateAsync<string>("async () => (await (await caches.open((await caches.keys()).find(n => n.startsWith('ashery-pages-')))).match('/')).text()");
        Assert.Contains("Sat 9 May 2026", kept, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Signing_out_leaves_no_page_in_the_browser()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/");
        await w.Page.WaitForFunctionAsync(Controlled);
        await w.Page.EvaluateAsync("() => self.Ashery.signedOut()");
        Assert.Equal(0, await w.Page.EvaluateAsync<int>("async () => (await caches.keys()).filter(n => n.startsWith('ashery-pages-')).length"));
    }
}
