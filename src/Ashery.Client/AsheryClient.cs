using System.Globalization;
using System.Net;
using System.Net.Http.Headers;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using Ashery.Exchange.Gardens;
using Ashery.Exchange.Journal;
using Ashery.Gardens;
using Ashery.Journal;
using Ashery.Problems;

namespace Ashery.Client;

/// <summary>
/// Talks to an Ashery that runs somewhere: gardens and journals as the library's own values. What a caller can get wrong comes back as problems; a network
/// that fails throws <see cref="HttpRequestException"/>.
/// </summary>
/// <example><code>
/// using var http = new HttpClient { BaseAddress = new Uri("https://garden.example/") };
/// var client = new AsheryClient(http, "ashery_...");
/// var gardens = await client.GardensAsync();
/// var garden = await client.GardenAsync(gardens.Value[0].Key);
/// </code></example>
public sealed class AsheryClient
{
    private readonly HttpClient http;

    /// <param name="http">Its base address is where Ashery is. The client does not dispose of it.</param>
    /// <param name="token">A personal access token; null for an Ashery without accounts on this machine.</param>
    public AsheryClient(HttpClient http, string? token = null)
    {
        this.http = http;
        if (token is not null)
        {
            http.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", token);
        }
    }

    /// <summary>The gardens the token opens.</summary>
    public Task<Result<IReadOnlyList<GardenInfo>>> GardensAsync(CancellationToken stop = default) =>
        SendAsync(new(HttpMethod.Get, "api/gardens"), static async answer => await ReadAsync(answer, ClientJson.Default.IReadOnlyListGardenInfo), stop);

    /// <summary>A garden and the version to base a change on.</summary>
    public Task<Result<VersionedGarden>> GardenAsync(string key, CancellationToken stop = default) => SendAsync(
        new(HttpMethod.Get, Path(key)),
        async answer =>
        {
            var garden = GardenFile.Read(await answer.Content.ReadAsStringAsync(stop));
            return garden.Ok ? Result.Of(new VersionedGarden(garden.Value, Version(answer))) : Result.Fail<VersionedGarden>(garden.Problems);
        },
        stop);

    /// <summary>Puts a whole garden in the place of the version it was made on.</summary>
    /// <returns>The new version; a problem with field <c>If-Match</c> when somebody else was first.</returns>
    public Task<Result<long>> SaveGardenAsync(string key, Garden garden, long basedOn, CancellationToken stop = default)
    {
        var request = new HttpRequestMessage(HttpMethod.Put, Path(key)) { Content = Json(GardenFile.Write(garden)) };
        request.Headers.IfMatch.Add(new EntityTagHeaderValue($"\"{basedOn.ToString(CultureInfo.InvariantCulture)}\""));
        return SendAsync(request, static answer => Task.FromResult(Result.Of(Version(answer))), stop);
    }

    /// <summary>A part of the journal, newest day first.</summary>
    public Task<Result<JournalPart>> JournalAsync(string key, JournalFilter? filter = null, CancellationToken stop = default) =>
        SendAsync(new(HttpMethod.Get, Path(key) + "/journal" + (filter ?? new()).Query()), static async answer => await ReadAsync(answer, ClientJson.Default.JournalPart), stop);

    /// <summary>An entry as it stands.</summary>
    public Task<Result<EntryRevision>> EntryAsync(string key, Guid id, CancellationToken stop = default) =>
        SendAsync(new(HttpMethod.Get, $"{Path(key)}/journal/{id}"), static async answer => await ReadAsync(answer, ClientJson.Default.EntryRevision), stop);

    /// <summary>Writes new entries, together or not at all. Sent again with the same ids they are written once.</summary>
    public Task<Result<JournalPart>> WriteAsync(string key, IReadOnlyList<Entry> entries, CancellationToken stop = default) =>
        WriteAsync(key, [.. entries.Select(static e => new EntryWish(e.Id, 0, e))], stop);

    /// <summary>Writes changes, together or not at all.</summary>
    public Task<Result<JournalPart>> WriteAsync(string key, IReadOnlyList<EntryWish> changes, CancellationToken stop = default)
    {
        var body = new StringBuilder("{\"changes\":[");
        foreach (var (change, i) in changes.Select((c, i) => (c, i)))
        {
            body.Append(i > 0 ? "," : "").Append(CultureInfo.InvariantCulture, $"{{\"id\":\"{change.Id}\",\"basedOn\":{change.BasedOn},\"entry\":")
                .Append(change.Entry is { } entry ? JournalJson.WriteLine(entry) : "null").Append('}');
        }

        var request = new HttpRequestMessage(HttpMethod.Post, Path(key) + "/journal") { Content = Json(body.Append("]}").ToString()) };
        return SendAsync(request, static async answer => await ReadAsync(answer, ClientJson.Default.JournalPart), stop);
    }

    private async Task<Result<T>> SendAsync<T>(HttpRequestMessage request, Func<HttpResponseMessage, Task<Result<T>>> read, CancellationToken stop)
        where T : notnull
    {
        using (request)
        {
            using var answer = await http.SendAsync(request, stop);
            return answer.IsSuccessStatusCode ? await read(answer) : Result.Fail<T>(await ProblemsAsync(answer, stop));
        }
    }

    private static async Task<IReadOnlyList<Problem>> ProblemsAsync(HttpResponseMessage answer, CancellationToken stop)
    {
        if (answer.Content.Headers.ContentType?.MediaType == "application/problem+json"
            && await answer.Content.ReadFromJsonAsync(ClientJson.Default.ProblemDetails, stop) is { } details)
        {
            return details.Problems is { Count: > 0 } problems ? problems : [new Problem(Field(answer.StatusCode), details.Title ?? "The call failed.", details.Detail ?? "")];
        }

        return [new Problem(Field(answer.StatusCode), FormattableString.Invariant($"The server answered {(int)answer.StatusCode}."), "Check the address and the token.")];
    }

    private static string Field(HttpStatusCode status) => status is HttpStatusCode.Unauthorized or HttpStatusCode.Forbidden ? "token" : "call";

    private static async Task<Result<T>> ReadAsync<T>(HttpResponseMessage answer, System.Text.Json.Serialization.Metadata.JsonTypeInfo<T> type)
        where T : notnull => await answer.Content.ReadFromJsonAsync(type) is { } value
            ? Result.Of(value)
            : Result.Fail<T>("answer", "The server answered nothing.", "Ask again.");

    private static long Version(HttpResponseMessage answer) =>
        long.TryParse(answer.Headers.ETag?.Tag.Trim('"'), NumberStyles.None, CultureInfo.InvariantCulture, out var version) ? version : 0;

    private static StringContent Json(string text) => new(text, Encoding.UTF8, "application/json");

    private static string Path(string key) => "api/gardens/" + Uri.EscapeDataString(key);
}
