using Ashery.Gardens;
using Microsoft.AspNetCore.Routing;
using Microsoft.AspNetCore.Routing.Patterns;
using Microsoft.Extensions.DependencyInjection;

namespace Ashery.Accounts.Tests.Support;

/// <summary>Every address the application answers, from its own table of endpoints: a page that is added tomorrow is in it.</summary>
internal static class Addresses
{
    /// <summary>Open to strangers on purpose. Everything else must be closed.</summary>
    public static readonly HashSet<string> Open = new(StringComparer.OrdinalIgnoreCase)
    {
        "/sign-in", "/first", "/join", "/pair", "/trust", "/trust/ashery-home.crt", "/sign-in/passkey", "/sign-in/passkey/options", "/light", "/look.css",
        "/sw.js", "/health", "/health/ready", "/error", "/not-found", "/too-large", "/api/openapi.json",

        // Opens for its secret alone; a calendar program signs in nowhere.
        "/calendar/{address}.ics",
    };

    public static IReadOnlyList<(string Pattern, string Path, bool IsAsset)> All(House house)
    {
        var garden = house.Store.Load()!.Garden;
        return
        [
            .. house.App.Services.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>()
                .Select(e => (Pattern: "/" + e.RoutePattern.RawText!.TrimStart('/'), Path: Fill(e.RoutePattern, garden, house), IsAsset: IsAsset(e)))
                .DistinctBy(e => e.Pattern),
        ];
    }

    private static bool IsAsset(RouteEndpoint endpoint) =>
        endpoint.Metadata.Any(m => m.GetType().Name.Contains("StaticAsset", StringComparison.Ordinal)) || endpoint.RoutePattern.RawText!.StartsWith("_framework", StringComparison.Ordinal);

    // Real ids where the demo garden has them, so that a page that opened would show something.
    private static string Fill(RoutePattern pattern, Garden garden, House house)
    {
        var text = "/" + pattern.RawText!.TrimStart('/');
        foreach (var part in pattern.Parameters)
        {
            var start = text.IndexOf("{" + (part.IsCatchAll ? (part.EncodeSlashes ? "*" : "**") : "") + part.Name, StringComparison.Ordinal);
            var end = text.IndexOf('}', start);
            while (end + 1 < text.Length && text[end + 1] == '}')
            {
                end++;
            }

            var before = text[..start];
            text = before + Value(before, part.Name, garden, house) + text[(end + 1)..];
        }

        return text;
    }

    private static string Value(string before, string name, Garden garden, House house) => (before, name.ToLowerInvariant()) switch
    {
        (_, "garden") => "home",
        ("/pots/", _) => garden.Pots[0].Id,
        ("/shelf/", _) => garden.Shelf[0].Id,
        ("/water/", _) => garden.Waters[0].Id,
        ("/cards/", _) => garden.Feeds[0].Id,
        ("/crops/", _) => "rose",
        ("/materials/", _) => "urea",
        ("/year/rules/", _) => "mineral-hot-season",
        (_, "form") => "txt",
        _ => house.Journal.Latest(1) is [var entry, ..] ? entry.Entry.Id.ToString() : "7f2c3a10-0000-4000-8000-000000000001",
    };
}
