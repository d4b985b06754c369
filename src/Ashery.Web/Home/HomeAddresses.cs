using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;
using Ashery.Web.Access;

namespace Ashery.Web.Home;

/// <summary>Under which names and addresses the home network reaches this machine.</summary>
public static class HomeAddresses
{
    /// <summary>Names of this machine: its own, the one of multicast DNS (RFC 6762), and localhost.</summary>
    public static IReadOnlyList<string> Names()
    {
        var own = Dns.GetHostName().Split('.')[0].ToLowerInvariant();
        return [own + ".local", own, "localhost"];
    }

    /// <summary>Private addresses (RFC 1918, RFC 4193) of the network cards that are up, and loopback.</summary>
    public static IReadOnlyList<IPAddress> Numbers() =>
    [
        .. NetworkInterface.GetAllNetworkInterfaces()
            .Where(static n => n.OperationalStatus == OperationalStatus.Up && n.NetworkInterfaceType != NetworkInterfaceType.Loopback)
            .SelectMany(static n => n.GetIPProperties().UnicastAddresses)
            .Select(static a => a.Address)
            .Where(IsPrivate)
            .DistinctBy(static a => a.ToString())
            .OrderBy(static a => a.AddressFamily)
            .ThenBy(static a => a.ToString(), StringComparer.Ordinal),
        IPAddress.Loopback,
        IPAddress.IPv6Loopback,
    ];

    /// <summary>True for an address that the internet does not route.</summary>
    public static bool IsPrivate(IPAddress address)
    {
        var b = address.GetAddressBytes();
        return address.AddressFamily == AddressFamily.InterNetwork
            ? b[0] == 10 || (b[0] == 172 && b[1] is >= 16 and < 32) || (b[0] == 192 && b[1] == 168)
            : (b[0] & 0xfe) == 0xfc;
    }

    /// <summary>Addresses a phone may open, the likeliest first: numbers work on every network, names where the router knows them.</summary>
    internal static IReadOnlyList<string> ForPhones(HttpContext http, AccessOptions access)
    {
        if (access.Address is { } address)
        {
            return [address.ToString()];
        }

        if (!access.Home || http.RequestServices.GetService<HomeHost>() is not { } home)
        {
            return [$"{http.Request.Scheme}://{http.Request.Host}/"];
        }

        var numbers = Numbers().Where(a => a.AddressFamily == AddressFamily.InterNetwork && IsPrivate(a)).Take(2).Select(a => a.ToString()).ToList();
        return [.. (numbers.Count > 0 ? numbers : [Names()[0]]).Select(host => FormattableString.Invariant($"https://{host}:{home.SecurePort}/"))];
    }
}
