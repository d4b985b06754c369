using System.Net;
using Ashery.Problems;

namespace Ashery.Web.Access;

/// <summary>The words at the start that say who may reach the application.</summary>
/// <param name="Access">Null: this machine alone, no accounts.</param>
/// <param name="Telemetry">Where to send metrics and traces; null: nowhere.</param>
/// <param name="Rest">The other words.</param>
internal sealed record AccessWords(AccessOptions? Access, Uri? Telemetry, IReadOnlyList<string> Rest)
{
    public static Result<AccessWords> Take(IReadOnlyList<string> args)
    {
        var read = new AccessWords(null, null, []);
        List<string> rest = [];
        List<IPAddress> proxies = [];
        Uri? address = null;
        for (var i = 0; i < args.Count; i++)
        {
            switch (args[i])
            {
                case "--accounts":
                    read = read with { Access = read.Access ?? new() };
                    break;
                case "--home":
                    read = read with { Access = (read.Access ?? new()) with { Home = true } };
                    break;
                case "--address":
                    if (++i >= args.Count || !Uri.TryCreate(args[i], UriKind.Absolute, out address) || address.PathAndQuery != "/" || !IsSafe(address))
                    {
                        return Result.Fail<AccessWords>("--address", $"'{Given(args, i)}' is not an address that people can use safely.", "Write it whole and with https, as in --address https://garden.example");
                    }

                    break;
                case "--proxy":
                    if (++i >= args.Count || !IPAddress.TryParse(args[i], out var proxy))
                    {
                        return Result.Fail<AccessWords>("--proxy", $"'{Given(args, i)}' is not a network address.", "Write its number, as in --proxy 10.0.0.5");
                    }

                    proxies.Add(proxy);
                    break;
                case "--telemetry":
                    if (++i >= args.Count || !Uri.TryCreate(args[i], UriKind.Absolute, out var telemetry) || telemetry.Scheme is not ("http" or "https"))
                    {
                        return Result.Fail<AccessWords>("--telemetry", $"'{Given(args, i)}' is not an address of a collector.", "Write where OTLP over HTTP is taken, as in --telemetry http://127.0.0.1:4318");
                    }

                    read = read with { Telemetry = telemetry };
                    break;
                default:
                    rest.Add(args[i]);
                    break;
            }
        }

        if (read.Access is null && (address is not null || proxies.Count > 0))
        {
            return Result.Fail<AccessWords>("--address", "An address for others needs accounts.", "Add --accounts.");
        }

        if (read.Access is { Home: true } && address is not null)
        {
            return Result.Fail<AccessWords>("--address", "The home network finds this machine under its own names.", "Leave --address out, or --home.");
        }

        return Result.Of(read with { Access = read.Access is { } access ? access with { Address = address, Proxies = proxies } : null, Rest = rest });
    }

    /// <summary>Who listens for more than this machine says under which name, and speaks HTTPS.</summary>
    public static Problem? Check(AccessOptions? access, string? urls) => access is { Address: null } && urls is not null
        ? new Problem("--urls", "Accounts are for one known address.", access.Home ? "Leave --urls out with --home." : "Add the one that people use: --address https://garden.example")
        : null;

    private static string Given(IReadOnlyList<string> args, int i) => i < args.Count ? args[i] : "";

    private static bool IsSafe(Uri address) => address.Scheme == Uri.UriSchemeHttps || (address.Scheme == Uri.UriSchemeHttp && address.IsLoopback);
}
