namespace Ashery.Web.Access;

/// <summary>Keeps in this browser which garden is looked at.</summary>
internal static class GardenChoice
{
    public static void Set(HttpContext http, string garden) => http.Response.Cookies.Append(WhoseGarden.Cookie, garden, new CookieOptions
    {
        HttpOnly = true, SameSite = SameSiteMode.Lax, Secure = http.Request.IsHttps, MaxAge = TimeSpan.FromDays(400), IsEssential = true,
    });
}
