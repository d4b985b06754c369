using System.Security.Claims;
using Ashery.Accounts.Model;
using Ashery.Accounts.People;
using Ashery.Accounts.Tokens;
using Ashery.Web.Gardens;

namespace Ashery.Web.Access;

/// <summary>
/// Finds whose garden a request is about: the one its address names, else the one chosen in this browser, else the first of the person. A stranger
/// gets a garden that nobody has, as a reader, so that a page that is shown to strangers has nothing to show.
/// </summary>
internal static class WhoseGarden
{
    /// <summary>Names the garden chosen in this browser.</summary>
    public const string Cookie = "garden";

    /// <summary>Name of the place in an address that names a garden.</summary>
    public const string RouteValue = "garden";

    /// <summary>A key that no garden has.</summary>
    public const string Nobodys = "-";

    public static async Task Fill(HttpContext http, RequestDelegate next)
    {
        var current = http.RequestServices.GetRequiredService<CurrentGarden>();
        (current.Key, current.Role, current.By) = (Nobodys, GardenRole.Reader, "");
        if (http.User.FindFirstValue(ClaimTypes.NameIdentifier) is { } user)
        {
            current.By = http.User.Identity?.Name ?? "";
            var memberships = await http.RequestServices.GetRequiredService<Memberships>().OfAsync(user);
            if (Choose(http, memberships) is { } chosen)
            {
                current.Key = chosen.Garden;
                current.Role = Role(chosen.Role, http.User.FindFirstValue(TokenHandler.ScopeClaim));
            }
        }

        await next(http);
    }

    private static MembershipRow? Choose(HttpContext http, IReadOnlyList<MembershipRow> memberships)
    {
        var only = http.User.FindFirstValue(TokenHandler.GardenClaim);
        var open = memberships.Where(m => only is null || m.Garden == only).ToList();
        return http.Request.RouteValues[RouteValue] is string named
            ? open.Find(m => m.Garden == named)
            : open.Find(m => m.Garden == http.Request.Cookies[Cookie]) ?? open.FirstOrDefault();
    }

    // A token that reads makes an owner a reader.
    private static GardenRole Role(MemberRole role, string? scope) => scope is null or TokenScope.Write
        ? role switch { MemberRole.Owner => GardenRole.Owner, MemberRole.Helper => GardenRole.Helper, _ => GardenRole.Reader }
        : GardenRole.Reader;
}
