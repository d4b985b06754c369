using Ashery.Web.Access;
using Ashery.Web.Home;

namespace Ashery.Web.Hosting;

/// <summary>What is printed at the start where there are accounts.</summary>
internal static class Welcome
{
    public static async Task SayAsync(WebApplication app, TextWriter output)
    {
        if (app.Services.GetService<HomeHost>() is { } home)
        {
            await output.WriteLineAsync("On the home network:");
            foreach (var host in home.Certificates.Hosts.Where(static h => h is not ("localhost" or "127.0.0.1" or "::1") && !h.Contains(':', StringComparison.Ordinal)))
            {
                await output.WriteLineAsync(FormattableString.Invariant($"  https://{host}:{home.SecurePort}/"));
            }

            await output.WriteLineAsync(FormattableString.Invariant($"A phone first trusts this computer: http://<one of these>:{home.PlainPort}/trust"));
            await output.WriteLineAsync("Fingerprint of the authority (SHA-256):");
            await output.WriteLineAsync($"  {home.Certificates.Fingerprint}");
        }

        if (await AccessSetup.FirstCode(app.Services) is { } code)
        {
            var address = app.Services.GetRequiredService<AccessOptions>().Address?.ToString() ?? AsheryServer.Address(app);
            await output.WriteLineAsync($"There is no account yet. Make the first one within a day at {address}first?code={code}");
        }

        await output.FlushAsync();
    }
}
