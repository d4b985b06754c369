using System.Net;
using Microsoft.AspNetCore.HostFiltering;

namespace Ashery.Web.Home;

/// <summary>
/// Serves the home network: HTTPS for everybody; plain HTTP for this machine, and for others only the page that explains how a phone comes to trust this
/// computer.
/// </summary>
public sealed class HomeHost(HomeCertificates certificates, int plainPort, int securePort)
{
    /// <summary>Tried first for HTTPS.</summary>
    public const int DefaultSecurePort = 8743;

    public HomeCertificates Certificates => certificates;

    public int PlainPort => plainPort;

    public int SecurePort => securePort;

    internal static HomeHost Add(WebApplicationBuilder builder, string folder, TimeProvider clock, int plainPort, int securePort)
    {
        var home = new HomeHost(new HomeCertificates(folder, clock), plainPort, securePort);
        builder.Services.AddSingleton(home);
        builder.Services.AddSingleton(home.Certificates);
        builder.Services.Configure<HostFilteringOptions>(static hosts => hosts.AllowedHosts = ["*"]);
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.Listen(IPAddress.Any, plainPort);
            kestrel.Listen(IPAddress.Any, securePort, listen => listen.UseHttps(https => https.ServerCertificateSelector = (_, _) => home.Certificates.Current()));
        });
        return home;
    }

    internal Task Guard(HttpContext http, RequestDelegate next)
    {
        // A page elsewhere cannot reach the garden by pointing its own name here.
        if (!certificates.Hosts.Contains(http.Request.Host.Host.Trim('[', ']')))
        {
            http.Response.StatusCode = StatusCodes.Status400BadRequest;
            return Task.CompletedTask;
        }

        if (http.Request.IsHttps || IsHere(http) || IsOpen(http.Request))
        {
            return next(http);
        }

        var port = ListensSecurely(http);
        http.Response.Redirect(HttpMethods.IsGet(http.Request.Method) && port > 0
            ? FormattableString.Invariant($"https://{http.Request.Host.Host}:{port}{http.Request.Path}{http.Request.QueryString}")
            : "/trust");
        return Task.CompletedTask;
    }

    /// <summary>The port of HTTPS, also where the system chose it.</summary>
    private int ListensSecurely(HttpContext http) => securePort != 0 ? securePort : http.RequestServices
        .GetRequiredService<Microsoft.AspNetCore.Hosting.Server.IServer>().Features.Get<Microsoft.AspNetCore.Hosting.Server.Features.IServerAddressesFeature>()!
        .Addresses.Select(BindingAddress.Parse).FirstOrDefault(static a => a.Scheme == "https")?.Port ?? 0;

    private static bool IsHere(HttpContext http) => http.Connection.RemoteIpAddress is { } address && IPAddress.IsLoopback(address);

    // What a phone needs before it trusts us: nothing of the garden.
    private static bool IsOpen(HttpRequest request) =>
        HttpMethods.IsGet(request.Method) && (request.Path.StartsWithSegments("/trust", StringComparison.Ordinal)
            || request.Path.Value is "/look.css" || request.Path.Value?.StartsWith("/ashery.", StringComparison.Ordinal) == true
            || request.Path.Value?.StartsWith("/mark.", StringComparison.Ordinal) == true);
}
