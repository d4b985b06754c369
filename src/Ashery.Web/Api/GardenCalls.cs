using System.Globalization;
using System.Security.Claims;
using System.Text;
using Ashery.Exchange.Calendar;
using Ashery.Exchange.Gardens;
using Ashery.Planning;
using Ashery.Records;
using Ashery.Web.Gardens;
using Microsoft.Net.Http.Headers;

namespace Ashery.Web.Api;

/// <summary>Gardens by HTTP.</summary>
internal static class GardenCalls
{
    /// <summary>Also where there are no accounts: then the one garden of this machine.</summary>
    public static async Task<IReadOnlyList<GardenItem>> List(HttpContext http, CurrentGarden current, IRecords records)
    {
        var names = records.Gardens().ToDictionary(g => g.Key, g => g.Name, StringComparer.Ordinal);
        return http.User.FindFirstValue(ClaimTypes.NameIdentifier) is { } user
            ? await TheirGardens.Of(http, user, names)
            : [new GardenItem(current.Key, names.GetValueOrDefault(current.Key, ""), "owner")];
    }

    public static IResult Read(HttpContext http, IGardenStore store)
    {
        if (store.Load() is not { } stored)
        {
            return Results.NotFound();
        }

        var tag = Tag(stored.Version);
        http.Response.Headers.ETag = tag.ToString();
        http.Response.Headers.CacheControl = "private, no-cache";
        return http.Request.GetTypedHeaders().IfNoneMatch.Any(t => t.Compare(tag, useStrongComparison: false))
            ? Results.StatusCode(StatusCodes.Status304NotModified)
            : Results.Text(GardenFile.Write(stored.Garden), "application/json", Encoding.UTF8);
    }

    public static async Task<IResult> Write(HttpContext http, IGardenStore store)
    {
        if (http.Request.GetTypedHeaders().IfMatch is not [var match] || !long.TryParse(match.Tag.AsSpan().Trim('"'), NumberStyles.None, CultureInfo.InvariantCulture, out var basedOn))
        {
            return ApiProblems.Wrong("If-Match", "A write says which version it was made on.", "Read the garden, and send its ETag as If-Match.", StatusCodes.Status428PreconditionRequired);
        }

        using var reader = new StreamReader(http.Request.Body, Encoding.UTF8);
        var garden = GardenFile.Read(await reader.ReadToEndAsync(http.RequestAborted));
        if (!garden.Ok)
        {
            return ApiProblems.Wrong(garden.Problems);
        }

        switch (store.Save(garden.Value, basedOn, "Changed by the HTTP interface"))
        {
            case SaveOutcome.Saved saved:
                http.Response.Headers.ETag = Tag(saved.Version).ToString();
                return Results.Json(new GardenWritten(saved.Version));
            case SaveOutcome.Overtaken overtaken:
                return ApiProblems.Wrong(
                    "If-Match", FormattableString.Invariant($"The garden is at version {overtaken.By.Version} by now ({overtaken.By.What})."),
                    "Read it again, bring your change into it, and send that.", StatusCodes.Status412PreconditionFailed);
            default:
                throw new InvalidOperationException("An outcome of a save that nobody knows.");
        }
    }

    public static IResult Year(GardenDesk desk, TimeProvider clock, string? from)
    {
        var day = DateOnly.FromDateTime(clock.GetLocalNow().DateTime);
        return from is null || DateOnly.TryParseExact(from, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out day)
            ? Results.Text(YearJson.Write(desk.Year(day)), "application/json", Encoding.UTF8)
            : ApiProblems.Wrong("from", "This is not a day.", "Write it as 2027-03-01.");
    }

    private static EntityTagHeaderValue Tag(long version) => new($"\"{version.ToString(CultureInfo.InvariantCulture)}\"");
}
