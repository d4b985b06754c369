using System.Net;
using System.Text;
using Ashery.Records.Tests.Support;

namespace Ashery.Accounts.Tests.Instances;

/// <summary>Two instances on one PostgreSQL, and a browser that a load balancer moves between them.</summary>
public sealed class TwoInstancesTests
{
    [Fact]
    public async Task A_browser_is_moved_between_two_instances_in_the_middle_of_everything()
    {
        var database = ThrowawayCluster.NewDatabase();
        await using var a = await House.OpenAsync(change: o => o with { Database = database });
        await using var b = await House.OpenAsync(change: o => o with { Database = database }, people: false);

        // Cookies are kept by host, not by port, so that one jar serves both addresses, as behind a balancer.
        var jar = new CookieContainer();
        using var onA = new Browser(a.Address, new HttpClientHandler { AllowAutoRedirect = false, CookieContainer = jar });
        using var onB = new Browser(b.Address, new HttpClientHandler { AllowAutoRedirect = false, CookieContainer = jar });

        // The form of the sign-in rendered on A, sent to B.
        var signIn = Form.In((await onA.GetAsync("/sign-in")).Text, "/sign-in")[0];
        using (var entered = await onB.SendAsync(signIn, ("name", "oona"), ("password", House.Password)))
        {
            Assert.Equal(HttpStatusCode.Found, entered.StatusCode);
        }

        Assert.Contains(House.Secret, (await onA.GetAsync("/settings")).Text, StringComparison.Ordinal);

        // A change on B is on A at once; a form of A is taken by B.
        var settings = Form.In((await onA.GetAsync("/settings")).Text, "/settings").Single(f => f.Handler == "settings");
        using (var saved = await onB.SendAsync(settings, ("name", "Moved Terrace"), ("units", "metric")))
        {
            Assert.Equal(HttpStatusCode.Found, saved.StatusCode);
        }

        Assert.Contains("Moved Terrace", (await onA.GetAsync("/settings")).Text, StringComparison.Ordinal);

        // The form that A showed before is overtaken now, and B says so instead of writing over it.
        using (var late = await onB.SendAsync(settings, ("name", "Lost update"), ("units", "metric")))
        {
            Assert.Equal(HttpStatusCode.UnprocessableEntity, late.StatusCode);
        }

        // The same tap sent to both counts once.
        var id = Guid.NewGuid();
        var body = "{\"changes\":[{\"id\":\"" + id + "\",\"basedOn\":0,\"entry\":{\"id\":\"" + id + "\",\"day\":\"2035-05-09\",\"pots\":[\"" + a.Store.Load()!.Garden.Pots[0].Id + "\"],\"facts\":{\"kind\":\"measured\",\"what\":\"weight\",\"value\":4000}}}]}";
        foreach (var browser in new[] { onA, onB, onA })
        {
            using var tap = new StringContent(body, Encoding.UTF8, "application/json");
            using var answer = await browser.Http.PostAsync("/api/gardens/home/journal", tap, TestContext.Current.CancellationToken);
            var text = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
            Assert.True(answer.StatusCode == HttpStatusCode.OK, text);
        }

        Assert.Equal(1, a.Journal.Find(id)!.Revision);
        Assert.Single(b.Journal.Revisions(id));

        // A code shown by A works on B, and once over both.
        using var shown = await onA.SendFormAsync("/account/phone", "show-code");
        var page = await shown.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        var at = page.IndexOf("class=\"code\">", StringComparison.Ordinal) + 13;
        var code = page[at..(at + 14)];
        using (var paired = await b.Browser().SendFormAsync("/pair", "pair", ("code", code)))
        {
            Assert.Equal(HttpStatusCode.Found, paired.StatusCode);
        }

        using (var again = await a.Browser().SendFormAsync("/pair", "pair", ("code", code)))
        {
            Assert.Equal(HttpStatusCode.UnprocessableEntity, again.StatusCode);
        }

        // A year's fit that was asked for on A: B, which knows nothing of it, works it out itself.
        Assert.DoesNotContain("Look again", (await onB.GetAsync("/year")).Text, StringComparison.Ordinal);
        var (_, year) = await onB.GetAsync("/year?fit=asked");
        Assert.True(year.Contains("Look again", StringComparison.Ordinal) || year.Contains("id=\"fitted\"", StringComparison.Ordinal));

        // Signed out on A is signed out on B.
        (await onA.SendFormAsync("/account", "everywhere")).Dispose();
        Assert.Equal(HttpStatusCode.Found, (await onB.GetAsync("/")).Status);
    }
}
