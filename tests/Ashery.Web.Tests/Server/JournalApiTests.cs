using System.Net;
using System.Text;
using System.Text.Json;
using Ashery.Records;

namespace Ashery.Web.Tests.Server;

/// <summary>Entries over HTTP: written by id, once; refused with words; from pages of this address alone.</summary>
public sealed class JournalApiTests
{
    private const string Rain = """{"id":"0b8f1f0e-6f0c-4f39-9d8e-2f4f6a1d0c11","day":"2026-05-09","facts":{"kind":"weatherNoted","what":"rain"}}""";

    [Fact]
    public async Task The_same_tap_five_times_counts_once()
    {
        await using var site = await Site.StartAsync();
        for (var i = 0; i < 3; i++)
        {
            Assert.Equal((HttpStatusCode.OK, "written"), await SendAsync(site, Rain));
        }

        // All at once, as from two tabs.
        await Task.WhenAll(SendAsync(site, Rain), SendAsync(site, $"[{Rain},{Rain}]"));
        Assert.Equal(1, Assert.Single(site.Journal.Latest(10)).Revision);
    }

    [Fact]
    public async Task One_that_is_wrong_does_not_hold_the_others_back()
    {
        await using var site = await Site.StartAsync();
        var wrong = """{"id":"1b8f1f0e-6f0c-4f39-9d8e-2f4f6a1d0c11","day":"2026-05-09","pots":["p"],"facts":{"kind":"measured","what":"leachatePh","value":65}}""";
        Assert.Equal((HttpStatusCode.UnprocessableEntity, "refused written"), await SendAsync(site, $"[{wrong},{Rain}]"));
        Assert.Single(site.Journal.Latest(10));
        Assert.Equal((HttpStatusCode.Conflict, "overtaken"), await SendAsync(site, Rain.Replace("rain", "heat", StringComparison.Ordinal)));
        Assert.Single(site.Journal.Latest(10));
    }

    [Theory]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("null")]
    [InlineData("[1]")]
    [InlineData("{\"id\":\"\\ud800\"}")]
    public async Task What_is_no_entry_is_refused_with_words(string body)
    {
        await using var site = await Site.StartAsync();
        Assert.Equal((HttpStatusCode.UnprocessableEntity, "refused"), await SendAsync(site, body));
        Assert.Empty(site.Journal.Latest(10));
    }

    [Theory]
    [InlineData("Sec-Fetch-Site", "cross-site")]
    [InlineData("Sec-Fetch-Site", "same-site")]
    [InlineData("Origin", "https://garden.example")]
    [InlineData("Origin", "null")]
    public async Task A_page_elsewhere_cannot_write(string header, string value)
    {
        await using var site = await Site.StartAsync();
        using var request = new HttpRequestMessage(HttpMethod.Post, "/api/journal") { Content = new StringContent(Rain, Encoding.UTF8, "application/json") };
        request.Headers.Add(header, value);
        using var answer = await site.Http.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.Empty(site.Journal.Latest(10));
    }

    [Fact]
    public async Task A_form_cannot_pretend_to_be_json()
    {
        await using var site = await Site.StartAsync();
        using var answer = await site.Http.PostAsync("/api/journal", new StringContent(Rain, Encoding.UTF8, "text/plain"), TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.UnsupportedMediaType, answer.StatusCode);
    }

    [Fact]
    public async Task The_worker_and_the_manifest_are_there_and_name_files_that_are()
    {
        await using var site = await Site.StartAsync();
        var script = await site.Http.GetStringAsync("/sw.js", TestContext.Current.CancellationToken);
        var files = script[script.IndexOf('[', StringComparison.Ordinal)..(script.IndexOf(']', StringComparison.Ordinal) + 1)];
        var scripts = script[(script.IndexOf("importScripts(", StringComparison.Ordinal) + "importScripts(".Length)..script.LastIndexOf(')')];
        List<string> all = [.. JsonSerializer.Deserialize<string[]>(files)!, .. JsonSerializer.Deserialize<string[]>($"[{scripts}]")!];
        using var manifest = JsonDocument.Parse(await site.Http.GetStringAsync("/manifest.webmanifest", TestContext.Current.CancellationToken));
        all.AddRange(manifest.RootElement.GetProperty("icons").EnumerateArray().Select(static i => i.GetProperty("src").GetString()!));
        Assert.True(all.Count >= 14, string.Join(' ', all));
        foreach (var file in all)
        {
            using var answer = await site.Http.GetAsync(file, TestContext.Current.CancellationToken);
            Assert.True(answer.IsSuccessStatusCode, file);
        }
    }

    private static async Task<(HttpStatusCode Status, string Outcomes)> SendAsync(Site site, string body)
    {
        using var answer = await site.Http.PostAsync("/api/journal", new StringContent(body, Encoding.UTF8, "application/json"), TestContext.Current.CancellationToken);
        using var read = JsonDocument.Parse(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        return (answer.StatusCode, string.Join(' ', read.RootElement.GetProperty("results").EnumerateArray().Select(static r => r.GetProperty("outcome").GetString())));
    }
}
