using System.Security.Claims;
using Ashery.Accounts.Audit;
using Ashery.Accounts.Model;
using Ashery.Accounts.SignIn;
using Ashery.Web.Gardens;

namespace Ashery.Web.Access;

/// <summary>
/// Turns back whatever a reader posts before any page sees it. The store and the journal refuse as well (<see cref="GuardedStore"/>), so that a way
/// around this gate still writes nothing.
/// </summary>
internal static class RoleGate
{
    public static async Task Guard(HttpContext http, RequestDelegate next)
    {
        if (!IsSafe(http.Request.Method) && http.User.Identity?.IsAuthenticated == true
            && http.GetEndpoint() is { } endpoint && endpoint.Metadata.GetMetadata<ReadersMayAttribute>() is null
            && http.RequestServices.GetRequiredService<CurrentGarden>() is { Role: GardenRole.Reader } garden)
        {
            Refuse(http, garden.Key);
            return;
        }

        try
        {
            await next(http);
        }
        catch (ReaderMayNotWriteException) when (!http.Response.HasStarted)
        {
            http.Response.Clear();
            Refuse(http, http.RequestServices.GetRequiredService<CurrentGarden>().Key);
        }
    }

    private static bool IsSafe(string method) => HttpMethods.IsGet(method) || HttpMethods.IsHead(method) || HttpMethods.IsOptions(method);

    private static void Refuse(HttpContext http, string garden)
    {
        http.RequestServices.GetRequiredService<AuditLog>().Write(
            AuditKind.Refused, http.User.FindFirstValue(ClaimTypes.NameIdentifier), SignInDesk.From(http), $"{http.Request.Method} {http.Request.Path}", garden);
        http.Response.StatusCode = StatusCodes.Status403Forbidden;
    }
}
