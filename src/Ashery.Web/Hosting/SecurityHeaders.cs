namespace Ashery.Web.Hosting;

/// <summary>
/// Tells the browser to run and show only what this server sends as files: a name that got past the encoding would still
/// do nothing.
/// </summary>
internal static class SecurityHeaders
{
    private const string Policy =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; font-src 'self'; connect-src 'self'; worker-src 'self'; manifest-src 'self'; "
        + "form-action 'self'; base-uri 'self'; frame-ancestors 'none'";

    // When the answer starts: a page that broke is cleared, headers too, before the page that says so is made.
    public static IApplicationBuilder UseSecurityHeaders(this IApplicationBuilder app) => app.Use(static (context, next) =>
    {
        context.Response.OnStarting(static state => Set(((HttpContext)state).Response.Headers), context);
        return next(context);
    });

    private static Task Set(IHeaderDictionary headers)
    {
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "same-origin";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(), geolocation=(), microphone=()";
        return Task.CompletedTask;
    }
}
