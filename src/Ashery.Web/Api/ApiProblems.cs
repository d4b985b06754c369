using System.Text.Json.Serialization;
using Ashery.Exchange.Json;
using Ashery.Problems;
using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.WebUtilities;

namespace Ashery.Web.Api;

/// <summary>Answers of the HTTP interface that say what went wrong: problem details (RFC 9457) with our problems as a member of their own.</summary>
internal static class ApiProblems
{
    /// <summary>The input cannot be taken as it is.</summary>
    public static IResult Wrong(IReadOnlyList<Problem> problems, int status = StatusCodes.Status422UnprocessableEntity) =>
        Results.Problem(statusCode: status, title: ReasonPhrases.GetReasonPhrase(status), detail: string.Join(' ', problems.Select(static p => $"{p.Message} {p.WayOut}")), extensions:
            new Dictionary<string, object?>(StringComparer.Ordinal) { ["problems"] = ProblemJson.From(problems) });

    public static IResult Wrong(string field, string message, string wayOut, int status = StatusCodes.Status422UnprocessableEntity) => Wrong([new Problem(field, message, wayOut)], status);

    /// <summary>A program gets problem details where a person gets a page.</summary>
    public static void UseApiProblems(this IApplicationBuilder app) => app.UseWhen(
        static http => http.Request.Path.StartsWithSegments("/api", StringComparison.OrdinalIgnoreCase),
        static api => api.Use(static async (http, next) =>
        {
            if (http.Features.Get<IStatusCodePagesFeature>() is { } pages)
            {
                pages.Enabled = false;
            }

            await next(http);
            if (http.Response is { HasStarted: false, StatusCode: >= 400, ContentLength: null, ContentType: null })
            {
                await Results.Problem(statusCode: http.Response.StatusCode, title: ReasonPhrases.GetReasonPhrase(http.Response.StatusCode), detail: Say(http.Response.StatusCode)).ExecuteAsync(http);
            }
        }));

    private static string Say(int status) => status switch
    {
        StatusCodes.Status401Unauthorized => "Sign in, or send a personal access token: Authorization: Bearer ashery_...",
        StatusCodes.Status403Forbidden => "The account or the token may not do this.",
        StatusCodes.Status404NotFound => "There is nothing at this address for you.",
        StatusCodes.Status429TooManyRequests => "Too many calls. Wait as many seconds as Retry-After says.",
        _ => "The call was not understood; docs/http.md and /api/openapi.json say what is.",
    };
}

/// <summary>Problem details as the description of the interface shows them.</summary>
/// <param name="Type">about:blank: the status says which kind it is.</param>
/// <param name="Title">The status in words.</param>
/// <param name="Status">The status.</param>
/// <param name="Detail">What went wrong.</param>
/// <param name="Problems">Each problem: field, what is wrong with the limit, the way out.</param>
public sealed record ApiProblem(string? Type, string? Title, int? Status, string? Detail, [property: JsonPropertyName("problems")] IReadOnlyList<ProblemJson>? Problems);
