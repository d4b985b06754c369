using Ashery.Web.Home;

namespace Ashery.Web.Access;

/// <summary>Closes the pages of accounts where there are none: they answer as any address that leads nowhere.</summary>
internal static class AccountPages
{
    private const string Trust = "/trust";

    public static void Close(EndpointBuilder endpoint, AccessOptions? access, HomeHost? home)
    {
        var closed = endpoint.Metadata.OfType<AccountsOnlyAttribute>().Any() && access is null;
        if (closed || (home is null && endpoint is RouteEndpointBuilder { RoutePattern.RawText: Trust }))
        {
            endpoint.RequestDelegate = static http =>
            {
                http.Response.StatusCode = StatusCodes.Status404NotFound;
                return Task.CompletedTask;
            };
        }
    }
}
