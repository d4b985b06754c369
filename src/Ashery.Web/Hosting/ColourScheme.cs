using Microsoft.AspNetCore.Antiforgery;

namespace Ashery.Web.Hosting;

/// <summary>Light, dark, or as the device says; kept in a cookie of this browser.</summary>
internal static class ColourScheme
{
    private const string Cookie = "light";

    /// <summary><c>light</c>, <c>dark</c>, or <c>auto</c>.</summary>
    public static string Of(HttpContext? context) => Known(context?.Request.Cookies[Cookie]);

    public static async Task<IResult> Choose(HttpContext context, IAntiforgery antiforgery)
    {
        if (!await antiforgery.IsRequestValidAsync(context))
        {
            return Results.BadRequest();
        }

        var form = await context.Request.ReadFormAsync(context.RequestAborted);
        context.Response.Cookies.Append(Cookie, Known(form["scheme"]), new CookieOptions
        {
            HttpOnly = true, SameSite = SameSiteMode.Lax, MaxAge = TimeSpan.FromDays(400), IsEssential = true,
        });
        var back = form["back"].ToString();
        return Results.LocalRedirect(back.StartsWith('/') && !back.StartsWith("//", StringComparison.Ordinal) && !back.Contains('\\', StringComparison.Ordinal) ? back : "/");
    }

    private static string Known(string? scheme) => scheme is "light" or "dark" ? scheme : "auto";
}
