using Microsoft.Net.Http.Headers;

namespace Ashery.Web.Api;

/// <summary>
/// Whether a request comes from a page of this address, or from no page at all. A browser always says where a request to write comes from
/// (Fetch Metadata, or Origin); a page elsewhere cannot hide it.
/// </summary>
internal static class OwnPage
{
    public static bool Sent(HttpRequest request)
    {
        if (request.Headers["Sec-Fetch-Site"] is [{ } site, ..])
        {
            return site is "same-origin" or "none";
        }

        return request.Headers[HeaderNames.Origin] is not [{ } origin, ..]
            || string.Equals(origin, $"{request.Scheme}://{request.Host}", StringComparison.OrdinalIgnoreCase);
    }
}
