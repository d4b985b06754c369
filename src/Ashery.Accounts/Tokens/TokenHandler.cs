using System.Security.Claims;
using System.Text.Encodings.Web;
using Ashery.Accounts.Model;
using Microsoft.AspNetCore.Authentication;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Options;

namespace Ashery.Accounts.Tokens;

/// <summary>Reads <c>Authorization: Bearer ashery_...</c>; for the calendar address, which programs ask for without headers, <c>?key=ashery_...</c>.</summary>
public sealed class TokenHandler(IOptionsMonitor<AuthenticationSchemeOptions> options, ILoggerFactory logger, UrlEncoder encoder, AccessTokens tokens)
    : AuthenticationHandler<AuthenticationSchemeOptions>(options, logger, encoder)
{
    public const string SchemeName = "Token";

    /// <summary>Claims that say how far the token reaches.</summary>
    public const string ScopeClaim = "token-scope", GardenClaim = "token-garden";

    private const string Bearer = "Bearer ";

    /// <summary>Begins the addresses that a calendar program reads.</summary>
    private const string CalendarPath = "/calendar";

    /// <summary>True when a request brings a token rather than a cookie.</summary>
    public static bool Brings(Microsoft.AspNetCore.Http.HttpRequest request) =>
        request.Headers.Authorization.ToString().StartsWith(Bearer, StringComparison.OrdinalIgnoreCase) || IsCalendar(request);

    protected override async Task<AuthenticateResult> HandleAuthenticateAsync()
    {
        var header = Request.Headers.Authorization.ToString();
        var byHeader = header.StartsWith(Bearer, StringComparison.OrdinalIgnoreCase);
        var secret = byHeader ? header[Bearer.Length..].Trim() : IsCalendar(Request) ? Request.Query["key"].ToString() : "";
        if (!secret.StartsWith(AccessTokens.Prefix, StringComparison.Ordinal) || await tokens.FindAsync(secret) is not { } found)
        {
            return secret.Length > 0 ? AuthenticateResult.Fail("The token is not known or has ended.") : AuthenticateResult.NoResult();
        }

        // A key stands in an address, which histories and logs keep: it opens the calendar and nothing more; and the calendar's token nothing else.
        if (!byHeader != (found.Row.Scope == TokenScope.Calendar))
        {
            return AuthenticateResult.Fail("The token is not for this.");
        }

        var identity = new ClaimsIdentity(SchemeName);
        identity.AddClaim(new Claim(ClaimTypes.NameIdentifier, found.Row.UserId));
        identity.AddClaim(new Claim(ClaimTypes.Name, found.UserName));
        identity.AddClaim(new Claim(ScopeClaim, found.Row.Scope));
        if (found.Row.Garden is { } garden)
        {
            identity.AddClaim(new Claim(GardenClaim, garden));
        }

        return AuthenticateResult.Success(new AuthenticationTicket(new ClaimsPrincipal(identity), SchemeName));
    }

    private static bool IsCalendar(Microsoft.AspNetCore.Http.HttpRequest request) =>
        request.Path.StartsWithSegments(CalendarPath, StringComparison.OrdinalIgnoreCase) && request.Query.ContainsKey("key");
}
