using System.Security.Claims;
using Ashery.Accounts.Audit;
using Ashery.Accounts.Model;
using Ashery.Accounts.SignIn;
using Ashery.Web.Gardens;

namespace Ashery.Web.Access;

/// <summary>Notes who took files of the garden away.</summary>
internal static class ExportLog
{
    private static readonly string[] Files = ["/garden.json", "/download", "/export", "/backup", "/settings/backup"];

    public static async Task Note(HttpContext http, RequestDelegate next)
    {
        await next(http);
        if (http.Response.StatusCode == StatusCodes.Status200OK && http.User.Identity?.IsAuthenticated == true && http.Response.ContentType?.StartsWith("text/html", StringComparison.Ordinal) != true
            && Array.Exists(Files, f => http.Request.Path.StartsWithSegments(f, StringComparison.OrdinalIgnoreCase)))
        {
            http.RequestServices.GetRequiredService<AuditLog>().Write(
                AuditKind.Exported, http.User.FindFirstValue(ClaimTypes.NameIdentifier), SignInDesk.From(http), http.Request.Path,
                http.RequestServices.GetRequiredService<CurrentGarden>().Key);
        }
    }
}
