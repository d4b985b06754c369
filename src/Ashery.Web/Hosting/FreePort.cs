using System.Net;
using System.Net.Sockets;

namespace Ashery.Web.Hosting;

/// <summary>Finds a port of this machine that nobody listens on.</summary>
public static class FreePort
{
    /// <summary>The first free port from <paramref name="first"/> on; 0, any, when a hundred in a row are taken.</summary>
    public static int From(int first)
    {
        for (var port = first; port < Math.Min(first + 100, IPEndPoint.MaxPort); port++)
        {
            if (IsFree(port))
            {
                return port;
            }
        }

        return 0;
    }

    private static bool IsFree(int port)
    {
        try
        {
            using var probe = new TcpListener(IPAddress.Loopback, port);
            probe.Start();
            return true;
        }
        catch (SocketException)
        {
            return false;
        }
    }
}
