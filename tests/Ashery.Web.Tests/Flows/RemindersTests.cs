using System.Net;

namespace Ashery.Web.Tests.Flows;

/// <summary>The calendar to subscribe to, read by the general library for RFC 5545.</summary>
public sealed class RemindersTests(TheBrowser browser)
{
    [Fact]
    public async Task An_address_is_made_renewed_and_ended_and_a_guess_opens_nothing()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site, scripts: false);
        await w.GoAsync("/reminders");
        await w.Button("Make an address").ClickAsync();
        var first = await w.Page.GetByLabel("Address", new() { Exact = true }).InputValueAsync();
        Assert.Matches("^http://127[.]0[.]0[.]1:[0-9]+/calendar/home-[0-9a-f]{40}[.]ics$", first);
        await Checks.NoSidewaysScrollAsync(w.Page, "a new address");

        var calendar = Ical.Net.Calendar.Load(await site.Http.GetStringAsync(first, TestContext.Current.CancellationToken))!;
        var next = calendar.Events.OrderBy(e => e.Start!.Value).First();
        Assert.Equal(new DateTime(2026, 5, 10, 0, 0, 0, DateTimeKind.Unspecified), next.Start!.Value);

        // The secret is nowhere in the records: only its hash.
        Assert.DoesNotContain(site.Journal.Latest(10), e => Exchange.Journal.JournalJson.WriteLine(e.Entry).Contains(first[^44..^4], StringComparison.Ordinal));

        await w.GoAsync("/reminders");
        await w.Button("Make a new address").ClickAsync();
        var second = await w.Page.GetByLabel("Address", new() { Exact = true }).InputValueAsync();
        Assert.Equal((HttpStatusCode.NotFound, HttpStatusCode.OK), (await StatusAsync(site, first), await StatusAsync(site, second)));
        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync(site, "/calendar/home-" + new string('0', 40) + ".ics"));
        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync(site, "/calendar/other" + second[second.LastIndexOf('-')..]));

        await w.GoAsync("/reminders");
        await w.Button("End the address").ClickAsync();
        await w.SeesAsync("No address was made yet");
        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync(site, second));
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(site, "/download/reminders.ics?hour=6"));
    }

    private static async Task<HttpStatusCode> StatusAsync(Site site, string address)
    {
        using var answer = await site.Http.GetAsync(address, TestContext.Current.CancellationToken);
        return answer.StatusCode;
    }
}
