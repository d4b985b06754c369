using System.Security.Claims;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.Extensions.DependencyInjection;

namespace Ashery.Accounts.SignIn;

/// <summary>Asks the database of every request that shows a cookie whether its session still stands.</summary>
internal static class SessionGate
{
    private const string Stamp = "AspNet.Identity.SecurityStamp";

    public static async Task Check(CookieValidatePrincipalContext context)
    {
        var who = context.Principal;
        var sessions = context.HttpContext.RequestServices.GetRequiredService<Sessions>();
        if (!Guid.TryParse(who?.FindFirstValue(Sessions.Claim), out var session)
            || who!.FindFirstValue(ClaimTypes.NameIdentifier) is not { } user
            || !await sessions.StandsAsync(session, user, who.FindFirstValue(Stamp)))
        {
            context.RejectPrincipal();
            await context.HttpContext.SignOutAsync(context.Scheme.Name);
        }
    }
}
