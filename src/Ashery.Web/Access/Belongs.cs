using System.Security.Claims;
using Ashery.Accounts.Model;
using Ashery.Accounts.Tokens;
using Ashery.Web.Gardens;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Identity;

namespace Ashery.Web.Access;

/// <summary>
/// What every endpoint asks unless it is marked for strangers: signed in, and one of the garden's people. It is the fallback policy, so that a new page is
/// closed from the start.
/// </summary>
internal sealed class Belongs : IAuthorizationRequirement;

/// <summary>Answers <see cref="Belongs"/>.</summary>
internal sealed class BelongsHandler(IServiceProvider services) : AuthorizationHandler<Belongs>
{
    // What a program may ask for with a token; pages, the account's above all, are for people.
    private static readonly string[] ForTokens = ["/api", "/calendar", "/photos", "/download", "/garden.json"];

    protected override async Task HandleRequirementAsync(AuthorizationHandlerContext context, Belongs requirement)
    {
        if (context.Resource is not HttpContext http || http.User.Identity?.IsAuthenticated != true || !TokenReaches(http))
        {
            return;
        }

        var marks = http.GetEndpoint()?.Metadata;
        if (marks?.GetMetadata<KeeperOnlyAttribute>() is not null && !await IsKeeper(http.User))
        {
            return;
        }

        if (marks?.GetMetadata<NoGardenNeededAttribute>() is not null
            || http.RequestServices.GetRequiredService<CurrentGarden>().Key != WhoseGarden.Nobodys)
        {
            context.Succeed(requirement);
        }
    }

    private static bool TokenReaches(HttpContext http) => http.User.FindFirstValue(TokenHandler.ScopeClaim) switch
    {
        null => true,
        TokenScope.Calendar => http.Request.Path.StartsWithSegments("/calendar", StringComparison.OrdinalIgnoreCase),
        _ => ForTokens.Any(p => http.Request.Path.StartsWithSegments(p, StringComparison.OrdinalIgnoreCase)),
    };

    private async Task<bool> IsKeeper(ClaimsPrincipal who)
    {
        await using var scope = services.CreateAsyncScope();
        return await scope.ServiceProvider.GetRequiredService<UserManager<AsheryUser>>().GetUserAsync(who) is { IsKeeper: true };
    }
}
