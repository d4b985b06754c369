using System.Net;
using System.Text.RegularExpressions;

namespace Ashery.Accounts.Tests.Doors;

/// <summary>What every answer carries, and what no page holds.</summary>
public sealed partial class HeaderTests
{
    [Fact]
    public async Task Every_answer_carries_the_headers_that_protect_it_and_no_page_holds_inline_code()
    {
        await using var house = await House.OpenAsync();
        using var oona = await house.EnterAsync("oona");
        List<string> wrong = [];
        foreach (var (_, path, _) in Addresses.All(house))
        {
            using var answer = await oona.Http.GetAsync(path, TestContext.Current.CancellationToken);
            var text = answer.Content.Headers.ContentType?.MediaType == "text/html" ? await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken) : "";
            string Header(string name) => answer.Headers.TryGetValues(name, out var values) ? values.First() : "";
            var policy = Header("Content-Security-Policy");
            if (!policy.Contains("default-src 'none'", StringComparison.Ordinal) || !policy.Contains("frame-ancestors 'none'", StringComparison.Ordinal)
                || policy.Contains("unsafe", StringComparison.Ordinal) || policy.Contains('*', StringComparison.Ordinal) || policy.Contains("http", StringComparison.Ordinal))
            {
                wrong.Add($"{path} policy: {policy}");
            }

            if (Header("X-Content-Type-Options") != "nosniff" || Header("Referrer-Policy") != "same-origin" || Header("Cross-Origin-Opener-Policy") != "same-origin"
                || Header("Cross-Origin-Resource-Policy") != "same-origin" || answer.Headers.Contains("Server") || answer.Headers.Contains("X-Powered-By"))
            {
                wrong.Add($"{path} headers");
            }

            if (answer.StatusCode == HttpStatusCode.OK && answer.Content.Headers.ContentType is null)
            {
                wrong.Add($"{path} has no type");
            }

            if (Inline().Match(text) is { Success: true } inline && !path.StartsWith("/download", StringComparison.Ordinal))
            {
                wrong.Add($"{path} inline: {inline.Value}");
            }

            if (text.Contains("<form method=\"post\"", StringComparison.Ordinal) && answer.Headers.CacheControl?.NoStore != true)
            {
                wrong.Add($"{path} may be kept by a cache: {answer.Headers.CacheControl}");
            }
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    [Fact]
    public async Task Under_an_address_of_HTTPS_cookies_are_bound_to_the_host_and_browsers_remember_HTTPS()
    {
        await using var house = await House.OpenAsync(House.Fast with { Address = new Uri("https://garden.example/") });
        using var http = new HttpClient(new HttpClientHandler { UseCookies = false, AllowAutoRedirect = false }) { BaseAddress = house.Address };
        http.DefaultRequestHeaders.Host = "garden.example";
        http.DefaultRequestHeaders.Add("X-Forwarded-Proto", "https");
        http.DefaultRequestHeaders.Add("X-Forwarded-For", "198.51.100.7");
        using var page = await http.GetAsync("/sign-in", TestContext.Current.CancellationToken);
        Assert.Equal("max-age=31536000; includeSubDomains", page.Headers.GetValues("Strict-Transport-Security").Single());
        var proof = page.Headers.GetValues("Set-Cookie").Single();
        Assert.StartsWith("__Host-ashery-forms=", proof, StringComparison.Ordinal);
        var form = Form.In(await page.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), "/sign-in")[0];
        using var body = new FormUrlEncodedContent([.. form.Fields.Where(f => f.Key is not ("name" or "password")), new("name", "oona"), new("password", House.Password)]);
        using var request = new HttpRequestMessage(HttpMethod.Post, "/sign-in") { Content = body, Headers = { { "Cookie", proof.Split(';')[0] } } };
        using var entered = await http.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Found, entered.StatusCode);
        var cookie = entered.Headers.GetValues("Set-Cookie").Single(c => c.Contains("ashery=", StringComparison.Ordinal));
        Assert.StartsWith("__Host-ashery=", cookie, StringComparison.Ordinal);
        foreach (var part in new[] { "path=/", "secure", "httponly", "samesite=lax" })
        {
            Assert.Contains(part, cookie, StringComparison.OrdinalIgnoreCase);
        }

        Assert.DoesNotContain("domain=", cookie, StringComparison.OrdinalIgnoreCase);

        // The log holds the caller the proxy names, and the proxy is believed because it is this machine.
        var log = Microsoft.Extensions.DependencyInjection.ServiceProviderServiceExtensions.GetRequiredService<Audit.AuditLog>(house.App.Services);
        Assert.Equal("198.51.100.7", log.About(await house.IdOfAsync("oona"), 1)[0].From);
    }

    [Fact]
    public async Task A_name_that_is_not_the_address_is_refused()
    {
        await using var house = await House.OpenAsync(House.Fast with { Address = new Uri("https://garden.example/") }, people: false);
        using var browser = house.Browser();
        using var request = new HttpRequestMessage(HttpMethod.Get, "/sign-in");
        request.Headers.Host = "elsewhere.example";
        request.Headers.Add("X-Forwarded-Host", "garden.example");
        using var answer = await browser.Http.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
    }

    [Fact]
    public async Task Ready_says_whether_the_database_answers()
    {
        await using var house = await House.OpenAsync(people: false);
        using var browser = house.Browser();
        Assert.Equal((HttpStatusCode.OK, "ok"), await browser.GetAsync("/health"));
        Assert.Equal((HttpStatusCode.OK, "ready"), await browser.GetAsync("/health/ready"));
    }

    [GeneratedRegex("<script(?![^>]*\\bsrc=)[^>]*>|<style|\\son[a-z]+=\"|\\sstyle=\"|javascript:", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Inline();
}
