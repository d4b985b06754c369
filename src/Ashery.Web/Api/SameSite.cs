namespace Ashery.Web.Api;

/// <summary>
/// Another site's page must not write with the cookie of somebody who is signed in. A browser says where a call comes from (Fetch Metadata, W3C; Origin,
/// Fetch standard) and asks first before it sends JSON elsewhere; a program with a token has no cookie to misuse.
/// </summary>
internal static class SameSite
{
    public static async ValueTask<object?> Check(EndpointFilterInvocationContext context, EndpointFilterDelegate next)
    {
        var request = context.HttpContext.Request;
        if (HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method) || request.Headers.ContainsKey("Authorization"))
        {
            return await next(context);
        }

        if (!IsOwn(request))
        {
            return ApiProblems.Wrong("origin", "This call comes from a page of another site.", "Call from Ashery's own pages, or with a token.", StatusCodes.Status403Forbidden);
        }

        return request.HasJsonContentType()
            ? await next(context)
            : ApiProblems.Wrong("Content-Type", "The interface takes JSON.", "Send Content-Type: application/json.", StatusCodes.Status415UnsupportedMediaType);
    }

    /// <summary>True for a call of our own page, or of a program that is no browser.</summary>
    public static bool IsOwn(HttpRequest request)
    {
        if (request.Headers["Sec-Fetch-Site"].ToString() is { Length: > 0 } site)
        {
            return site is "same-origin" or "none";
        }

        return request.Headers.Origin.ToString() is not { Length: > 0 } origin
            || (Uri.TryCreate(origin, UriKind.Absolute, out var from) && from.Authority == request.Host.Value && from.Scheme == request.Scheme);
    }
}
