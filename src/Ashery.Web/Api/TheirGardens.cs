using System.Security.Claims;
using Ashery.Accounts.Model;
using Ashery.Accounts.People;
using Ashery.Accounts.Tokens;

namespace Ashery.Web.Api;

/// <summary>The gardens of an account; apart, so that nothing of accounts is loaded where there are none.</summary>
internal static class TheirGardens
{
    public static async Task<IReadOnlyList<GardenItem>> Of(HttpContext http, string user, Dictionary<string, string> names)
    {
        var only = http.User.FindFirstValue(TokenHandler.GardenClaim);
        var reads = http.User.FindFirstValue(TokenHandler.ScopeClaim) is { } scope && scope != TokenScope.Write;
        var memberships = await http.RequestServices.GetRequiredService<Memberships>().OfAsync(user);
        return
        [
            .. memberships.Where(m => only is null || m.Garden == only)
                .Select(m => new GardenItem(m.Garden, names.GetValueOrDefault(m.Garden, ""), (reads ? MemberRole.Reader : m.Role).ToString().ToLowerInvariant())),
        ];
    }
}
