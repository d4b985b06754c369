using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using Ashery.Accounts.Model;
using Ashery.Accounts.Tokens;
using Ashery.Client;
using Ashery.Exchange.Journal;
using Ashery.Journal;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;

namespace Ashery.Accounts.Tests.Api;

/// <summary>The HTTP interface through the .NET client and by hand.</summary>
public sealed class ApiTests(OneHouse shared) : IClassFixture<OneHouse>
{
    private House House => shared.House;

    private async Task<(AsheryClient Client, HttpClient Http)> ClientAsync(string name, string scope, string? garden = null)
    {
        var http = new HttpClient { BaseAddress = House.Address };
        return (new AsheryClient(http, await House.TokenAsync(name, scope, garden)), http);
    }

    private Entry Reading(double grams) => new()
    {
        Id = Guid.NewGuid(), Day = new DateOnly(2035, 5, 9), Pots = [House.Store.Load()!.Garden.Pots[0].Id], Facts = new Measured(MeasuredKind.Weight, grams),
    };

    [Fact]
    public async Task A_garden_is_read_changed_and_not_overwritten()
    {
        var (client, http) = await ClientAsync("oona", TokenScope.Write);
        using var _ = http;
        var gardens = await client.GardensAsync(TestContext.Current.CancellationToken);
        Assert.Equal([new GardenInfo("home", House.Secret, "owner")], gardens.Value!);
        var garden = (await client.GardenAsync("home", TestContext.Current.CancellationToken)).Value!;
        Assert.Equal(House.Store.Load()!.Version, garden.Version);
        var saved = await client.SaveGardenAsync("home", garden.Garden with { IsDemo = false }, garden.Version, TestContext.Current.CancellationToken);
        Assert.True(saved.Ok, string.Join(' ', saved.Problems));
        Assert.Equal(garden.Version + 1, saved.Value);
        Assert.Equal("oona", House.Store.History(1)[0].By);

        var late = await client.SaveGardenAsync("home", garden.Garden, garden.Version, TestContext.Current.CancellationToken);
        Assert.False(late.Ok);
        Assert.Equal("If-Match", late.Problems[0].Field);
        Assert.Equal(garden.Version + 1, House.Store.Load()!.Version);
    }

    [Fact]
    public async Task An_entry_is_written_once_changed_by_revision_and_removed()
    {
        var (client, http) = await ClientAsync("hugh", TokenScope.Write);
        using var _ = http;
        var entry = Reading(4200);
        for (var i = 0; i < 5; i++)
        {
            var written = await client.WriteAsync("home", [entry], TestContext.Current.CancellationToken);
            Assert.True(written.Ok, string.Join(' ', written.Problems));
        }

        var stands = (await client.EntryAsync("home", entry.Id, TestContext.Current.CancellationToken)).Value!;
        Assert.Equal((1, "hugh"), (stands.Revision, stands.By));
        Assert.Equal(JournalJson.WriteLine(entry), JournalJson.WriteLine(stands.Entry));

        var other = entry with { Facts = new Measured(MeasuredKind.Weight, 4300) };
        Assert.True((await client.WriteAsync("home", [new EntryWish(entry.Id, 1, other)], TestContext.Current.CancellationToken)).Ok);
        var stale = await client.WriteAsync("home", [new EntryWish(entry.Id, 1, entry with { Note = "late" })], TestContext.Current.CancellationToken);
        Assert.Equal("basedOn", Assert.Single(stale.Problems).Field);
        Assert.True((await client.WriteAsync("home", [new EntryWish(entry.Id, 2, null)], TestContext.Current.CancellationToken)).Ok);
        Assert.True((await client.EntryAsync("home", entry.Id, TestContext.Current.CancellationToken)).Value!.IsRemoved);
    }

    [Fact]
    public async Task The_journal_comes_in_parts()
    {
        var (client, http) = await ClientAsync("hugh", TokenScope.Write);
        using var _ = http;
        var day = new DateOnly(2034, 1, 1);
        var entries = Enumerable.Range(0, 25).Select(i => Reading(1000 + i) with { Day = day.AddDays(i) }).ToList();
        Assert.True((await client.WriteAsync("home", entries, TestContext.Current.CancellationToken)).Ok);
        List<Guid> seen = [];
        var filter = new JournalFilter { From = day, To = day.AddDays(24), AtMost = 10, Kinds = [EntryKind.Measured] };
        do
        {
            var part = (await client.JournalAsync("home", filter, TestContext.Current.CancellationToken)).Value!;
            seen.AddRange(part.Entries.Select(e => e.Entry.Id));
            filter = filter with { After = part.Next };
        }
        while (filter.After is not null);

        Assert.Equal(entries.Select(e => e.Id).Reverse(), seen);
    }

    [Fact]
    public async Task A_token_that_reads_does_not_write()
    {
        var (client, http) = await ClientAsync("oona", TokenScope.Read);
        using var _ = http;
        Assert.True((await client.GardenAsync("home", TestContext.Current.CancellationToken)).Ok);
        Assert.Equal("reader", (await client.GardensAsync(TestContext.Current.CancellationToken)).Value![0].Role);
        Assert.Equal("token", (await client.WriteAsync("home", [Reading(1)], TestContext.Current.CancellationToken)).Problems[0].Field);
        var (readers, readersHttp) = await ClientAsync("rhea", TokenScope.Write);
        using var __ = readersHttp;
        Assert.False((await readers.WriteAsync("home", [Reading(1)], TestContext.Current.CancellationToken)).Ok);
    }

    [Fact]
    public async Task A_token_opens_its_garden_alone_ends_and_can_be_removed()
    {
        var id = await House.IdOfAsync("sten");
        Assert.False((await House.WithAsync<AccessTokens, Problems.Result<(TokenRow, string)>>(t => t.MakeAsync(id, "x", TokenScope.Read, "home", 5, ""))).Ok);
        var (client, http) = await ClientAsync("sten", TokenScope.Read);
        using var _ = http;
        Assert.Equal("other", Assert.Single((await client.GardensAsync(TestContext.Current.CancellationToken)).Value!).Key);
        Assert.False((await client.GardenAsync("home", TestContext.Current.CancellationToken)).Ok);
        Assert.True((await client.GardenAsync("other", TestContext.Current.CancellationToken)).Ok);
        var row = (await House.WithAsync<AccessTokens, IReadOnlyList<TokenRow>>(t => t.OfAsync(id)))[0];
        Assert.True(await House.WithAsync<AccessTokens, bool>(t => t.RemoveAsync(id, row.Id, "")));
        Assert.False((await client.GardenAsync("other", TestContext.Current.CancellationToken)).Ok);
    }

    [Fact]
    public async Task Tokens_do_not_open_pages_and_a_calendar_token_opens_the_calendar_alone()
    {
        using var http = new HttpClient(new HttpClientHandler { AllowAutoRedirect = false }) { BaseAddress = House.Address };
        http.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", await House.TokenAsync("oona", TokenScope.Write));
        foreach (var page in new[] { "/account", "/account/tokens", "/garden/people", "/settings", "/gardens" })
        {
            Assert.NotEqual(HttpStatusCode.OK, (await http.GetAsync(page, TestContext.Current.CancellationToken)).StatusCode);
        }

        var calendar = await House.TokenAsync("oona", TokenScope.Calendar);
        http.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", calendar);
        Assert.NotEqual(HttpStatusCode.OK, (await http.GetAsync("/api/gardens", TestContext.Current.CancellationToken)).StatusCode);
        http.DefaultRequestHeaders.Authorization = null;
        Assert.NotEqual(HttpStatusCode.OK, (await http.GetAsync("/api/gardens?key=" + calendar, TestContext.Current.CancellationToken)).StatusCode);
        Assert.NotEqual(HttpStatusCode.OK, (await http.GetAsync("/garden.json?key=" + calendar, TestContext.Current.CancellationToken)).StatusCode);
    }

    [Fact]
    public async Task Another_site_writes_nothing_with_somebodys_cookie()
    {
        using var oona = await House.EnterAsync("oona");
        var entry = Reading(5);
        var body = "{\"changes\":[{\"id\":\"" + entry.Id + "\",\"basedOn\":0,\"entry\":" + JournalJson.WriteLine(entry) + "}]}";
        async Task<HttpStatusCode> SendAsync(string type, params (string, string)[] headers)
        {
            using var request = new HttpRequestMessage(HttpMethod.Post, "/api/gardens/home/journal") { Content = new StringContent(body, Encoding.UTF8, type) };
            foreach (var (name, value) in headers)
            {
                request.Headers.Add(name, value);
            }

            using var answer = await oona.Http.SendAsync(request, TestContext.Current.CancellationToken);
            return answer.StatusCode;
        }

        Assert.Equal(HttpStatusCode.Forbidden, await SendAsync("application/json", ("Sec-Fetch-Site", "cross-site")));
        Assert.Equal(HttpStatusCode.Forbidden, await SendAsync("application/json", ("Sec-Fetch-Site", "same-site")));
        Assert.Equal(HttpStatusCode.Forbidden, await SendAsync("application/json", ("Origin", "https://elsewhere.example")));
        Assert.Equal(HttpStatusCode.Forbidden, await SendAsync("application/json", ("Origin", "null")));
        Assert.Equal(HttpStatusCode.UnsupportedMediaType, await SendAsync("text/plain", ("Sec-Fetch-Site", "same-origin")));
        using var cors = await oona.Http.SendAsync(new HttpRequestMessage(HttpMethod.Get, "/api/gardens") { Headers = { { "Origin", "https://elsewhere.example" } } }, TestContext.Current.CancellationToken);
        Assert.False(cors.Headers.Contains("Access-Control-Allow-Origin"));
        Assert.Equal(HttpStatusCode.OK, await SendAsync("application/json", ("Sec-Fetch-Site", "same-origin")));
    }

    [Theory]
    [InlineData("GET", "/api/gardens/home/journal?from=soon", null, 422, "from")]
    [InlineData("GET", "/api/gardens/home/year?from=soon", null, 422, "from")]
    [InlineData("GET", "/api/gardens/nowhere", null, 403, null)]
    [InlineData("GET", "/api/nothing", null, 404, null)]
    [InlineData("PUT", "/api/gardens/home", "{}", 428, "If-Match")]
    [InlineData("POST", "/api/gardens/home/journal", "{", 422, "body")]
    [InlineData("POST", "/api/gardens/home/journal", "{\"changes\":[]}", 422, "changes")]
    [InlineData("POST", "/api/gardens/home/journal", "{\"changes\":[{\"id\":\"7f2c3a10-0000-4000-8000-000000000001\",\"basedOn\":0,\"entry\":{\"id\":\"x\"}}]}", 422, null)]
    public async Task What_goes_wrong_is_said_as_problem_details(string method, string path, string? body, int status, string? field)
    {
        using var oona = await House.EnterAsync("oona");
        using var request = new HttpRequestMessage(new HttpMethod(method), path);
        request.Content = body is null ? null : new StringContent(body, Encoding.UTF8, "application/json");
        using var answer = await oona.Http.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Equal(status, (int)answer.StatusCode);
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType!.MediaType);
        using var json = JsonDocument.Parse(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        Assert.Equal(status, json.RootElement.GetProperty("status").GetInt32());
        Assert.NotEmpty(json.RootElement.GetProperty("detail").GetString()!);
        if (field is not null)
        {
            Assert.Equal(field, json.RootElement.GetProperty("problems")[0].GetProperty("field").GetString());
        }
    }

    [Fact]
    public async Task The_description_names_every_address_of_the_interface()
    {
        using var http = new HttpClient { BaseAddress = House.Address };
        using var document = JsonDocument.Parse(await http.GetStringAsync("/api/openapi.json", TestContext.Current.CancellationToken));
        Assert.StartsWith("3.", document.RootElement.GetProperty("openapi").GetString(), StringComparison.Ordinal);
        var described = document.RootElement.GetProperty("paths").EnumerateObject()
            .SelectMany(p => p.Value.EnumerateObject().Select(m => m.Name.ToUpperInvariant() + " " + p.Name)).ToHashSet(StringComparer.Ordinal);
        var served = House.App.Services.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>()
            .Where(e => e.RoutePattern.RawText!.TrimStart('/').StartsWith("api/", StringComparison.Ordinal) && !e.RoutePattern.RawText.Contains("openapi", StringComparison.Ordinal))
            .SelectMany(e => e.Metadata.GetMetadata<HttpMethodMetadata>()!.HttpMethods.Select(m => $"{m} /{e.RoutePattern.RawText!.Trim('/').Replace(":guid", "", StringComparison.Ordinal)}")).ToHashSet(StringComparer.Ordinal);
        Assert.True(served.Count >= 8);
        Assert.Equal(served.Order(), described.Order());
        Assert.DoesNotContain(House.Secret, document.RootElement.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_unchanged_garden_is_not_sent_again()
    {
        using var oona = await House.EnterAsync("oona");
        using var first = await oona.Http.GetAsync("/api/gardens/home", TestContext.Current.CancellationToken);
        using var request = new HttpRequestMessage(HttpMethod.Get, "/api/gardens/home");
        request.Headers.IfNoneMatch.Add(first.Headers.ETag!);
        using var second = await oona.Http.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.NotModified, second.StatusCode);
    }

    [Fact]
    public async Task Calls_are_counted()
    {
        await using var house = await House.OpenAsync(House.Fast with { CallsAMinute = 5 });
        using var http = new HttpClient { BaseAddress = house.Address };
        http.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", await house.TokenAsync("oona", TokenScope.Read));
        for (var i = 0; i < 5; i++)
        {
            Assert.Equal(HttpStatusCode.OK, (await http.GetAsync("/api/gardens", TestContext.Current.CancellationToken)).StatusCode);
        }

        using var answer = await http.GetAsync("/api/gardens", TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.TooManyRequests, answer.StatusCode);
        Assert.Equal("60", answer.Headers.RetryAfter!.ToString());
    }
}

/// <summary>One application for tests that leave it as they found it, or do not mind.</summary>
public sealed class OneHouse : IAsyncLifetime
{
    internal House House { get; private set; } = null!;

    public async ValueTask InitializeAsync() => House = await House.OpenAsync();

    public ValueTask DisposeAsync() => House.DisposeAsync();
}
