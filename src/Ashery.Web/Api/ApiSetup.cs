using System.Text.Json;
using System.Text.Json.Serialization;
using Ashery.Web.Access;
using Ashery.Web.Gardens;
using Microsoft.AspNetCore.Antiforgery;

namespace Ashery.Web.Api;

/// <summary>The HTTP interface for programs: described at <c>/api/openapi.json</c>, in words in docs/http.md.</summary>
internal static class ApiSetup
{
    // The name the framework looks for at an address without one.
    private const string Document = "v1";

    public static void AddApi(this IServiceCollection services)
    {
        services.AddOpenApi(Document, static openApi =>
        {
            openApi.ShouldInclude = static call => call.RelativePath?.StartsWith("api/", StringComparison.Ordinal) == true;
            openApi.AddDocumentTransformer(static (document, _, _) =>
            {
                document.Info = new() { Title = "Ashery", Version = "1", Description = "Gardens and their journals. Errors are problem details (RFC 9457)." };
                document.Servers?.Clear();
                return Task.CompletedTask;
            });
        });
        services.ConfigureHttpJsonOptions(static json =>
        {
            json.SerializerOptions.DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull;
            json.SerializerOptions.PropertyNamingPolicy = JsonNamingPolicy.CamelCase;
        });
    }

    public static void MapApi(this IEndpointRouteBuilder app)
    {
        app.MapOpenApi("/api/openapi.json").AllowAnonymous();
        var all = app.MapGroup("/api").AddEndpointFilter(SameSite.Check).DisableAntiforgery();
        all.MapGet("/gardens", GardenCalls.List).WithMetadata(new NoGardenNeededAttribute()).WithName("listGardens").WithSummary("The gardens you belong to")
            .Produces<IReadOnlyList<GardenItem>>();
        var one = all.MapGroup($"/gardens/{{{WhoseGarden.RouteValue}}}").AddEndpointFilter(ItsGarden);
        one.MapGet("", GardenCalls.Read).WithName("readGarden").WithSummary("The whole garden as a garden file (docs/garden-file.md), its version as ETag")
            .Produces<JsonElement>().Produces(304).Produces<ApiProblem>(404, "application/problem+json");
        one.MapPut("", GardenCalls.Write).WithName("writeGarden").WithSummary("Puts a whole garden in the place of the version that If-Match names")
            .Accepts<JsonElement>("application/json").Produces<GardenWritten>().Produces<ApiProblem>(412, "application/problem+json").Produces<ApiProblem>(422, "application/problem+json").Produces<ApiProblem>(428, "application/problem+json");
        one.MapGet("/year", GardenCalls.Year).WithName("readYear").WithSummary("The plan of a year from a day on (docs/schemas/year.schema.json)")
            .Produces<JsonElement>().Produces<ApiProblem>(422, "application/problem+json");
        JournalCalls.Map(one);
    }

    /// <summary>An address names the garden that the caller was let into, or there is nothing.</summary>
    private static async ValueTask<object?> ItsGarden(EndpointFilterInvocationContext context, EndpointFilterDelegate next) =>
        context.HttpContext.Request.RouteValues[WhoseGarden.RouteValue] as string == context.HttpContext.RequestServices.GetRequiredService<CurrentGarden>().Key
            ? await next(context)
            : Results.NotFound();
}
